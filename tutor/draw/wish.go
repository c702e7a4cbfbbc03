package draw

import (
	"errors"
	"math"
	"strconv"
	"strings"

	"closingside/statics/expr"
	"closingside/tutor"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

// Wish says what problem is to be drawn.
//
// Difficulty, in plain words:
//
//	1  every direction given lies in the first quadrant (0° to 90°), and no
//	   step of a worked solution needs a calculator's answer put right
//	2  directions anywhere, and still no such step
//	3  some step needs it: an obtuse angle where an inverse sine gives the
//	   acute one, a direction where the arctangent gives another quadrant, or
//	   a difference of directions beyond 180°
//	0  any of these
type Wish struct {
	Kind        *lesson.Kind
	Difficulty  int             // 0–3
	Quadrants   [4]bool         // where the directions given may lie; all false is anywhere
	RightAngles bool            // right angles, and directions along an axis, may occur
	Settings    lesson.Settings // how it will be checked; the zero value is the default
}

// Difficulties is the hardest there is.
const Difficulties = 3

// maxDraws ends a search: a wish that is so rarely met is refused. Of 13 000 that
// were met none took more than 256 draws.
const maxDraws = 2000

// maxUnsuited ends it sooner where no draw is as wished at all: the kind does not
// know the method, or no directions in those quadrants make it so hard. What was
// met at all was suited within 80 draws.
const maxUnsuited = 500

// Generate draws a fair problem by seed.
func (w Wish) Generate(seed uint64) (*lesson.Problem, Fairness, error) {
	if w.Settings == (lesson.Settings{}) {
		w.Settings = lesson.DefaultSettings()
	}
	d := lesson.NewDraw(seed, streamOf(w.Kind.Name))
	d.Within = w.open()
	var unusable error
	opened, suited := false, false
	for n := 1; n <= maxDraws && (suited || n <= maxUnsuited); n++ {
		p, err := w.Kind.Read(w.Kind.Draw(d))
		if err != nil {
			continue
		}
		if unusable = p.Use(w.Settings); unusable != nil || !w.admits(p) {
			continue
		}
		l, err := tutor.Open(p)
		if err != nil {
			continue
		}
		opened = true
		if !w.suits(l) {
			continue
		}
		suited = true
		if f, ok := fairness(l); ok {
			f.Draws = n
			return p, f, nil
		}
	}
	return nil, Fairness{}, w.unmet(opened, unusable)
}

// unmet says why a wish is refused: whether any draw could be opened, and why
// the last could not be used with the settings.
func (w Wish) unmet(opened bool, unusable error) error {
	key := "wish.unmet"
	switch {
	case !opened && unusable != nil:
		return unusable
	case !opened && w.Settings.Method != lesson.AnyMethod:
		key = "wish.method.unknown"
	}
	return errors.New(text.Say(key, "kind", w.Kind.Name, "wish", w.String()))
}

// streamOf tells the draws of kinds apart.
func streamOf(kind string) uint64 {
	var stream uint64
	for _, r := range kind {
		stream = stream*31 + uint64(r)
	}
	return stream
}

// String is the wish in words.
func (w Wish) String() string {
	parts := []string{}
	if w.Difficulty > 0 {
		parts = append(parts, text.Say("wish.difficulty", "n", strconv.Itoa(w.Difficulty)))
	}
	if q := w.QuadrantList(); q != "" {
		parts = append(parts, text.Say("wish.quadrants", "list", q))
	}
	if w.RightAngles {
		parts = append(parts, text.Say("wish.right-angles"))
	}
	if w.Settings.Method != lesson.AnyMethod {
		parts = append(parts, text.Say("wish.method", "method", w.Settings.Word("method")))
	}
	if len(parts) == 0 {
		return text.Say("wish.any")
	}
	return strings.Join(parts, ", ")
}

// QuadrantList lists the quadrants that are asked for, "" where any will do.
func (w Wish) QuadrantList() string {
	var list []string
	for i, on := range w.Quadrants {
		if on {
			list = append(list, strconv.Itoa(i+1))
		}
	}
	return strings.Join(list, ", ")
}

// admits looks at what a statement gives, before it is solved.
func (w Wish) admits(p *lesson.Problem) bool {
	open := w.open()
	for _, deg := range directions(p) {
		q, along := quadrant(deg)
		if along && !w.RightAngles || !along && !open[q] || along && w.Difficulty == 1 && q > 1 {
			return false
		}
	}
	return true
}

// open are the quadrants where directions given may lie.
func (w Wish) open() [4]bool {
	open := w.Quadrants
	if open == [4]bool{} {
		open = [4]bool{true, true, true, true}
	}
	if w.Difficulty == 1 {
		open = [4]bool{open[0]}
	}
	return open
}

// directions lists the directions that a statement gives, in degrees.
func directions(p *lesson.Problem) []float64 {
	var all []float64
	for _, g := range p.Kind.Groups {
		for _, it := range p.Group(g.Key) {
			for _, spec := range g.Fields {
				if f := it.Field(spec.Key); spec.Is == lesson.DirectionField && f.Written != "" {
					all = append(all, f.Value)
				}
			}
		}
	}
	return all
}

// quadrant is 0 to 3 for a direction in degrees. One along an axis counts to
// the quadrant that begins there.
func quadrant(deg float64) (q int, along bool) {
	v := math.Mod(deg, 360)
	if v < -offClean {
		v += 360
	}
	q = int((v+offClean)/90) % 4
	return q, math.Abs(math.Remainder(v, 90)) < offClean
}

// suits looks at the lesson: its angles, and what its solutions ask.
func (w Wish) suits(l *tutor.Lesson) bool {
	traps := traps(l)
	switch {
	case w.Difficulty == 1 || w.Difficulty == 2:
		if traps > 0 {
			return false
		}
	case w.Difficulty == 3:
		if traps == 0 {
			return false
		}
	}
	return shapely(l, w.RightAngles)
}

// traps counts the steps of the worked solutions where a calculator's answer
// has to be put right.
func traps(l *tutor.Lesson) int {
	n := 0
	for _, way := range l.Ways {
		for _, step := range way.Steps {
			if r := l.Quantity(step.Quantity).Route(step.Route); putRight(r.Tree) {
				n++
			}
		}
	}
	return n
}

// putRight tells whether a formula adds half a turn or a whole one to an
// inverse, or to a difference of directions.
func putRight(tree expr.Node) bool {
	b, ok := tree.(expr.Bin)
	if !ok || b.Op != expr.OpAdd && b.Op != expr.OpSub {
		return false
	}
	turned := func(n expr.Node) bool { return expr.IsDegrees(n, 180) || expr.IsDegrees(n, 360) }
	corrected := func(n expr.Node) bool {
		_, _, difference := expr.Operands(n, expr.OpSub)
		return expr.IsInverseTrig(n) || difference
	}
	return turned(b.L) && corrected(b.R) || turned(b.R) && corrected(b.L)
}

// Check refuses a wish that contradicts itself, at src.
func (w Wish) Check(src lesson.Source) error {
	if w.open() == [4]bool{} {
		return src.Fault("wish.contradicts")
	}
	return nil
}

// Generate draws a fair problem of kind k by seed. That there is none is a bug
// of the kind.
func Generate(k *lesson.Kind, seed uint64) *lesson.Problem {
	p, _, err := Wish{Kind: k}.Generate(seed)
	if err != nil {
		panic("draw: no fair problem of kind " + k.Name)
	}
	return p
}
