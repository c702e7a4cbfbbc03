package statics

import (
	"testing"

	"github.com/stretchr/testify/require"
)

type answers = map[string]float64

type check = func(t *testing.T, r record) map[string]float64

// degrees of an angle and the sides of a triangle, by name, from records that
// use the standard letters.
func lettered(tri Triangle, suffix string) answers {
	return answers{
		"a" + suffix: tri.A, "b" + suffix: tri.B, "c" + suffix: tri.C,
		"alpha" + suffix: tri.Alpha.Degrees(), "beta" + suffix: tri.Beta.Degrees(), "gamma" + suffix: tri.Gamma.Degrees(),
		"A" + suffix: tri.Alpha.Degrees(), "B" + suffix: tri.Beta.Degrees(), "C" + suffix: tri.Gamma.Degrees(),
	}
}

// ssa checks a record that gives the sides named a and b and the angle alpha
// opposite a, in whatever letters. The answers come back in the record's letters.
func ssa(a, b, alpha string) check {
	return func(t *testing.T, r record) map[string]float64 {
		found := SSA(r.number(t, a), r.number(t, b), r.angle(t, alpha))
		got := answers{"n_triangles": float64(len(found))}
		letter := map[string]string{"alpha": "a", "beta": "b", "gamma": "c"}
		angleOf := map[string]string{"a": "alpha", "b": "beta", "c": "gamma"}
		first, second := letter[alpha], b
		third := map[string]string{"ab": "c", "ba": "c", "ac": "b", "ca": "b", "bc": "a", "cb": "a"}[first+second]
		for i, tri := range found {
			suffix := ""
			if len(found) == 2 {
				suffix = [...]string{"_1", "_2"}[i]
			}
			got[first+suffix], got[angleOf[first]+suffix] = tri.A, tri.Alpha.Degrees()
			got[second+suffix], got[angleOf[second]+suffix] = tri.B, tri.Beta.Degrees()
			got[third+suffix], got[angleOf[third]+suffix] = tri.C, tri.Gamma.Degrees()
		}
		return got
	}
}

// one asserts that there is one triangle and returns it.
func one(t *testing.T, found []Triangle) Triangle {
	t.Helper()
	require.Len(t, found, 1)
	return found[0]
}

func must(t *testing.T) func(Triangle, bool) Triangle {
	return func(tri Triangle, ok bool) Triangle {
		t.Helper()
		require.True(t, ok)
		return tri
	}
}

func TestPublishedSSA(t *testing.T) {
	checkAll(t, "triangle-SSA", map[string]check{
		"pre81-e2":  ssa("a", "b", "alpha"),
		"pre81-t2":  ssa("a", "b", "alpha"),
		"pre81-e3":  ssa("c", "b", "gamma"),
		"pre81-t3":  ssa("a", "b", "alpha"),
		"pre81-t4":  ssa("b", "a", "beta"),
		"pre81-x15": ssa("c", "b", "gamma"),
		"pre81-x17": ssa("a", "c", "alpha"),
		"pre81-x23": ssa("b", "a", "beta"),
		"pre82-x13": ssa("a", "b", "alpha"),
		"pre82-x15": ssa("b", "a", "beta"),
		"pre88-r1":  ssa("b", "a", "beta"),
		"pre88-pt1": ssa("b", "c", "beta"),
		"pre81-e4": func(t *testing.T, r record) map[string]float64 {
			a, b, alpha := r.number(t, "side_opposite"), r.number(t, "other_side"), r.angle(t, "angle")
			sin, _ := alpha.Sincos()
			return answers{"n_triangles": float64(len(SSA(a, b, alpha))), "sin_of_second_angle": b * sin / a}
		},
		"pre81-x37": func(t *testing.T, r record) map[string]float64 {
			tri := one(t, SSA(r.number(t, "side_opposite"), r.number(t, "other_side"), r.angle(t, "known_angle")))
			return answers{"x": tri.Beta.Degrees()}
		},
		"pre81-x41": func(t *testing.T, r record) map[string]float64 { // the figure's x is obtuse
			found := SSA(r.number(t, "side_opposite"), r.number(t, "other_side"), r.angle(t, "known_angle"))
			require.Len(t, found, 2)
			return answers{"x": found[1].Beta.Degrees()}
		},
		"pre81-x43": func(t *testing.T, r record) map[string]float64 {
			tri := one(t, SSA(r.number(t, "AC"), r.number(t, "AB"), r.angle(t, "B")))
			return answers{"C": tri.Beta.Degrees(), "A": tri.Gamma.Degrees(), "BC": tri.C}
		},
		"pre81-x55": func(t *testing.T, r record) map[string]float64 {
			tri := one(t, SSA(r.number(t, "BC_diagonal"), r.number(t, "BD"), r.angle(t, "A")))
			return answers{"AB": tri.C}
		},
		"pre82-x59": func(t *testing.T, r record) map[string]float64 { // the printed area has the acute second angle
			found := SSA(r.number(t, "side_opposite"), r.number(t, "other_side"), r.angle(t, "angle"))
			require.Len(t, found, 2)
			return answers{"area": area(found[0])}
		},
	})
}

func TestPublishedSAS(t *testing.T) {
	sas := func(a, gamma, b, asked string) check {
		return func(t *testing.T, r record) map[string]float64 {
			tri := must(t)(SAS(r.number(t, a), r.angle(t, gamma), r.number(t, b)))
			return answers{asked: tri.C}
		}
	}
	checkAll(t, "triangle-SAS", map[string]check{
		"pre82-x7":  sas("b", "alpha", "c", "a"),
		"pre82-x9":  sas("a", "gamma", "b", "c"),
		"pre82-x33": sas("side_1", "angle", "side_2", "x"),
		"pre82-x37": sas("side_1", "angle", "side_2", "x"),
		"pre82-x45": sas("side_1", "angle", "side_2", "x"),
		"pre82-x63": sas("side_1", "angle", "side_2", "distance"),
		"pre88-r9":  sas("side_1", "angle", "side_2", "distance"),
		"pre81-x57": func(t *testing.T, r record) map[string]float64 { // M lies between MN and ML
			tri := must(t)(SAS(r.number(t, "MN"), r.angle(t, "M"), r.number(t, "ML")))
			return answers{"L": tri.Alpha.Degrees(), "N": tri.Beta.Degrees(), "LN": tri.C}
		},
		"pre82-x21": func(t *testing.T, r record) map[string]float64 {
			tri := must(t)(SAS(r.number(t, "b"), r.angle(t, "A"), r.number(t, "c")))
			return answers{"B": tri.Alpha.Degrees(), "C": tri.Beta.Degrees(), "a": tri.C}
		},
		"pre82-x23": func(t *testing.T, r record) map[string]float64 {
			return lettered(must(t)(SAS(r.number(t, "a"), r.angle(t, "C"), r.number(t, "b"))), "")
		},
		"pre82-x65": func(t *testing.T, r record) map[string]float64 { // uphill and the vertical tower
			corner := 90*Degree - r.angle(t, "slope")
			return answers{"wire": must(t)(SAS(r.number(t, "tower"), corner, r.number(t, "uphill"))).C}
		},
		"pre82-x67": func(t *testing.T, r record) map[string]float64 {
			one, two := Polar(1, r.angle(t, "heading_1")), Polar(1, r.angle(t, "heading_2"))
			hours := r.number(t, "time")
			return answers{"separation": must(t)(SAS(hours*r.number(t, "speed_1"), Between(one, two), hours*r.number(t, "speed_2"))).C}
		},
		"pre82-x69": twoLegs,
		"pre88-pt3": twoLegs,
	})
}

// twoLegs is a flight in two legs with a change of course between them.
func twoLegs(t *testing.T, r record) map[string]float64 {
	v := r.number(t, "speed")
	tri := must(t)(SAS(v*r.number(t, "t1"), 180*Degree-r.angle(t, "turn"), v*r.number(t, "t2")))
	return answers{"distance": tri.C}
}

func TestPublishedSSS(t *testing.T) {
	sss := func(a, b, c string) check {
		return func(t *testing.T, r record) map[string]float64 {
			return lettered(must(t)(SSS(r.number(t, a), r.number(t, b), r.number(t, c))), "")
		}
	}
	checkAll(t, "triangle-SSS", map[string]check{
		"pre82-x17": sss("a", "b", "c"),
		"pre82-x19": sss("a", "b", "c"),
		"pre82-x39": sss("side_opposite_A", "side_2", "side_3"),
		"pre82-x41": sss("side_opposite_A", "side_2", "side_3"),
		"pre82-x71": func(t *testing.T, r record) map[string]float64 {
			tri := must(t)(SSS(r.number(t, "PH_DC"), r.number(t, "DC_BO"), r.number(t, "BO_PH")))
			return answers{
				"angle_BO": tri.Alpha.Degrees(), "angle_PH": tri.Beta.Degrees(), "angle_DC": tri.Gamma.Degrees(),
			}
		},
	})
}

func TestPublishedASAAndAAS(t *testing.T) {
	checkAll(t, "triangle-ASA/AAS", map[string]check{
		"pre81-t1": func(t *testing.T, r record) map[string]float64 {
			tri := must(t)(ASA(r.angle(t, "gamma"), r.number(t, "b"), r.angle(t, "alpha")))
			return answers{"c": tri.A, "a": tri.B, "beta": tri.Gamma.Degrees()}
		},
		"pre81-x7": func(t *testing.T, r record) map[string]float64 {
			tri := must(t)(AAS(r.angle(t, "gamma"), r.angle(t, "alpha"), r.number(t, "c")))
			return answers{"a": tri.B, "beta": tri.Gamma.Degrees(), "b": tri.C}
		},
		"pre81-x33": func(t *testing.T, r record) map[string]float64 {
			return answers{"x": must(t)(ASA(r.angle(t, "angle_1"), r.number(t, "included_side"), r.angle(t, "angle_2"))).A}
		},
		"pre81-x35": func(t *testing.T, r record) map[string]float64 {
			return answers{"x": must(t)(AAS(r.angle(t, "angle_1"), r.angle(t, "angle_2"), r.number(t, "side_opposite_1"))).B}
		},
		"pre81-x59": func(t *testing.T, r record) map[string]float64 { // the pole stands opposite the sun's elevation
			foot := 90*Degree - r.angle(t, "lean_from_vertical")
			return answers{"pole": must(t)(ASA(r.angle(t, "sun_elevation"), r.number(t, "shadow"), foot)).A}
		},
		"pre81-x63": func(t *testing.T, r record) map[string]float64 { // hinge, top and foot of the vertical support
			hinge := r.angle(t, "panel_angle") - r.angle(t, "roof_angle")
			top := 90*Degree - r.angle(t, "panel_angle")
			return answers{"support": must(t)(ASA(hinge, r.number(t, "panel"), top)).A}
		},
		"pre81-x69": func(t *testing.T, r record) map[string]float64 {
			base := convert(t, r.number(t, "base"), "mi", "ft")
			tri := must(t)(ASA(r.angle(t, "elev_1"), base, r.angle(t, "elev_2")))
			return answers{"altitude": Polar(tri.B, r.angle(t, "elev_1")).Y}
		},
		"pre88-r5": func(t *testing.T, r record) map[string]float64 { // seen from above, A and B on one side
			a, b := r.angle(t, "depression_A"), r.angle(t, "depression_B")
			tri := must(t)(ASA(180*Degree-a, r.number(t, "AB"), b))
			return answers{"dist_from_A": tri.B, "elevation": Polar(tri.B, a).Y}
		},
		"up2-a5": func(t *testing.T, r record) map[string]float64 {
			way := func(name string) Angle { return Angle(r.Standard[name]) * Degree }
			mn, np, pm := Polar(1, way("dir_MN")), Polar(1, way("dir_NP")), Polar(1, way("dir_PM"))
			m, n := 180*Degree-Between(pm, mn), 180*Degree-Between(mn, np)
			tri := must(t)(ASA(m, r.number(t, "MN"), n))
			return answers{
				"NP": tri.A, "PM": tri.B,
				"NP_km": convert(t, tri.A, "nmi", "km"), "PM_km": convert(t, tri.B, "nmi", "km"),
			}
		},
	})
}
