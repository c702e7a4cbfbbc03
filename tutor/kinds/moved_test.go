package kinds

import (
	"math"
	"slices"
	"testing"

	"closingside/statics"
	"closingside/tutor"
	"closingside/tutor/draw"
	"closingside/tutor/lesson"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// moved is a problem with every direction turned by so many degrees and every
// force, mass and stiffness made a factor larger. What is given by its
// components is turned with them; a weight, which pulls straight down, becomes
// the same force along the direction that has become of it.
func moved(p *lesson.Problem, turn, factor float64) *lesson.Problem {
	q := *p
	q.Items = slices.Clone(p.Items)
	for i := range q.Items {
		it := &q.Items[i]
		it.Fields = slices.Clone(it.Fields)
		if turn != 0 && it.Field("is").Written == "weight" {
			become(it, "is", lesson.Field{Written: "force"})
			become(it, "direction", lesson.Field{Written: "down", Value: -90})
		}
		x, y := it.Field("x"), it.Field("y")
		for j := range it.Fields {
			f := &it.Fields[j]
			switch dim := f.Unit.Dim; {
			case f.Key == "x" && f.Given():
				sin, cos := math.Sincos(turn * math.Pi / 180)
				f.Value = factor * (x.Value*cos - y.Value*sin)
			case f.Key == "y" && f.Given():
				sin, cos := math.Sincos(turn * math.Pi / 180)
				f.Value = factor * (x.Value*sin + y.Value*cos)
			case f.Given() && (f.Key == "direction" || f.Key == "second"):
				f.Value += turn
				f.Heading, _ = statics.From(statics.PlusX, statics.Angle(f.Value)*statics.Degree, statics.CounterClockwise)
			case dim == statics.DimForce || dim == statics.DimMass || dim == statics.DimStiffness:
				f.Value *= factor
			}
		}
	}
	return &q
}

// become gives a field, which the item may have, another content.
func become(it *lesson.Item, key string, f lesson.Field) {
	f.Key = key
	for i := range it.Fields {
		if it.Fields[i].Key == key {
			it.Fields[i] = f
			return
		}
	}
	it.Fields = append(it.Fields, f)
}

// turnable tells whether every load of a problem may be turned: a mass hangs
// straight down.
func turnable(p *lesson.Problem) bool {
	return !slices.ContainsFunc(p.Items, func(it lesson.Item) bool { return it.Field("is").Written == "weight" && !it.Field("force").Given() })
}

// asMoved tells whether a quantity of one lesson is what became of the one of
// that name in another: a magnitude is a factor larger, a direction turned, an
// angle between directions the same, components turned as a vector is.
func asMoved(from, to *tutor.Lesson, q *lesson.Quantity, turn, factor float64) bool {
	b, scale := to.Quantity(q.Name), largestForce(to)
	switch v := q.True; {
	case q.Equation:
		return math.Abs(b.True) <= 1e-9*scale
	case q.Turns:
		return math.Abs(math.Remainder(b.True-v-turn, 360)) <= 1e-7
	case q.Signed:
		m := from.Quantity(q.Mate)
		if m == nil {
			return turn != 0 || math.Abs(b.True-v*factor) <= 1e-9*scale
		}
		other := m.True
		if q.Name[len(q.Name)-1] == 'x' {
			other = -other
		}
		sin, cos := math.Sincos(turn * math.Pi / 180)
		return math.Abs(b.True-factor*(v*cos+other*sin)) <= 1e-9*scale
	case q.Dim == statics.DimForce || q.Dim == statics.DimMass || q.Dim == statics.DimStiffness:
		return math.Abs(b.True-v*factor) <= 1e-9*max(scale, math.Abs(v*factor))
	default:
		return math.Abs(b.True-v) <= 1e-7*max(1, math.Abs(v))
	}
}

// fromAxis tells whether q is the acute angle a force makes with an axis.
func fromAxis(q *lesson.Quantity, k *lesson.Kind) bool {
	return k == &Components && q.IsAngle() && !q.Turns
}

// Turning the axes and scaling the loads moves what is found as it must, in
// every kind, in either of two solutions; every route still agrees.
func TestTurningAndScalingEveryKind(t *testing.T) {
	for _, k := range All {
		t.Run(k.Name, func(t *testing.T) {
			compared := 0
			rapid.Check(t, func(rt *rapid.T) {
				p := draw.Generate(k, rapid.Uint64().Draw(rt, "seed"))
				factor := rapid.SampledFrom([]float64{0.25, 0.5, 2, 3, 10, 125}).Draw(rt, "factor")
				turn := 0.0
				if turnable(p) {
					turn = float64(rapid.IntRange(-3599, 3599).Draw(rt, "turn")) / 10
				}
				from, err := tutor.Open(p)
				require.NoError(rt, err)
				to, err := tutor.Open(moved(p, turn, factor))
				require.NoError(rt, err, "turned %v", turn)
				for _, s := range to.Solutions() {
					checkRoutes(rt, s)
				}
				require.Len(rt, to.Solutions(), len(from.Solutions()))
				for i, s := range from.Solutions() {
					for j := range s.Quantities {
						q := &s.Quantities[j]
						if to.Solutions()[i].Quantity(q.Name) == nil || fromAxis(q, k) && turn != 0 || q.Given && q.IsAngle() {
							continue
						}
						compared++
						if !asMoved(s, to.Solutions()[i], q, turn, factor) {
							rt.Fatalf("%s = %v became %v, turned %v, times %v (%s)", q.Name, q.True, to.Solutions()[i].Truth(q.Name), turn, factor, p.Code())
						}
					}
				}
			})
			assert.NotZero(t, compared)
			t.Logf("%d values compared", compared)
		})
	}
}
