package kinds

import (
	"math"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
	"pgregory.net/rapid"

	"closingside/statics"
	"closingside/tutor"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// The components solve Fu u + Fv v = F, as gonum solves the two equations; and
// every route agrees with them, however the axes lie and are numbered.
func TestObliqueComponentsSolveTheSystem(t *testing.T) {
	negative := 0
	defer func() { assert.NotZero(t, negative) }()
	rapid.Check(t, func(t *rapid.T) {
		at := rapid.Float64Range(-180, 180).Draw(t, "direction")
		first, second := rapid.Float64Range(3, 177).Draw(t, "to u"), rapid.Float64Range(3, 177).Draw(t, "to v")
		if rapid.Bool().Draw(t, "v on the same side") {
			second = -second
		}
		if rapid.Bool().Draw(t, "clockwise") {
			first, second = -first, -second
		}
		if apart := math.Abs(math.Remainder(first+second, 180)); apart < 3 {
			t.Skip("along one line")
		}
		size := rapid.Float64Range(1, 9999).Draw(t, "magnitude")
		deg := func(v float64) string { return strconv.FormatFloat(v, 'f', 3, 64) + " deg" }
		l := lessonOf(t, ObliqueComponentsSource("", ForceSource("P", strconv.FormatFloat(size, 'f', 2, 64)+" N", deg(at)), AxisSource("u", deg(at-first)), AxisSource("v", deg(at+second))))
		checkRoutes(t, l)
		dir := func(name string) (x, y float64) {
			sin, cos := (statics.Angle(l.Truth(name)) * statics.Degree).Sincos()
			return cos, sin
		}
		if l.Truth("Fu") < 0 || l.Truth("Fv") < 0 {
			negative++
		}
		ux, uy := dir("thetau")
		vx, vy := dir("thetav")
		fx, fy := dir("theta")
		var got mat.VecDense
		require.NoError(t, got.SolveVec(mat.NewDense(2, 2, []float64{ux, vx, uy, vy}), mat.NewVecDense(2, []float64{l.Truth("F") * fx, l.Truth("F") * fy})))
		scale := max(l.Truth("F"), math.Abs(l.Truth("Fu")), math.Abs(l.Truth("Fv")))
		assert.InDelta(t, got.AtVec(0), l.Truth("Fu"), 1e-9*scale)
		assert.InDelta(t, got.AtVec(1), l.Truth("Fv"), 1e-9*scale)
	})
}

// A force and its oblique components are a triangle of which one side and two
// angles are given.
func TestObliqueComponentsOfPublishedTriangles(t *testing.T) {
	for _, row := range []struct {
		source               string
		f, toU, toV          float64 // side, and the angles at its ends
		u, v                 float64 // the sides opposite toV and toU
		unit                 string
		accuracyU, accuracyV float64
	}{
		{"OpenStax Precalculus 2e, section 8.1, Try It 1", 22, 43, 98, 34.6, 23.8, "N", 0.05, 0.05},
		{"OpenStax Precalculus 2e, section 8.1, Exercise 7", 20, 35, 72, 19.9, 12.0, "lb", 0.05, 0.05},
	} {
		t.Run(row.source, func(t *testing.T) {
			side := strconv.FormatFloat(row.f, 'g', -1, 64) + " " + row.unit
			l := lessonOf(t, ObliqueComponentsSource("", ForceSource("P", side, "100 deg"),
				AxisSource("u", strconv.FormatFloat(100-row.toU, 'g', -1, 64)+" deg"), AxisSource("v", strconv.FormatFloat(100+row.toV, 'g', -1, 64)+" deg")))
			assert.InDelta(t, row.u, l.Truth("Fu"), row.accuracyU)
			assert.InDelta(t, row.v, l.Truth("Fv"), row.accuracyV)
		})
	}
}

func TestObliqueComponentsRefused(t *testing.T) {
	for name, row := range map[string]struct{ f, u, v, un, why string }{
		"against":            {"190 deg", "10 deg", "80 deg", "u", "lies along one of the axes"},
		"along":              {"10 deg", "10 deg", "80 deg", "u", "lies along one of the axes"},
		"parallel axes":      {"30 deg", "10 deg", "10.2 deg", "u", "along one line"},
		"opposite axes":      {"30 deg", "10 deg", "190 deg", "u", "along one line"},
		"rectangular's name": {"30 deg", "10 deg", "80 deg", "x", "such as u and v"},
	} {
		t.Run(name, func(t *testing.T) {
			p, err := All.Read(ObliqueComponentsSource("", ForceSource("P", "100 N", row.f), AxisSource(row.un, row.u), AxisSource("v", row.v)))
			require.NoError(t, err)
			_, err = tutor.Open(p)
			require.ErrorContains(t, err, row.why)
		})
	}
}

// Right-angle trigonometry between axes that are not at right angles is named.
func TestProjectionForObliqueComponent(t *testing.T) {
	l := lessonOf(t, ObliqueComponents.Bank[0])
	w := tutor.NewWork(l, lesson.DefaultSettings())
	r := w.Enter("Fu", "396.0 N") // 560 cos 45°
	require.Equal(t, verdict.SlipFound, r.Verdict, r.Feedback)
	assert.Contains(t, r.Slips[0].IDs, "right-triangle-assumed")
	assert.Equal(t, verdict.Correct, w.Enter("Fu", "416.7 N").Verdict) // 560 sin 48° / sin 87°
}

// By hand: 720 N at 80° along 45° and −20°. Across the second axis
// Fu sin 65° = 720 sin 100°, so Fu = 782.4 N; across the first
// Fv sin(−65°) = 720 sin 35°, so Fv = −455.7 N.
func TestAComponentAgainstItsAxis(t *testing.T) {
	l := lessonOf(t, ObliqueComponents.Bank[5])
	assert.InDelta(t, 782.363, l.Truth("Fu"), 0.005)
	assert.InDelta(t, -455.668, l.Truth("Fv"), 0.005)
	w := tutor.NewWork(l, lesson.DefaultSettings())
	r := w.Enter("Fv", "455.7 N")
	require.Equal(t, verdict.SlipFound, r.Verdict, r.Feedback)
	assert.Contains(t, r.Slips[0].IDs, "sign-lost")
	assert.Equal(t, verdict.Correct, w.Enter("Fv", "-455.7 N").Verdict)
	assert.Equal(t, verdict.Correct, w.Enter("Fu", "782.4 N").Verdict)
	assert.True(t, w.Done())
}

// A component is along the axis that the statement names.
func TestAnObliqueComponentNamesItsAxis(t *testing.T) {
	p, err := All.Read(ObliqueComponentsSource("", ForceSource("M", "6.4 kN", "52 deg"), AxisSource("a1", "0 deg"), AxisSource("b", "75 deg")))
	require.NoError(t, err)
	l, err := tutor.Open(p)
	require.NoError(t, err)
	assert.Equal(t, "the component of M along the axis a₁", l.Sentence(l.Quantity("Fu"), "what"))
	assert.Equal(t, "the component of M along the axis b", l.Sentence(l.Quantity("Fv"), "what"))
}
