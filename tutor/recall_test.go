package tutor

import (
	"math/rand/v2"
	"slices"
	"strconv"
	"testing"

	"closingside/statics"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// tally counts how often a simulated learner's mistake is seen.
type tally struct{ met, first, named, correct int }

func (c *tally) note(r Reply, ids []string) {
	if r.Verdict == verdict.Correct {
		c.correct++
		return
	}
	c.met++
	if r.Verdict == verdict.SlipFound {
		c.named++
	}
	if r.Verdict == verdict.SlipFound && slices.ContainsFunc(r.Slips[0].IDs, func(id string) bool { return slices.Contains(ids, id) }) {
		c.first++
	}
}

func (c *tally) rate() float64 { return float64(c.first) / float64(max(1, c.met)) }

// Rates on generated problems, at four digits, slips drawn by their priors. The
// noise is any value between the forces; a few of those are by chance what a
// slip gives, so silence is not complete.
func TestSlipsAreNamedFirst(t *testing.T) {
	rng := rand.New(rand.NewPCG(99, 1))
	var single, two, noise tally
	silent, spoke := 0, map[string]int{}
	for seed := range draws() {
		l, err := Open(Generate(&kinds.TwoForces, seed))
		require.NoError(t, err)
		for i := range l.Quantities {
			q := &l.Quantities[i]
			if q.Given {
				continue
			}
			w := NewWork(l, lesson.DefaultSettings())
			s := w.now(q)
			for range 4 {
				o := pick(rng, s.slipsIn(i))
				single.note(w.judge(q, lesson.Digits{Magnitude: 4, Angle: 2}.Written(q.Dim, o.value)), o.ids)
			}
			if q.Dim != statics.DimForce {
				continue
			}
			for range 2 {
				if o := pickTwo(rng, l, i); o != nil {
					two.note(w.judge(q, lesson.Digits{Magnitude: 4, Angle: 2}.Written(q.Dim, o.value)), o.ids)
				}
				v := l.Truth("F1")*rng.Float64() + l.Truth("F2")*rng.Float64()
				r := w.judge(q, lesson.Digits{Magnitude: 4, Angle: 2}.Written(q.Dim, v))
				if r.Verdict == verdict.Correct {
					continue
				}
				noise.met++
				if r.Verdict == verdict.Unexplained {
					silent++
				} else {
					spoke[r.Verdict.String()+" "+strconv.FormatBool(len(r.Slips) > 0 && r.Slips[0].double())+" "+q.Name]++
				}
			}
		}
	}
	t.Logf("single slips: %d met, %.3f first, %.3f named; %d inside the band", single.met, single.rate(), float64(single.named)/float64(single.met), single.correct)
	t.Logf("two slips: %d met, %.3f first, %.3f named", two.met, two.rate(), float64(two.named)/float64(two.met))
	t.Log(spoke)
	t.Logf("noise: %d met, %.3f silent", noise.met, float64(silent)/float64(noise.met))
	assert.Greater(t, single.rate(), 0.97)
	assert.Greater(t, two.rate(), 0.62, "of all pairs, rare ones and miscopied givens among them, at four digits")
	assert.Greater(t, float64(silent)/float64(noise.met), 0.93)
}

// pick draws an outcome by its weight.
func pick(rng *rand.Rand, all []outcome) *outcome {
	total := 0.0
	for _, o := range all {
		total += o.weight
	}
	x := rng.Float64() * total
	for i := range all {
		if x -= all[i].weight; x < 0 {
			return &all[i]
		}
	}
	return &all[len(all)-1]
}

// pickTwo draws two slips together by their weight; nil where one slip writes
// the same.
func pickTwo(rng *rand.Rand, l *Lesson, i int) *outcome {
	d := l.doublesOf(i)
	x := rng.Float64() * d.total
	for k := range d.values {
		two := d.open(&d.all[k])
		if x -= float64(two.weight); x >= 0 {
			continue
		}
		o := two.outcome(&l.Quantities[i], d.values[k])
		single := false
		NewWork(l, lesson.DefaultSettings()).now(&l.Quantities[i]).outcomes(i).near(o.value, l.Quantities[i].Epsilon(), func(*cell) { single = true })
		if single {
			return nil
		}
		return &o
	}
	return nil
}
