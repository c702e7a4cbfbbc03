package tutor

import (
	"math"
	"math/rand/v2"
	"strconv"
	"testing"

	"closingside/statics/expr"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"

	"github.com/stretchr/testify/require"
)

// randomLesson is a problem with any magnitudes and directions that is well
// conditioned: no angle of the figure below 12° or above 168°.
func randomLesson(t *testing.T, rng *rand.Rand) *Lesson {
	for {
		l, ok := randomPair(t, 100+rng.IntN(900), 100+rng.IntN(900), rng.IntN(360)-180, rng.IntN(360)-180)
		if ok {
			return l
		}
	}
}

func randomPair(t *testing.T, m1, m2, d1, d2 int) (*Lesson, bool) {
	p, err := kinds.All.Read(kinds.TwoForcesSource("", kinds.ForceSource("P", strconv.Itoa(m1)+" N", strconv.Itoa(d1)+" deg"), kinds.ForceSource("Q", strconv.Itoa(m2)+" N", strconv.Itoa(d2)+" deg")))
	require.NoError(t, err)
	l, err := Open(p)
	if err != nil {
		return nil, false
	}
	for _, q := range l.Quantities {
		if !q.Given && !q.Turns && q.IsAngle() && (q.True < 12 || q.True > 168) {
			return nil, false
		}
	}
	return l, true
}

// walker is a learner who rounds every value written on the way correctly.
type walker struct {
	t   *testing.T
	rng *rand.Rand
	w   *Work

	keyed  bool // a formula is keyed in at once: its result alone is rounded
	beyond bool // rounding has carried a value on the way beyond its band's limit
}

// work works route r of q and rounds what is worked out on the way; values
// that are not entered are found in the head by a way of the worked solution.
func (k *walker) work(q *lesson.Quantity, r *lesson.Route, enter bool) float64 {
	values := map[string]float64{}
	for _, name := range expr.Symbols(r.Tree) {
		in := k.w.Lesson.Quantity(name)
		switch {
		case in.Given:
			values[name] = in.True
		case k.w.Found(name):
			values[name], _ = k.w.typed(name)
		default:
			values[name] = k.find(in, enter)
		}
	}
	latest := func(name string) float64 { // a value refused may have been entered anew meanwhile
		if v, ok := k.w.typed(name); ok {
			return v
		}
		return values[name]
	}
	return expr.EvalEach(r.Tree, latest, func(n expr.Node, site int, v float64) float64 {
		if site == 0 || k.keyed {
			return v
		}
		return k.w.Settings.Work.Round(k.w.Lesson.dimension(n), v)
	})
}

// find finds a value on the way by a route of the worked solution's sort, and
// enters it where the learner writes every step into the page.
func (k *walker) find(in *lesson.Quantity, enter bool) float64 {
	var taken []int
	for j, f := range k.w.Lesson.ready().of[k.w.Lesson.index[in.Name]].routes {
		if f.taken && in.Routes[j].ID != "sine-law-twin" && in.Routes[j].Principle != "angle-from-direction" {
			taken = append(taken, j)
		}
	}
	if len(taken) == 0 { // a kind that finds it by such a route alone
		taken = []int{0}
	}
	r := &in.Routes[taken[k.rng.IntN(len(taken))]]
	v := k.work(in, r, enter)
	if math.IsNaN(v) { // the sine came out beyond 1
		k.beyond = true
		return v
	}
	k.beyond = k.beyond || in.Distance(k.w.Settings.Work.Round(in.Dim, v), in.True) > k.w.limit(in)
	if enter {
		k.enter(in, r, v)
		v, _ = k.w.typed(in.Name)
		return v
	}
	return k.w.Settings.Work.Round(in.Dim, v)
}

// enter writes v at the digits asked, where it has a value at all.
func (k *walker) enter(q *lesson.Quantity, r *lesson.Route, v float64) verdict.Verdict {
	if math.IsNaN(v) {
		return verdict.Correct
	}
	text := k.w.Settings.DigitsOf(q).Written(q.Dim, v)
	return k.w.Enter(q.Name, text).Verdict
}
