package statics

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/spatial/r2"
)

// weight is a load straight down.
func weight(w float64) r2.Vec { return Polar(w, MinusY.Angle()) }

// beside returns the unit vector a turn away from one half-axis toward another.
func beside(t *testing.T, from, toward Axis, turn Angle) r2.Vec {
	t.Helper()
	h, ok := Toward(Beside, from, toward, turn)
	require.True(t, ok)
	return Polar(1, h.Angle())
}

// hung solves a weight w hung from strands.
func hung(t *testing.T, w float64, strands ...r2.Vec) []float64 {
	t.Helper()
	return solve(t, Particle{Known: []r2.Vec{weight(w)}, Unknown: strands}, Determinate)
}

// sagging is a symmetric pair of strands, both under one tension.
func sagging(t *testing.T, sag Angle) r2.Vec {
	return r2.Add(beside(t, PlusX, PlusY, sag), beside(t, MinusX, PlusY, sag))
}

// balancing returns the force that balances others, from its two components.
func balancing(t *testing.T, forces ...r2.Vec) r2.Vec {
	v := solve(t, Particle{Known: forces, Unknown: []r2.Vec{{X: 1}, {Y: 1}}}, Determinate)
	return r2.Vec{X: v[0], Y: v[1]}
}

func TestPublishedParticles(t *testing.T) {
	checkAll(t, "particle-equilibrium-2d", map[string]check{
		"up2-e10": func(t *testing.T, r record) map[string]float64 {
			a, b, c := r.polar(t, "A", "dirA"), r.polar(t, "B", "dirB"), r.polar(t, "C", "dirC")
			d := balancing(t, a, b, c)
			return answers{"Rx": -d.X, "Ry": -d.Y, "D": r2.Norm(d), "angle_S_of_W": off(d, West)}
		},
		"up2-t9": func(t *testing.T, r record) map[string]float64 {
			d := balancing(t, r.polar(t, "A", "dirA"), r.polar(t, "C", "dirC"))
			return answers{"D": r2.Norm(d), "angle_N_of_E": direction(t, d)}
		},
		"up5-e13": func(t *testing.T, r record) map[string]float64 {
			return answers{"T": hung(t, r.number(t, "m")*r.number(t, "g"), sagging(t, r.angle(t, "sag")))[0]}
		},
		"up5-t9": func(t *testing.T, r record) map[string]float64 { // the half rope is the hypotenuse
			half, rise := r.number(t, "rope")/2, r.number(t, "offset")
			h, ok := FromSlope(rise, math.Sqrt(half*half-rise*rise), PlusY, PlusX)
			require.True(t, ok)
			return answers{"T": hung(t, r.number(t, "F"), sagging(t, h.Turn))[0]}
		},
		"up5-p41": func(t *testing.T, r record) map[string]float64 {
			w := r.number(t, "m") * r.number(t, "g")
			vertical, strand := hung(t, w, Polar(1, PlusY.Angle()))[0], hung(t, w, sagging(t, r.angle(t, "sag")))[0]
			return answers{"T_vertical": vertical, "T_horizontal_strand": strand, "ratio": strand / vertical}
		},
		"up5-p45": func(t *testing.T, r record) map[string]float64 {
			w := convert(t, r.number(t, "m"), "g", "kg") * r.number(t, "g")
			return answers{
				"T_b": hung(t, w, sagging(t, r.angle(t, "theta_b")))[0],
				"T_c": hung(t, w, sagging(t, r.angle(t, "theta_c")))[0],
			}
		},
		"up5-p47": func(t *testing.T, r record) map[string]float64 { // mass below, scale of its own mass above
			up, scale := Polar(1, PlusY.Angle()), r.number(t, "scale")
			mass := solve(t, Particle{Known: []r2.Vec{r2.Scale(scale, up)}, Unknown: []r2.Vec{weight(r.G)}}, Determinate)[0]
			below := hung(t, mass*r.G, up)[0]
			return answers{"m": mass, "T1": below, "T2": hung(t, below+r.number(t, "m_scale")*r.G, up)[0]}
		},
		"up5-p49": func(t *testing.T, r record) map[string]float64 { // slope rises to the right
			incline := r.angle(t, "incline")
			v := hung(t, r.number(t, "m")*r.G, Polar(1, incline+90*Degree), Polar(1, incline))
			return answers{"N": v[0], "F_parallel": v[1]}
		},
		"up5-a16": func(t *testing.T, r record) map[string]float64 {
			lean := r.angle(t, "angle_from_vertical")
			v := hung(t, r.number(t, "w"), beside(t, PlusY, MinusX, lean), beside(t, PlusY, PlusX, lean))
			require.InEpsilon(t, v[0], v[1], 1e-14)
			return answers{"T": v[0], "stretch": v[0] / r.number(t, "k")}
		},
		"up6-e1": func(t *testing.T, r record) map[string]float64 {
			v := hung(t, r.number(t, "m")*r.number(t, "g"), beside(t, MinusX, PlusY, r.angle(t, "angle_1")), beside(t, PlusX, PlusY, r.angle(t, "angle_2")))
			return answers{"T1": v[0], "T2": v[1], "ratio_T2_T1": v[1] / v[0]}
		},
		"up6-p1": func(t *testing.T, r record) map[string]float64 { // ropes lean away from the pull
			ropes := r2.Scale(r.number(t, "ropes"), beside(t, PlusY, MinusX, r.angle(t, "angle_from_vertical")))
			v := hung(t, r.number(t, "m")*r.G, ropes, Polar(1, PlusX.Angle()))
			return answers{"T_each": v[0], "F": v[1]}
		},
		"up6-p3": func(t *testing.T, r record) map[string]float64 {
			f := balancing(t, r.vec(t, "F1"), r.vec(t, "F2"))
			return answers{"F3x": f.X, "F3y": f.Y}
		},
		"calc21-x55": func(t *testing.T, r record) map[string]float64 {
			v := hung(t, r.number(t, "w"), beside(t, MinusX, PlusY, r.angle(t, "angle_1")), beside(t, PlusX, PlusY, r.angle(t, "angle_2")))
			return answers{"T1": v[0], "T2": v[1]}
		},
	})
}
