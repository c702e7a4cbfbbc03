package tutor

import (
	"hash/fnv"
	"math"
	"math/rand/v2"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
	"closingside/tutor/slipped"
	"closingside/tutor/verdict"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// saying watches what is said of entries on one problem.
type saying struct {
	t      *testing.T
	lesson *Lesson
	given  map[string]bool // the numbers of the statement
	rng    *rand.Rand
	seen   map[verdict.Verdict]int
	asked  int // questions between two slips
}

var numberInText = regexp.MustCompile(`\d+(\.\d+)?`)

// What the tutor says is right whatever is entered: no value that is not
// found yet, no blame, a question or something to do at the end, and more help,
// not the same words, where the same wrong value comes again.
func TestWhatIsSaidOfAnyEntry(t *testing.T) {
	drawn := max(1, problems()/2000)
	seen, asked := map[verdict.Verdict]int{}, 0
	everyKind(t, drawn, func(t *testing.T, l *Lesson) {
		h := fnv.New64a()
		h.Write([]byte(l.Problem.Code()))
		s := &saying{t: t, lesson: l, given: map[string]bool{}, rng: rand.New(rand.NewPCG(h.Sum64(), 1)), seen: seen}
		for _, said := range append(l.Problem.Statements(), l.Task()) {
			for _, n := range numberInText.FindAllString(said, -1) {
				s.given[n] = true
			}
		}
		for i := range l.Quantities {
			if q := &l.Quantities[i]; !q.Given {
				s.quantity(q)
			}
		}
		asked += s.asked
	})
	for v := verdict.Unreadable; v <= verdict.Unexplained; v++ {
		assert.Positive(t, seen[v], "%s", v)
	}
	assert.Positive(t, asked)
	t.Logf("%v, of them %d questions between two", seen, asked)
}

// quantity enters all sorts of values for q.
func (s *saying) quantity(q *lesson.Quantity) {
	for _, entry := range s.entries(q) {
		if problems() <= 1000 && s.rng.IntN(3) > 0 {
			continue // more of them with -problems
		}
		s.enter(nil, q, entry)
	}
	if q.Equation {
		return
	}
	for range 2 { // on a wrong value of another
		in := &s.lesson.Quantities[s.rng.IntN(len(s.lesson.Quantities))]
		if in.Given || in.Equation || in == q || math.IsNaN(in.True) {
			continue
		}
		wrong := s.lesson.WrongValues(in, lesson.DefaultSettings())
		if len(wrong) == 0 {
			continue
		}
		v := wrong[s.rng.IntN(len(wrong))].Value
		for _, r := range q.Routes {
			follows := expr.Eval(r.Tree, func(name string) float64 {
				if name == in.Name {
					return v
				}
				return s.lesson.Truth(name)
			})
			if slices.Contains(expr.Symbols(r.Tree), in.Name) && !math.IsNaN(follows) {
				s.enter([][2]string{{in.Name, s.lesson.ShowKept(in, v, lesson.DefaultSettings())}}, q, s.lesson.ShowKept(q, follows, lesson.DefaultSettings()))
			}
		}
	}
}

// entries lists entries for q: right ones in several forms, wrong ones of every
// sort, and some that can't be read.
func (s *saying) entries(q *lesson.Quantity) []string {
	l, set := s.lesson, lesson.DefaultSettings()
	all := []string{l.right(q, set.Work), "", "12 m", "cos", "1,234", l.SymbolText(q.Name), "Rz", "5 + + "}
	var trees []expr.Node
	for _, r := range q.Routes {
		trees = append(trees, r.Tree)
		if one := slipped.Rewrites(l.Lesson, q, r.Tree); len(one) > 0 {
			trees = append(trees, one[s.rng.IntN(len(one))].Tree)
			if two := slipped.Rewrites(l.Lesson, q, trees[len(trees)-1]); len(two) > 0 {
				trees = append(trees, two[s.rng.IntN(len(two))].Tree)
			}
		}
	}
	if q.Equation {
		for _, n := range trees {
			all = append(all, l.Text(n)+" = 0")
		}
		return append(all, "0 = 0", "2 = 3")
	}
	show := func(v float64, d int) { all = append(all, l.Show(q, v, lesson.Digits{Magnitude: d, Angle: d - 2})) }
	for _, n := range trees {
		if v := expr.Eval(n, l.Truth); !math.IsNaN(v) {
			show(v, 4)
		}
	}
	if wrong := l.WrongValues(q, set); len(wrong) > 0 {
		for range 6 {
			show(wrong[s.rng.IntN(len(wrong))].Value, 3+s.rng.IntN(3))
		}
	}
	if math.IsNaN(q.True) {
		return all
	}
	for _, d := range []int{2, 3, 5, 6} {
		show(q.True, d)
	}
	size := q.True
	if q.IsAngle() {
		size = 100
	}
	for _, off := range []float64{0.004, 0.007, 0.012, 0.018} {
		show(q.True+size*off, 4)
		show(q.True-size*off, 3)
	}
	for range 3 {
		show(q.True+size*(2*s.rng.Float64()-1), 4)
	}
	return append(all, strconv.FormatFloat(q.True, 'f', 1, 64), "118° − θ", "3 N")
}

// enter enters an entry up to seven times, and answers what is asked.
func (s *saying) enter(before [][2]string, q *lesson.Quantity, entry string) {
	for _, help := range []lesson.Help{lesson.HelpOn, lesson.HelpOff} {
		if help == lesson.HelpOff && s.rng.IntN(6) > 0 {
			break
		}
		set := lesson.DefaultSettings()
		set.Hints = help
		times := 1 + s.rng.IntN(4)*s.rng.IntN(3)
		w := NewWork(s.lesson, set)
		for _, b := range before {
			w.Enter(b[0], b[1])
		}
		var said []string
		for range times {
			r := w.Enter(q.Name, entry)
			s.seen[r.Verdict]++
			s.check(w, r)
			if r.Verdict == verdict.Correct || r.Verdict == verdict.Unreadable {
				break
			}
			assert.NotContains(s.t, said, r.Feedback, "%s of %s: the same again", entry, q.Name)
			said = append(said, r.Feedback)
		}
		for c := First; c <= Neither; c++ {
			w := NewWork(s.lesson, set)
			for _, b := range before {
				w.Enter(b[0], b[1])
			}
			r := w.Enter(q.Name, entry)
			if !r.Asked {
				break
			}
			s.asked++
			s.between(w, q)
			of := r.Slips[min(int(c)-1, 1)]
			told, ok := w.Answer(q.Name, c)
			require.True(s.t, ok)
			s.check(w, told)
			if c == Neither {
				assert.Equal(s.t, verdict.Unexplained, told.Verdict, "%s of %s", entry, q.Name)
				continue
			}
			assert.Equal(s.t, verdict.SlipFound, told.Verdict, "%s of %s: %+v", entry, q.Name, told)
			assert.Equal(s.t, of.IDs, told.Slips[0].IDs, "%s of %s, answer %d: %+v", entry, q.Name, c, told)
			assert.Equal(s.t, w.askAbout(of), told.Feedback)
		}
	}
}

// between looks at a question between two slips.
func (s *saying) between(w *Work, q *lesson.Quantity) {
	a := w.Standing(q.Name)
	options := w.Options(a)
	require.Len(s.t, options, 2)
	assert.NotEqual(s.t, options[0], options[1], "%s of %s", a.Entry, q.Name)
	assert.Equal(s.t, 1, strings.Count(a.Feedback, "?"), "a single question: %s", a.Feedback)
	assert.Equal(s.t, a.Feedback, strings.Replace(w.Beside(a), w.Lesson.Say("feedback.which.beside"), w.askWhich(a.rivals[0], a.rivals[1]), 1), "beside its buttons all but their words is said")
}

// blame is what is never said of a learner's work.
var blame = regexp.MustCompile(`(?i)\b(wrong|wrongly|mistakes?|errors?|incorrect|fault|fail(ed|ure)?|bad|careless|forg[eo]t(ten)?|should have|stupid|obvious(ly)?|simply|sloppy|of course)\b`)

// action is how a sentence begins that says what to do.
var action = regexp.MustCompile(`^(Find|Write|Put|Keep|Choose|Draw|Look|Show|Enter|Ask|Correct|Change|Add|Type|Give|Take|Try|Check|Compare)\b`)

// check looks at what is said of an entry.
func (s *saying) check(w *Work, r Reply) {
	said := r.Feedback
	ok := func(holds bool, why string) {
		if !holds {
			assert.Fail(s.t, why, "%s %s = %s: %s: %s", s.lesson.Kind.Name, r.Quantity, r.Entry, r.Verdict, said)
		}
	}
	ok(said != "", "nothing said")
	ok(strings.TrimSpace(said) == said && !strings.Contains(said, "  ") && !strings.ContainsAny(said, "{}"), "spaces or holes")
	ok(!strings.Contains(said, "“”") && !strings.Contains(said, " ,") && !strings.Contains(said, " ?") && !strings.Contains(said, "NaN") && !strings.Contains(said, "–"), "something empty")
	own := strings.ReplaceAll(said, r.Entry, "")
	ok(r.Entry == "" || !blame.MatchString(own), "blame")
	if r.Verdict == verdict.Correct {
		return
	}
	last := said
	if i := strings.LastIndexAny(strings.TrimRight(said, ".?!"), ".?!"); i >= 0 {
		last = strings.TrimSpace(said[i+1:])
	}
	if r.Verdict != verdict.Unreadable { // where reading stopped, the message says what would do in one sentence
		ok(strings.HasSuffix(said, "?") || action.MatchString(last), "neither a question nor an action")
	}
	s.leaks(w, r, ok)
}

// leaks looks for values that are not found.
func (s *saying) leaks(w *Work, r Reply, ok func(bool, string)) {
	q := s.lesson.Quantity(r.Quantity)
	known := map[string]bool{"30": true, "45": true, "90": true, "180": true, "360": true}
	add := func(text string) {
		for _, n := range numberInText.FindAllString(text, -1) {
			known[n] = true
		}
	}
	add(r.Entry)
	if b := q.Between; b[0] != nil && s.ofGivens(b[0]) && s.ofGivens(b[1]) {
		lo, hi := w.Limits(q)
		add(w.bound(q, lo) + " " + w.bound(q, hi))
	}
	if r.Rounded != nil { // how far it moved, to one digit
		add(regexp.MustCompile(`by about \S+`).FindString(r.Feedback))
	}
	if r.Verdict == verdict.Unreadable { // an example of how to write
		add("12.3 " + strings.ReplaceAll(r.Entry, ",", "") + " " + strings.ReplaceAll(r.Entry, ",", "."))
	}
	for _, n := range numberInText.FindAllString(r.Feedback, -1) {
		if known[n] || s.given[n] {
			continue
		}
		for i := range s.lesson.Quantities {
			o := &s.lesson.Quantities[i]
			if o.Given || w.Found(o.Name) || math.IsNaN(o.True) || !shows(o, n) {
				continue
			}
			ok(false, "the value of "+o.Name)
		}
	}
}

// shows tells whether the number n, as written, is q's value, in any unit or
// sense, to three digits or, of an angle, a tenth of a degree.
func shows(q *lesson.Quantity, n string) bool {
	v, _ := strconv.ParseFloat(n, 64)
	_, decimals, _ := strings.Cut(n, ".")
	half := 0.5*math.Pow(10, -float64(len(decimals))) + 1e-9
	if q.IsAngle() {
		for _, x := range []float64{q.True, -q.True, q.True + 180, q.True - 180} {
			if len(strings.Trim(strings.ReplaceAll(n, ".", ""), "0")) >= 2 && math.Abs(math.Remainder(v-x, 360)) <= min(half, 0.05) {
				return true
			}
		}
		return false
	}
	if len(strings.TrimLeft(strings.ReplaceAll(n, ".", ""), "0")) < 3 {
		return false
	}
	for _, factor := range []float64{1, 1000, 0.001, statics.NewtonsPerPound, 1 / statics.NewtonsPerPound, statics.NewtonsPerPound / 1000, 1000 / statics.NewtonsPerPound} {
		if math.Abs(v-math.Abs(q.True)*factor) <= half {
			return true
		}
	}
	return false
}

// ofGivens tells whether a formula reads nothing but what is given.
func (s *saying) ofGivens(n expr.Node) bool {
	return !slices.ContainsFunc(expr.Symbols(n), func(name string) bool { return !s.lesson.Quantity(name).Given })
}
