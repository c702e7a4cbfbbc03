package figure

import (
	"math"
	"math/rand/v2"
	"testing"

	"closingside/statics"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/spatial/r2"
	"pgregory.net/rapid"
)

// tipAndTail is where the arrow called name begins and ends, as drawn.
func tipAndTail(t require.TestingT, d Drawing, name string, c Class) (tip, tail Point) {
	found := 0
	for _, m := range d.Marks {
		if m.Name != name || m.Class != c {
			continue
		}
		switch m.Shape {
		case Head:
			tip = m.Points[0]
			found++
		case Path:
			tail = m.Points[0]
			found++
		case Polygon: // the double line of a resultant begins with its tail's two corners
			n := len(m.Points)
			tail = m.Points[0].lerp(m.Points[n-1], 0.5)
			found++
		}
	}
	require.Equal(t, 2, found, "shaft and head of "+name)
	return tip, tail
}

// TestArrowsAreTrue: every force has the direction and, at one scale, the
// length of its vector, within the rounding of its ends to a tenth.
func TestArrowsAreTrue(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := rand.New(rand.NewPCG(rapid.Uint64().Draw(t, "seed"), 1))
		p := randomPair(r)
		size := randomSize(r)
		check := func(d Drawing, name string, c Class, v r2.Vec) {
			tip, tail := tipAndTail(t, d, name, c)
			drawn := tip.sub(tail)
			assert.InDelta(t, v.X*d.Scale, drawn.X, 0.11)
			assert.InDelta(t, -v.Y*d.Scale, drawn.Y, 0.11)
		}
		for _, d := range []Drawing{
			Layout(Given(p.First, p.Second), size), Layout(Parallelogram(p), size), Layout(HeadToTail(p), size),
		} {
			check(d, "F1", ClassForce, p.First.Vec)
			check(d, "F2", ClassForce, p.Second.Vec)
		}
		if sum := r2.Add(p.First.Vec, p.Second.Vec); r2.Norm(sum) > 1 {
			check(Layout(HeadToTail(p), size), "R", ClassResultant, sum)
			check(Layout(Parallelogram(p), size), "R", ClassResultant, sum)
		}
	})
}

// TestTheOriginIsWhereTheDrawingSays: by origin and scale a vector is found on the page.
func TestTheOriginIsWhereTheDrawingSays(t *testing.T) {
	p := tugs()
	d := Layout(HeadToTail(p), Size{Width: 360, Height: 300})
	tip, tail := tipAndTail(t, d, "F2", ClassForce)
	for _, c := range []struct {
		name string
		v    r2.Vec
		at   Point
	}{{"tail of Q", p.First.Vec, tail}, {"head of Q", r2.Add(p.First.Vec, p.Second.Vec), tip}} {
		assert.InDelta(t, 0, d.FromWorld(c.v).sub(c.at).norm(), 0.2, c.name)
	}
}

// TestArcsAreTrue: an arc spans its angle about its centre.
func TestArcsAreTrue(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := rapid.Float64Range(-180, 180).Draw(t, "from")
		turn := rapid.Float64Range(25, 355).Draw(t, "turn") * float64(1-2*rapid.IntRange(0, 1).Draw(t, "clockwise"))
		if math.Abs(math.Abs(turn)-90) < 1e-6 {
			turn++
		}
		s := Scene{Arcs: []Arc{{From: deg(from), Turn: deg(turn)}}, Arrows: []Arrow{
			{To: statics.Polar(100, deg(from))}, {To: statics.Polar(100, deg(from+turn))}}}
		d := Layout(s, Size{Width: 320, Height: 320})
		total, at := 0.0, deg(from)
		for _, m := range d.Marks {
			if m.Shape == ArcPath {
				centre, gotFrom, gotTurn := m.Arc()
				assert.InDelta(t, 0, centre.sub(d.Origin).norm(), 1)
				assert.InDelta(t, 0, (gotFrom - at).Normalized().Degrees(), 2)
				total += gotTurn.Degrees()
				at += gotTurn
			}
		}
		assert.InDelta(t, turn, total, 2)
	})
}

// TestNarrowAngles: a narrow angle's arc moves out to where it can be seen, and
// one that stays too short is marked by arrows from outside.
func TestNarrowAngles(t *testing.T) {
	for _, c := range []struct {
		name    string
		degrees float64
		arcs    int
		least   float64 // of the radius
	}{{"300°", 300, 3, arcFirst}, {"40°", 40, 1, arcFirst}, {"12°", 12, 1, 60}, {"3°", 3, 2, 100}, {"0.5°", 0.5, 2, 100}} {
		t.Run(c.name, func(t *testing.T) {
			s := Given(forceAt("P", "", 300, 0), forceAt("Q", "", 300, c.degrees))
			s.Arcs[0].Label = Label{}
			d := Layout(s, Size{Width: 360, Height: 300})
			arcs := 0
			for _, m := range d.Marks {
				if m.Shape == ArcPath {
					arcs++
					assert.GreaterOrEqual(t, m.Radius, c.least)
				}
			}
			assert.Equal(t, c.arcs, arcs)
			assert.Zero(t, disturbed(d))
		})
	}
}

// A leader ends at the label that it ties to its part, whichever way it leads.
func TestALeaderReachesItsLabel(t *testing.T) {
	p := &placer{frame: Box{Point{0, 0}, Point{600, 600}}}
	led := p.led(&want{w: 70, h: 18, anchor: anchor{kind: onTip, b: Point{300, 300}}}, nil)
	assert.NotEmpty(t, led)
	for _, s := range led {
		assert.True(t, s.box.grow(leaderGap+0.01).hold(s.end) == s.box.grow(leaderGap+0.01), "a gap between %v and %v", s.end, s.box)
		assert.False(t, s.box.grow(leaderGap-0.01).hold(s.end) == s.box.grow(leaderGap-0.01), "%v is too close to %v", s.end, s.box)
	}
}

func TestLayoutsRepeat(t *testing.T) {
	for seed := range 40 {
		for name, s := range randomScenes(rand.New(rand.NewPCG(uint64(seed), 2))) {
			first := Layout(s, Size{Width: 360, Height: 300})
			assert.Equal(t, first, Layout(s, Size{Width: 360, Height: 300}), name)
		}
	}
}

// TestTheLayoutFits: the drawing is no larger than its room, and no taller than
// it needs to be.
func TestTheLayoutFits(t *testing.T) {
	flat := Given(forceAt("P", "", 300, 0), forceAt("Q", "", 300, 180))
	for _, w := range []float64{280, 320, 390, 700} {
		d := Layout(flat, Size{Width: w, Height: 320})
		assert.Equal(t, w, d.Width)
		assert.Less(t, d.Height, 160.0, "a flat figure takes little height")
		assert.True(t, inside(d))
	}
	assert.Panics(t, func() { Layout(flat, Size{Width: 10, Height: 10}) })
	assert.Panics(t, func() { Layout(flat, Size{Width: math.NaN(), Height: 300}) })
}

func TestUnusualForcesAreDrawn(t *testing.T) {
	for _, c := range []struct {
		name string
		pair Pair
	}{
		{"equal and opposite", Pair{First: forceAt("P", "", 300, 20), Second: forceAt("Q", "", 300, 200)}},
		{"parallel", Pair{First: forceAt("P", "", 300, 20), Second: forceAt("Q", "", 200, 20)}},
		{"zero", Pair{First: forceAt("P", "", 300, 20), Second: forceAt("Q", "", 0, 20)}},
		{"1000 to 1", Pair{First: forceAt("P", "", 1000, 20), Second: forceAt("Q", "", 1, 100)}},
		{"tiny", Pair{First: forceAt("P", "", 3e-9, 20), Second: forceAt("Q", "", 1e-9, 100)}},
		{"huge", Pair{First: forceAt("P", "", 3e12, 20), Second: forceAt("Q", "", 1e12, 100)}},
	} {
		t.Run(c.name, func(t *testing.T) {
			c.pair.Resultant, c.pair.AtJoint = Symbol("R", ""), Symbol("γ", "")
			for _, s := range []Scene{Given(c.pair.First, c.pair.Second), Parallelogram(c.pair), HeadToTail(c.pair)} {
				d := Layout(s, Size{Width: 360, Height: 300})
				assert.Zero(t, disturbed(d))
				assert.True(t, inside(d))
				sampled(d, func(p Point, _ float64) {
					require.False(t, math.IsNaN(p.X+p.Y) || math.IsInf(p.X+p.Y, 0))
				})
			}
		})
	}
}

func TestStepsBuildTheFigureUp(t *testing.T) {
	d := Layout(HeadToTail(tugs()), Size{Width: 360, Height: 300})
	step := map[string]int{}
	for _, m := range d.Marks {
		if m.Name != "" {
			step[m.Name] = m.Step
		}
	}
	assert.Less(t, step["F1"], step["F2"])
	assert.Less(t, step["F2"], step["R"])
	assert.Less(t, step["R"], step["joint"])
	assert.Equal(t, step["joint"]+1, d.Steps)
	for _, m := range d.Marks {
		if m.Name == "F2" && m.Shape == Path && m.Class == ClassForce {
			back := m.Points[0].add(m.Shift)
			assert.InDelta(t, 0, back.sub(d.Origin).norm(), 0.3, "the second force comes from the common point")
		}
	}
}

// TestANarrowAngleIsLabelledBetweenItsSides: where a narrow angle opens wide enough, its
// label stands there, and no leader crosses the force.
func TestANarrowAngleIsLabelledBetweenItsSides(t *testing.T) {
	for _, degrees := range []float64{20, 25, 35} {
		for _, size := range []Size{{Width: 330, Height: 250}, {Width: 330, Height: 175, Text: 14}} {
			s := Rectangular(forceAt("T", "", 340, degrees), Symbol("T", "x"), Symbol("T", "y"))
			d := Layout(s, size)
			assert.Zero(t, d.Cost.Leaders, "%g°, %v", degrees, size)
			for _, m := range d.Marks {
				if m.Shape == Text && m.Class == ClassArc {
					at := d.Origin.sub(m.Box.centre())
					got := math.Atan2(at.Y, -at.X) * 180 / math.Pi
					assert.True(t, 0 < got && got < degrees, "%g°, %v: the label stands at %g°", degrees, size, got)
				}
			}
		}
	}
}

// TestALeaderPrefersNotToCrossAnArrow: of two ways out, it takes the one across fine lines.
func TestALeaderPrefersNotToCrossAnArrow(t *testing.T) {
	p := placer{strokes: []stroke{{a: Point{0, 10}, b: Point{20, 10}, half: 1, owner: 1, shaft: true}, {a: Point{0, -10}, b: Point{20, -10}, half: 0.5, owner: 2}}}
	arrow, axis := p.crossed(Point{10, 0}, Point{10, 20}, 3), p.crossed(Point{10, 0}, Point{10, -20}, 3)
	assert.Equal(t, 3, arrow)
	assert.Equal(t, 1, axis)
	assert.Zero(t, p.crossed(Point{10, 0}, Point{10, 20}, 1), "its own part is none")
}
