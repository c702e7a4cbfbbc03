package kinds

import (
	"math"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/spatial/r2"
	"pgregory.net/rapid"

	"closingside/tutor"
	"closingside/tutor/lesson"
)

// under is a problem at rest under a gravity of its own.
func under(g string, parts ...lesson.Source) lesson.Source {
	src := EquilibriumSource("", parts...)
	src.Kids = append(src.Kids, lesson.Leaf("gravity", g))
	return src
}

// Every particle at rest of the published examples, as a problem of this kind.
func TestPublishedParticles(t *testing.T) {
	const g = "9.8 m/s²"
	load := func(mass string) lesson.Source { return PartSource("W weight", "mass: "+mass) }
	sag := func(deg string) lesson.Source {
		return PartSource("T cable", "direction: "+deg+" deg above -x", "second: "+deg+" deg above +x")
	}
	of := func(names ...string) map[string]as { // answer, quantity, …
		m := map[string]as{}
		for i := 0; i < len(names); i += 2 {
			m[names[i]] = as{names[i+1], 1}
		}
		return m
	}
	three := []lesson.Source{PartSource("A force", "direction: 55 deg S of E", "force: 160 N"), PartSource("B force", "direction: 60 deg E of N", "force: 200 N"),
		PartSource("C force", "direction: 55 deg W of N", "force: 140 N")}
	rows := []counterpart{
		{"up2-e10", EquilibriumSource("", append(three, PartSource("D cable"))...), map[string]as{"Rx": {"F4x", -1}, "Ry": {"F4y", -1}, "D": {"F4", 1}}},
		{"up2-t9", EquilibriumSource("", three[0], three[2], PartSource("D cable")), of("D", "F3", "angle_N_of_E", "theta3")},
		{"up5-e13", under(g, sag("5"), load("70 kg")), of("T", "F1")},
		{"up5-t9", EquilibriumSource("", PartSource("T cable", "direction: 0.25:1.47901994577 up left", "second: 0.25:1.47901994577 up right"), PartSource("F force", "direction: -90 deg", "force: 200 N")), of("T", "F1")},
		{"up5-p41", under(g, sag("12"), load("0.00002 kg")), of("T_horizontal_strand", "F1")},
		{"up5-p41", under(g, PartSource("T cable", "direction: 90 deg"), load("0.00002 kg")), of("T_vertical", "F1")},
		{"up5-p45", under(g, sag("5"), load("26 g")), of("T_b", "F1")},
		{"up5-p45", under(g, sag("0.5"), load("26 g")), of("T_c", "F1")},
		{"up5-p47", under(g, PartSource("T cable", "direction: 90 deg", "force: 55 N"), PartSource("W weight", "find: mass")), of("T1", "F2", "m", "m2")},
		{"up5-p47", under(g, PartSource("T cable", "direction: 90 deg"), PartSource("S weight", "mass: 0.5 kg"), PartSource("P weight", "force: 55 N")), of("T2", "F1")},
		{"up5-p49", under(g, PartSource("P force", "direction: 30 deg"), PartSource("R force", "direction: 30 deg left of +y"), load("2 kg")), of("N", "F2", "F_parallel", "F1")},
		{"up5-a16", EquilibriumSource("", PartSource("A spring", "direction: 30 deg left of +y", "stiffness: 20 N/m"), PartSource("B spring", "direction: 30 deg right of +y", "stiffness: 20 N/m"), PartSource("W weight", "force: 15 N")), of("T", "F1", "stretch", "s1")},
		{"up6-e1", under(g, PartSource("T1 cable", "direction: 30 deg above -x"), PartSource("T2 cable", "direction: 45 deg above +x"), load("15 kg")), of("T1", "F1", "T2", "F2")},
		{"up6-p1", under(g, PartSource("T cable", "direction: 30 deg left of +y", "second: 30 deg left of +y"), PartSource("F force", "direction: 0 deg"), load("30 kg")), of("T_each", "F1", "F", "F2")},
		{"up6-p3", EquilibriumSource("", PartSource("A force", "direction: 5:3 up right", "force: 5.8309518948453 N"), PartSource("B force", "direction: 7:4 down right", "force: 8.0622577482985 N"), PartSource("C force")), of("F3x", "F3x", "F3y", "F3y")},
		{"calc21-x55", EquilibriumSource("", PartSource("T1 cable", "direction: 40 deg above -x"), PartSource("T2 cable", "direction: 53 deg above +x"), PartSource("W weight", "force: 50 lb")), of("T1", "F1", "T2", "F2")},
	}
	book := readPublished(t)
	book.check(t, "particle-equilibrium-2d", rows)
	// The print's "18.1° S of W" is told here counter-clockwise from +x.
	d := lessonOf(t, rows[0].src)
	book["up2-e10"].holds(t, "angle_S_of_W", d.Truth("theta4")+180, true)
	s := lessonOf(t, rows[12].src)
	book["up6-e1"].holds(t, "ratio_T2_T1", s.Truth("F2")/s.Truth("F1"), false)
}

func TestForcesAtRestAddUpToZero(t *testing.T) {
	d := lesson.NewDraw(11, 4)
	opened := 0
	for range 3000 {
		p, err := All.Read(ParticleEquilibrium.Draw(d))
		require.NoError(t, err)
		l, err := tutor.Open(p)
		if err != nil {
			continue
		}
		opened++
		sum, size := balance(l.Lesson)
		assert.LessOrEqual(t, r2.Norm(sum), 1e-12*size, p.Code())
		checkRoutes(t, l)
	}
	assert.Greater(t, opened, 2500)
}

// turnedAtRest is a cable-cable-load problem with every direction turned and every
// load scaled.
func turnedAtRest(a, b, load, turn, scale float64, strut bool) lesson.Source {
	deg := func(v float64) string { return "direction: " + strconv.FormatFloat(v+turn, 'f', -1, 64) + " deg" }
	second := "T2 cable"
	if strut {
		second, b = "T2 strut", b+180
	}
	return EquilibriumSource("", PartSource("T1 cable", deg(a)), PartSource(second, deg(b)),
		PartSource("W force", deg(-90), "force: "+strconv.FormatFloat(load*scale, 'f', -1, 64)+" N"))
}

func TestTurningAndScalingAParticle(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		a := float64(rapid.IntRange(100, 170).Draw(rt, "a"))
		b := float64(rapid.IntRange(10, 80).Draw(rt, "b"))
		load := float64(rapid.IntRange(10, 900).Draw(rt, "load"))
		turn := float64(rapid.IntRange(-3600, 3600).Draw(rt, "turn")) / 10
		scale := float64(rapid.IntRange(1, 40).Draw(rt, "scale")) / 4
		strut := rapid.Bool().Draw(rt, "strut")
		plain, moved := lessonOf(t, turnedAtRest(a, b, load, 0, 1, strut)), lessonOf(t, turnedAtRest(a, b, load, turn, scale, strut))
		for _, name := range []string{"F1", "F2"} {
			if want, got := plain.Truth(name)*scale, moved.Truth(name); math.Abs(got-want) > 1e-9*load*scale {
				rt.Fatalf("%s = %v, want %v", name, got, want)
			}
		}
		for _, name := range []string{"phi1", "alpha", "phi2", "beta", "phi3", "gamma"} {
			if want, got := plain.Truth(name), moved.Truth(name); math.Abs(got-want) > 1e-9 {
				rt.Fatalf("%s = %v, want %v", name, got, want)
			}
		}
		checkRoutes(t, moved)
	})
}

func TestWhatCannotBeAtRestIsRefused(t *testing.T) {
	load := PartSource("W weight", "force: 500 N")
	cable := func(name, direction string) lesson.Source {
		return PartSource(name+" cable", "direction: "+direction)
	}
	rows := []struct {
		name  string
		parts []lesson.Source
		says  string
	}{
		{"a cable that would push", []lesson.Source{cable("A", "40 deg above +x"), cable("B", "20 deg above +x"), load}, "only pull"},
		{"a strut that would pull", []lesson.Source{cable("A", "30 deg above -x"), PartSource("B strut", "direction: 40 deg above +x"), load}, "taken to push"},
		{"a spring that would push", []lesson.Source{cable("A", "40 deg above +x"), PartSource("S spring", "direction: 20 deg above +x", "stretch: 20 mm"), load}, "given as stretched"},
		{"three unknown cables", []lesson.Source{cable("A", "150 deg"), cable("B", "90 deg"), cable("C", "30 deg"), load}, "more unknowns"},
		{"two on one line", []lesson.Source{cable("A", "90 deg"), cable("B", "90 deg"), load}, "along one line"},
		{"nearly one line", []lesson.Source{cable("A", "90 deg"), cable("B", "90.1 deg"), load}, "nearly one line"},
		{"pushed across", []lesson.Source{cable("A", "90 deg"), load, PartSource("H force", "direction: 0 deg", "force: 50 N")}, "would move"},
		{"nothing to find", []lesson.Source{PartSource("A cable", "direction: 90 deg", "force: 500 N"), load}, "nothing to find"},
		{"nothing left over", []lesson.Source{PartSource("A cable", "direction: 90 deg", "force: 500 N"), load, PartSource("C cable")}, "balances by itself"},
		{"a weight to the side", []lesson.Source{cable("A", "90 deg"), PartSource("W weight", "force: 500 N", "direction: 10 deg")}, "straight down"},
		{"a known force without direction", []lesson.Source{PartSource("A cable", "force: 90 N"), cable("B", "90 deg"), load}, "along the line of B"},
		{"a known force without direction beside nothing", []lesson.Source{PartSource("A cable", "force: 90 N"), load}, "direction of A"},
		{"a stretched cable", []lesson.Source{PartSource("A cable", "direction: 90 deg", "stretch: 0.1 m"), load}, "only a spring"},
		{"a mass on a cable", []lesson.Source{PartSource("A cable", "direction: 90 deg", "mass: 3 kg"), load}, "belongs to a weight"},
		{"pounds of mass", []lesson.Source{cable("A", "90 deg"), PartSource("W weight", "mass: 30 lbm")}, "slugs"},
		{"a strut round the particle", []lesson.Source{PartSource("A strut", "direction: 60 deg", "second: 120 deg"), load}, "round the particle"},
		{"a weight that would lift", []lesson.Source{PartSource("A cable", "direction: -90 deg", "force: 90 N"), PartSource("W weight", "find: mass")}, "only pulls down"},
		{"a force the other way", []lesson.Source{PartSource("P force", "direction: -90 deg"), load}, "other way"},
	}
	for _, row := range rows {
		t.Run(row.name, func(t *testing.T) { refused(t, EquilibriumSource("", row.parts...), row.says) })
	}
}

func TestUnitsOfAParticle(t *testing.T) {
	rows := []struct {
		name  string
		src   lesson.Source
		unit  string
		value map[string]float64
	}{
		{"slugs weigh pounds", EquilibriumSource("", PartSource("T cable", "direction: 90 deg"), PartSource("W weight", "mass: 2 slug")), "lb", map[string]float64{"F1": 64.4, "g": 32.2}},
		{"kilonewtons and kilograms", EquilibriumSource("", PartSource("T cable", "direction: 90 deg"), PartSource("W weight", "mass: 1000 kg"), PartSource("P weight", "force: 2000 N")), "N", map[string]float64{"F1": 11810}},
		{"the first force's unit", EquilibriumSource("", PartSource("P weight", "force: 2 kN"), PartSource("T cable", "direction: 90 deg"), PartSource("W weight", "mass: 1000 kg")), "kN", map[string]float64{"F2": 11.81, "F3": 9.81}},
		{"a spring in pounds per inch", EquilibriumSource("", PartSource("S spring", "direction: 90 deg", "stiffness: 40 lb/in"), PartSource("P weight", "force: 100 lb")), "lb", map[string]float64{"s1": 2.5, "k1": 40}},
		{"a spring's stiffness", EquilibriumSource("", PartSource("S spring", "direction: 90 deg", "stretch: 50 mm"), PartSource("P weight", "force: 100 N")), "N", map[string]float64{"k1": 2}},
		{"a spring's force", EquilibriumSource("", PartSource("S spring", "direction: 90 deg", "stiffness: 2 kN/m", "stretch: 50 mm"), PartSource("W weight", "find: mass")), "N", map[string]float64{"F1": 100, "F2": 100, "m2": 100 / 9.81}},
	}
	for _, row := range rows {
		t.Run(row.name, func(t *testing.T) {
			l := lessonOf(t, row.src)
			assert.Equal(t, row.unit, l.Unit.Symbol)
			for name, want := range row.value {
				require.NotNil(t, l.Quantity(name), name)
				assert.InEpsilon(t, want, l.Truth(name), 1e-12, name)
			}
			checkRoutes(t, l)
		})
	}
}

// Where to look for a force that the statement gives by a mass or by a spring is
// there, and not in the sums.
func TestAStatedForceIsLookedForWhereItIsStated(t *testing.T) {
	for _, row := range []struct {
		what  string
		third lesson.Source
	}{
		{"mass", PartSource("W weight", "mass: 120 kg")},
		{"spring", PartSource("S spring", "direction: -90 deg", "stiffness: 2 kN/m", "stretch: 0.2 m")},
	} {
		p, err := All.Read(EquilibriumSource("", PartSource("T cable", "direction: 40 deg above -x"), PartSource("C cable", "direction: 30 deg above +x"), row.third))
		require.NoError(t, err)
		l, err := tutor.Open(p)
		require.NoError(t, err)
		assert.Contains(t, l.Sentence(l.Quantity("F3"), "look"), row.what)
		assert.Contains(t, l.Sentence(l.Quantity("F1"), "look"), "sums")
	}
}
