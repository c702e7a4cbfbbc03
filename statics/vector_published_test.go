package statics

import (
	"testing"

	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/spatial/r2"
)

// direct returns a given direction from +x.
func (r record) direct(t *testing.T, name string) Angle {
	t.Helper()
	if a, ok := r.Standard[name]; ok {
		return Angle(a) * Degree
	}
	return r.angle(t, name)
}

// polar returns the vector of a given magnitude and a given direction.
func (r record) polar(t *testing.T, magnitude, direction string) r2.Vec {
	t.Helper()
	return Polar(r.number(t, magnitude), r.direct(t, direction))
}

// vec returns a given pair of components.
func (r record) vec(t *testing.T, name string) r2.Vec {
	t.Helper()
	x, y := r.pair(t, name)
	return r2.Vec{X: x, Y: y}
}

// legs returns the vectors of a list of magnitudes and directions.
func (r record) legs(t *testing.T) (vs []r2.Vec) {
	t.Helper()
	list, ok := r.Givens["legs_polar"][0].([]any)
	require.True(t, ok)
	for _, leg := range list {
		polar := leg.([]any)
		vs = append(vs, Polar(polar[0].(float64), Angle(polar[1].(float64))*Degree))
	}
	return vs
}

// direction returns the direction of v in [0°, 360°), in degrees.
func direction(t *testing.T, v r2.Vec) float64 {
	t.Helper()
	a, ok := Direction(v)
	require.True(t, ok)
	return a.Positive().Degrees()
}

// off returns the angle between v and a half-axis, in degrees.
func off(v r2.Vec, axis Axis) float64 { return Between(v, Polar(1, axis.Angle())).Degrees() }

func TestPublishedResultantsOfTwo(t *testing.T) {
	north, east := Polar(1, North.Angle()), Polar(1, East.Angle())
	checkAll(t, "resultant-2-forces", map[string]check{
		"pre88-x61": func(t *testing.T, r record) map[string]float64 { // the way home
			home := r2.Scale(-1, Resultant(r.polar(t, "d1", "dir1"), r.polar(t, "d2", "dir2")))
			return answers{"distance_home": r2.Norm(home), "direction_N_of_E": direction(t, home)}
		},
		"pre88-x67": func(t *testing.T, r record) map[string]float64 {
			air := r.polar(t, "v_air", "heading")
			ground := Resultant(air, r.polar(t, "wind", "wind_from"))
			return answers{"ground_speed": r2.Norm(ground), "off_course": Between(air, ground).Degrees()}
		},
		"pre88-x73": func(t *testing.T, r record) map[string]float64 {
			sum := Resultant(Polar(r.number(t, "v1"), 0), Polar(r.number(t, "v2"), r.angle(t, "angle_between")))
			return answers{"direction": direction(t, sum)}
		},
		"up2-p11": func(t *testing.T, r record) map[string]float64 {
			sum := Resultant(r.polar(t, "d1", "dir1"), r.polar(t, "d2", "dir2"))
			return answers{"distance": r2.Norm(sum), "direction_from_E": direction(t, sum)}
		},
		"up4-t6": func(t *testing.T, r record) map[string]float64 {
			sum := Resultant(r.polar(t, "v_BR", "dirB"), r.polar(t, "v_RE", "dirR"))
			return answers{"v_BE": r2.Norm(sum), "E_of_N": off(sum, North)}
		},
		"up5-t1": func(t *testing.T, r record) map[string]float64 {
			sum := Resultant(r.vec(t, "F1"), r.vec(t, "F2"))
			return answers{"F": r2.Norm(sum), "direction": direction(t, sum)}
		},
		"up5-p5": func(t *testing.T, r record) map[string]float64 {
			sum := Resultant(r.polar(t, "F_A", "dirA"), r.polar(t, "F_J", "dirJ"))
			return answers{"Fx": sum.X, "Fy": sum.Y, "F": r2.Norm(sum), "N_of_E": direction(t, sum)}
		},
		"up5-p25": func(t *testing.T, r record) map[string]float64 {
			m := r.number(t, "m")
			push, weight := r2.Scale(m*r.number(t, "a"), east), r2.Scale(m*r.number(t, "g"), north)
			sum := Resultant(push, weight)
			return answers{"F_h": push.X, "w": weight.Y, "F": r2.Norm(sum), "theta": direction(t, sum)}
		},
		"up5-a2": func(t *testing.T, r record) map[string]float64 {
			sum := Resultant(Polar(r.number(t, "F1"), 0), Polar(r.number(t, "F2"), r.angle(t, "angle_between")))
			return answers{"m": r2.Norm(sum) / r.number(t, "a")}
		},
		"up6-p27": func(t *testing.T, r record) map[string]float64 {
			sum := Resultant(r.polar(t, "F1", "dir1"), r.polar(t, "F2", "dir2"))
			return answers{"F": r2.Norm(sum), "theta": direction(t, sum)}
		},
		"calc21-e9": func(t *testing.T, r record) map[string]float64 {
			sum := Resultant(Polar(r.number(t, "F1"), 0), Polar(r.number(t, "F2"), r.angle(t, "angle_between")))
			return answers{"R": r2.Norm(sum), "direction_from_F1": direction(t, sum)}
		},
		"calc21-e10": func(t *testing.T, r record) map[string]float64 {
			sum := Resultant(r.polar(t, "v_plane", "dir"), r.polar(t, "wind", "wind_from"))
			return answers{"ground_speed": r2.Norm(sum), "S_of_W": off(sum, West)}
		},
		"calc21-t10": func(t *testing.T, r record) map[string]float64 {
			sum := Resultant(r.polar(t, "v_plane", "dir"), r.polar(t, "wind", "wind_from"))
			return answers{"ground_speed": r2.Norm(sum)}
		},
		"calc21-x53": func(t *testing.T, r record) map[string]float64 {
			sum := Resultant(r.polar(t, "v_plane", "dir"), r.polar(t, "wind", "wind_toward"))
			return answers{"ground_speed": r2.Norm(sum), "bearing_E_of_N": off(sum, North)}
		},
		"calc2r-x445": func(t *testing.T, r record) map[string]float64 { // a pull resolved along two ropes
			ropes := Particle{
				Known:   []r2.Vec{Polar(-r.number(t, "R"), 0)},
				Unknown: []r2.Vec{Polar(1, r.angle(t, "angle_1")), Polar(1, r.angle(t, "angle_2"))},
			}
			e, err := ropes.Solve()
			require.NoError(t, err)
			return answers{"F_35": e.Values[0], "F_25": e.Values[1]}
		},
	})
}

func TestPublishedResultantsOfMany(t *testing.T) {
	sumAndDifference := func(t *testing.T, u, v r2.Vec) answers {
		sum, diff := Resultant(u, v), Resultant(u, r2.Scale(-1, v))
		return answers{
			"sum_x": sum.X, "sum_y": sum.Y, "sum": r2.Norm(sum), "theta_sum": direction(t, sum),
			"diff_x": diff.X, "diff_y": diff.Y, "diff": r2.Norm(diff), "theta_diff": direction(t, diff),
		}
	}
	checkAll(t, "resultant-n-components", map[string]check{
		"pre88-e5": func(t *testing.T, r record) map[string]float64 {
			return sumAndDifference(t, r.vec(t, "u"), r.vec(t, "v"))
		},
		"pre88-e7": func(t *testing.T, r record) map[string]float64 {
			w := Resultant(r2.Scale(3, r.vec(t, "u")), r2.Scale(2, r.vec(t, "v")))
			return answers{"wx": w.X, "wy": w.Y}
		},
		"pre88-x19": func(t *testing.T, r record) map[string]float64 {
			u, v := r.vec(t, "u"), r.vec(t, "v")
			got := sumAndDifference(t, u, v)
			w := Resultant(r2.Scale(2, u), r2.Scale(-3, v))
			got["2u-3v_x"], got["2u-3v_y"] = w.X, w.Y
			return got
		},
		"up2-t3": func(t *testing.T, r record) map[string]float64 { // A + 2B − F
			g := Resultant(r.polar(t, "A", "dirA"), r2.Scale(2, r.polar(t, "B", "dirB")), r2.Scale(-1, r.polar(t, "F", "dirF")))
			return answers{"G": r2.Norm(g), "theta_G": direction(t, g)}
		},
		"up2-p5": func(t *testing.T, r record) map[string]float64 {
			sum := Resultant(r.legs(t)...)
			return answers{"distance": r2.Norm(sum), "direction_from_E": direction(t, sum)}
		},
		"up2-p23": func(t *testing.T, r record) map[string]float64 {
			return sumAndDifference(t, r.vec(t, "A"), r.vec(t, "B"))
		},
		"up2-p33": func(t *testing.T, r record) map[string]float64 { // D + R = −4·|D| j
			d := r.vec(t, "D")
			rest := Resultant(r2.Vec{Y: -4 * r2.Norm(d)}, r2.Scale(-1, d))
			return answers{"Rx": rest.X, "Ry": rest.Y}
		},
		"up2-a13": func(t *testing.T, r record) map[string]float64 { // the way back
			back := r2.Scale(-1, Resultant(r.legs(t)...))
			return answers{"distance": r2.Norm(back), "N_of_W": off(back, West)}
		},
		"up5-e7": func(t *testing.T, r record) map[string]float64 {
			sum := Resultant(r.polar(t, "F1", "dir1"), r.polar(t, "F2", "dir2"), r.polar(t, "F3", "dir3"), r.polar(t, "F4", "dir4"))
			a := r2.Scale(1/r.number(t, "m"), sum)
			return answers{"ax": a.X, "ay": a.Y, "a": r2.Norm(a), "direction": direction(t, a)}
		},
	})
}
