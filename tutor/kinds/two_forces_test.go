package kinds

import (
	"math"
	"math/rand/v2"
	"strconv"
	"testing"

	"closingside/statics/expr"
	"closingside/tutor"
	"closingside/tutor/draw"
	"closingside/tutor/lesson"
	"closingside/tutor/text"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestMain(m *testing.M) {
	text.Strict = true
	m.Run()
}

// Every route must agree with the force vectors: magnitudes to 1e-9 of the
// larger force, angles to 1e-9 rad times the route's condition number (the sum
// of |slope · value| over what it reads, relative to the route's own scale).
func TestEveryRouteAgreesWithTheVectors(t *testing.T) {
	const seed, problems = 20261125, 100_000
	rng := rand.New(rand.NewPCG(seed, 1))
	checked := 0
	for range problems {
		m1, m2 := 1+rng.Float64()*999, 1+rng.Float64()*999
		d1, d2 := rng.Float64()*1500-750, rng.Float64()*1500-750
		if rng.IntN(2) == 0 {
			d1, d2 = math.Round(d1), math.Round(d2)
		}
		w := func(v float64, u string) string { return strconv.FormatFloat(v, 'f', -1, 64) + " " + u }
		p, err := All.Read(TwoForcesSource("", ForceSource("P", w(m1, "N"), w(d1, "deg")), ForceSource("Q", w(m2, "N"), w(d2, "deg"))))
		require.NoError(t, err)
		l, err := tutor.Open(p)
		if err != nil {
			continue
		}
		checked++
		for i := range l.Quantities {
			q := &l.Quantities[i]
			for _, r := range q.Routes {
				got := expr.Eval(r.Tree, l.Truth)
				if off, tol := q.Distance(got, q.True), routeTolerance(l, q, r); !(off <= tol) {
					t.Fatalf("seed %d: %s by %s = %v, want %v ± %g; P = %v N at %v°, Q = %v N at %v°", seed, q.Name, r.ID, got, q.True, tol, m1, d1, m2, d2)
				}
			}
		}
	}
	assert.Greater(t, checked, problems*99/100)
}

func routeTolerance(l *tutor.Lesson, q *lesson.Quantity, r lesson.Route) float64 {
	unit := 1e-9 * 180 / math.Pi
	if q.Dim != lesson.AngleUnit.Dim {
		unit = 1e-9 * max(l.Truth("F1"), l.Truth("F2"))
	}
	condition := 1.0
	for _, p := range expr.Trace(r.Tree, l.Truth) {
		c := math.Abs(p.Slope * p.Value)
		if math.IsNaN(c) {
			return math.Inf(1)
		}
		if q.Dim == lesson.AngleUnit.Dim {
			c *= math.Pi / 180
		} else {
			c /= max(l.Truth("F1"), l.Truth("F2"))
		}
		condition = max(condition, c)
	}
	return unit * condition
}

func TestDegenerateProblemsAreRefusedWithAReason(t *testing.T) {
	rows := []struct{ name, m1, d1, m2, d2, says string }{
		{"parallel", "340 N", "25 deg", "610 N", "385 deg", "same way"},
		{"opposite", "340 N", "25 deg", "610 N", "-155 deg", "opposite ways"},
		{"equal and opposite", "340 N", "25 deg", "340 N", "205 deg", "zero"},
		{"ratio", "1 N", "25 deg", "1.1 kN", "80 deg", "1000 times"},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			refused(t, TwoForcesSource("", ForceSource("P", r.m1, r.d1), ForceSource("Q", r.m2, r.d2)), r.says)
		})
	}
	for _, m := range []string{"0 N", "-5 N", "1e999 N"} {
		t.Run(m, func(t *testing.T) {
			_, err := All.Read(TwoForcesSource("", ForceSource("P", m, "0 deg"), ForceSource("Q", "1 N", "90 deg")))
			var at *lesson.SourceError
			assert.ErrorAs(t, err, &at)
		})
	}
}

func TestBankAndDrawsOpen(t *testing.T) {
	for _, k := range All {
		for _, p := range k.BankProblems() {
			_, err := tutor.Open(p)
			assert.NoError(t, err, p.Story)
		}
		for seed := range uint64(200) {
			_, err := tutor.Open(draw.Generate(k, seed))
			require.NoError(t, err, "seed %d", seed)
		}
	}
}

func TestTheSameSeedDrawsTheSameProblem(t *testing.T) {
	p := draw.Generate(&TwoForces, 7)
	f := p.Group("forces")
	got := []string{f[0].Field("magnitude").Written, f[0].Field("direction").Written, f[1].Field("magnitude").Written, f[1].Field("direction").Written}
	assert.Equal(t, []string{"340 N", "-164 deg", "400 N", "-68 deg"}, got)
}
