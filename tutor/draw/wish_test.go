package draw

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// Every kind has problems of every difficulty, and what is drawn is what was
// asked.
func TestEveryWishIsMet(t *testing.T) {
	for _, k := range kinds.All {
		for difficulty := range Difficulties + 1 {
			t.Run(k.Name+strconv.Itoa(difficulty), func(t *testing.T) {
				for seed := range uint64(4) {
					p, fair, err := Wish{Kind: k, Difficulty: difficulty}.Generate(seed)
					require.NoError(t, err)
					assert.Greater(t, fair.Separation, 1.0)
					l, err := tutor.Open(p)
					require.NoError(t, err)
					switch difficulty {
					case 1:
						for _, deg := range directions(p) {
							assert.True(t, deg > 0 && deg < 90, p.Code())
						}
						assert.Zero(t, traps(l))
					case 2:
						assert.Zero(t, traps(l))
					case 3:
						assert.Positive(t, traps(l))
					}
				}
			})
		}
	}
}

func TestQuadrantsAsAsked(t *testing.T) {
	for q := range 4 {
		w := Wish{Kind: &kinds.TwoForces}
		w.Quadrants[q] = true
		p, _, err := w.Generate(uint64(q))
		require.NoError(t, err)
		for _, deg := range directions(p) {
			assert.InDelta(t, 90*float64(q)+45, wrapped(deg), 45, p.Code())
		}
	}
}

func wrapped(deg float64) float64 {
	if deg < 0 {
		return deg + 360
	}
	return deg
}

func TestQuadrant(t *testing.T) {
	for deg, want := range map[float64]struct {
		q     int
		along bool
	}{0: {0, true}, 45: {0, false}, 90: {1, true}, 91: {1, false}, 180: {2, true}, -90: {3, true}, -1: {3, false}, 359: {3, false},
		360: {0, true}, -179: {2, false}, 450 + 1e-12: {1, true}, 90 - 1e-12: {1, true}, -1e-12: {0, true}} {
		q, along := quadrant(deg)
		assert.Equal(t, want.q, q, deg)
		assert.Equal(t, want.along, along, deg)
	}
}

// Fairness is what the check is able to do: every common slip of a drawn
// problem, entered at the digits asked, is neither taken for right nor named
// as another.
func TestCommonSlipsOfDrawnProblemsAreTold(t *testing.T) {
	for _, k := range kinds.All {
		for seed := range uint64(3) {
			p, _, err := Wish{Kind: k}.Generate(100 + seed)
			require.NoError(t, err)
			l, err := tutor.Open(p)
			require.NoError(t, err)
			for i := range l.Quantities {
				q := &l.Quantities[i]
				if q.Given {
					continue
				}
				for _, v := range wrongValues(tutor.NewWork(l, lesson.DefaultSettings()), q) {
					if !v.common {
						continue
					}
					w := tutor.NewWork(l, lesson.DefaultSettings())
					digits := w.Settings.DigitsOf(q)
					got := w.Enter(q.Name, l.Show(q, v.value, digits)).Verdict
					assert.NotEqual(t, verdict.Correct, got, "%s %s: %v", p.Code(), q.Name, v)
				}
			}
		}
	}
}

func TestAWishThatCannotBeMetIsRefused(t *testing.T) {
	k := kinds.TwoForces
	k.Draw = func(d *lesson.Draw) lesson.Source { // always opposite
		d.Below(2)
		return kinds.TwoForcesSource("", kinds.ForceSource("P", "1 N", "1 deg"), kinds.ForceSource("Q", "2 N", "181 deg"))
	}
	_, _, err := Wish{Kind: &k, Difficulty: 2}.Generate(1)
	require.ErrorContains(t, err, "difficulty 2")
}

func BenchmarkGenerate(b *testing.B) {
	for _, k := range kinds.All {
		for difficulty := range Difficulties + 1 {
			b.Run(k.Name+strconv.Itoa(difficulty), func(b *testing.B) {
				draws := 0
				for seed := uint64(0); b.Loop(); seed++ {
					_, f, err := Wish{Kind: k, Difficulty: difficulty}.Generate(seed)
					require.NoError(b, err)
					draws += f.Draws
				}
				b.ReportMetric(float64(draws)/float64(b.N), "draws/op")
			})
		}
	}
}

// A link may ask for what no draw can give; that is found out soon, and what is
// said names what stands in the way.
func TestAWishThatNoDrawCanMeetIsRefusedSoon(t *testing.T) {
	for _, row := range []struct {
		kind       *lesson.Kind
		difficulty int
		check      lesson.Source
		says       []string
	}{
		{&kinds.TwoForces, 0, lesson.Leaf("direction", "from Z"), []string{"from “Z”"}},
		{&kinds.TwoForces, 3, lesson.Leaf("digits", "3"), []string{"difficulty 3", "quadrants 1", "another difficulty"}},
		{&kinds.ConcurrentForces, 0, lesson.Leaf("method", "triangle"), []string{"not worked that way", "method triangle", "concurrent-forces"}},
		{&kinds.TwoForces, 3, lesson.Leaf("method", "triangle"), []string{"method triangle", "another difficulty"}},
	} {
		s, err := lesson.ReadSettings(lesson.Branch(lesson.CheckKey, row.check))
		require.NoError(t, err)
		k, draws := *row.kind, 0
		k.Draw = func(d *lesson.Draw) lesson.Source { draws++; return row.kind.Draw(d) }
		_, _, err = Wish{Kind: &k, Difficulty: row.difficulty, Quadrants: [4]bool{true}, Settings: s}.Generate(1)
		for _, says := range row.says {
			assert.ErrorContains(t, err, says)
		}
		assert.LessOrEqual(t, draws, maxUnsuited)
	}
}
