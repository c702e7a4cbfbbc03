package main

import (
	"bytes"
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"closingside/tutor/lesson"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// canonical is the order in which scripts meet the quantities of two forces.
var canonical = []string{"phi", "gamma", "R", "alpha", "beta", "theta", "F1x", "F1y", "F2x", "F2y", "Rx", "Ry"}

// solveJSON solves a problem file by the command.
func solveJSON(t testing.TB, path string) map[string]float64 {
	t.Helper()
	out, errs, status := tell("", "solve", path, "--json")
	require.Zero(t, status, errs)
	var got solution
	require.NoError(t, json.Unmarshal([]byte(out), &got))
	values := map[string]float64{}
	for _, q := range got.Quantities {
		require.NotNil(t, q.Value, q.Name)
		values[q.Name] = *q.Value
	}
	return values
}

func TestSolveForPeople(t *testing.T) {
	for _, name := range []string{"barge.yaml", "derrick.json", "crate.yaml"} {
		t.Run(name, func(t *testing.T) {
			out, errs, status := tell("", "solve", problem(name))
			require.Zero(t, status, errs)
			golden(t, "solve-"+strings.TrimSuffix(name, filepath.Ext(name))+".golden", out)
		})
	}
}

func TestEveryExampleSolves(t *testing.T) {
	files, err := filepath.Glob(problem("*"))
	require.NoError(t, err)
	for _, path := range files {
		t.Run(filepath.Base(path), func(t *testing.T) {
			out, errs, status := tell("", "solve", path)
			require.Zero(t, status, errs)
			assert.NotContains(t, out, "\x1b", "no colour where there is no terminal")
			assert.NotContains(t, out, "NaN")
			assert.Contains(t, out, "By the force triangle\n")
			assert.Contains(t, out, "By rectangular components\n")
			assert.True(t, strings.HasSuffix(out, "local codes and a licensed engineer.\n"))
			for line := range strings.Lines(out) {
				assert.LessOrEqual(t, utf8.RuneCountInString(line), usualWidth+1, line)
			}
			if file, err := os.ReadFile(path); assert.NoError(t, err) && strings.Contains(string(file), "two-forces") {
				assert.Len(t, solveJSON(t, path), len(canonical))
			}
		})
	}
}

// Two equations solved for a component, and the sums of many forces, are long.
func TestLongFormulasKeepToTheWidth(t *testing.T) {
	for name, source := range map[string]string{"bridle": `kind: oblique-components
force: {name: P, magnitude: 560 N, direction: 112.5 deg}
axes:
  - {name: u, direction: 25.5 deg}
  - {name: v, direction: -118.5 deg}
`, "buoy": `kind: particle-equilibrium
parts:
  - {name: T1, is: cable, direction: 40.5 deg above -x}
  - {name: T2, is: cable, direction: 30.5 deg above +x}
  - {name: Wind, is: force, direction: 12.5 deg, force: 250.5 N}
  - {name: Tide, is: force, direction: 215.5 deg, force: 350.5 N}
  - {name: Guy, is: force, direction: -35.5 deg, force: 150.5 N}
  - {name: W, is: weight, mass: 120.5 kg}
`} {
		out, errs, status := tell("", "solve", writeFile(t, name+".yaml", source))
		require.Zero(t, status, errs)
		withinWidth(t, out)
	}
	assert.Equal(t, []string{"(1·cos 30°", "− 2·sin 7°)", "/(cos 2°)"}, broken("(1·cos 30° − 2·sin 7°)/(cos 2°)", 13))
}

func TestSolveForScripts(t *testing.T) {
	out, errs, status := tell("", "solve", problem("barge.yaml"), "--json")
	require.Zero(t, status)
	assert.Empty(t, errs)
	assert.Equal(t, 1, strings.Count(out, "\n"))

	var object map[string]json.RawMessage
	require.NoError(t, json.Unmarshal([]byte(out), &object))
	require.Len(t, object, 1)
	strict := json.NewDecoder(bytes.NewReader(object["quantities"]))
	strict.DisallowUnknownFields()
	var got []value
	require.NoError(t, strict.Decode(&got))

	names := []string{}
	for _, q := range got {
		names = append(names, q.Name)
		unit := "N"
		if slices.Contains([]string{"phi", "gamma", "alpha", "beta", "theta"}, q.Name) {
			unit = "deg"
		}
		assert.Equal(t, unit, q.Unit, q.Name)
	}
	assert.Equal(t, canonical, names)
	assert.Equal(t, "Px", got[6].Symbol)

	// By complex numbers: the sum of 340∠25° and 610∠118°.
	deg := math.Pi / 180
	x, y := 340*math.Cos(25*deg)+610*math.Cos(118*deg), 340*math.Sin(25*deg)+610*math.Sin(118*deg)
	values := solveJSON(t, problem("barge.yaml"))
	assert.InDelta(t, math.Hypot(x, y), values["R"], 1e-9)
	assert.InDelta(t, math.Atan2(y, x)/deg, values["theta"], 1e-10)
	assert.InDelta(t, 610*math.Sin(118*deg), values["F2y"], 1e-9)
	assert.InDelta(t, 87, values["gamma"], 1e-10)
}

func TestAValueThatIsNotThereIsNull(t *testing.T) {
	l := &lesson.Lesson{Quantities: []lesson.Quantity{{Name: "x", True: math.NaN(), Also: math.NaN()}, {Name: "y", True: math.Inf(1), Also: math.NaN()}, {Name: "z", True: math.Copysign(0, -1), Also: math.NaN()}}}
	var out bytes.Buffer
	require.NoError(t, encode(&out, solved(l)))
	assert.Equal(t, `{"quantities":[{"name":"x","symbol":"x","value":null,"unit":""},`+
		`{"name":"y","symbol":"y","value":null,"unit":""},{"name":"z","symbol":"z","value":0,"unit":""}]}`+"\n", out.String())
}

// Forces come in the first force's unit (1 kip = 4448.2216 N, NIST SP 811
// appendix B.8), θ in (−180°, 180°].
func TestUnitsAndDirectionsOfTheAnswer(t *testing.T) {
	solve := func(m1, d1, m2, d2 string) map[string]float64 { return solveJSON(t, forces(t, m1, d1, m2, d2)) }
	got := solve("1 kip", "0 deg", "4448.2216152605 N", "90 deg")
	assert.InDelta(t, math.Sqrt2, got["R"], 1e-12)
	got = solve("10 N", "150 deg", "10 N", "210 deg")
	assert.InDelta(t, 180, got["theta"], 1e-9)
	got = solve("10 N", "-100 deg", "10 N", "530 deg")
	assert.InDelta(t, -145, got["theta"], 1e-9)
}

// forces is the path of a problem of two forces.
func forces(t testing.TB, m1, d1, m2, d2 string) string {
	return writeFile(t, "p.yaml", head+"forces:\n  - {name: P, magnitude: "+m1+", direction: "+d1+"}\n  - {name: Q, magnitude: "+m2+", direction: "+d2+"}\n")
}

// publishedRow is a record of published.json; the README beside it says what
// the fields mean.
type publishedRow struct {
	ID, Source, Kind string
	Givens           map[string][2]any
	Asked            map[string][2]string
	Computed         map[string]float64
	Inconsistent     []string           `json:"inconsistent_answers"`
	HalfUnit         map[string]float64 `json:"rounding_half_unit"`
	Standard         map[string]float64 `json:"std_angle_deg"`
}

// direction is the standard direction of a given, in degrees.
func (r publishedRow) direction(key string) string {
	v, ok := r.Standard[key]
	if !ok {
		v, ok = r.Givens[key][0].(float64)
	}
	if key == "" || !ok {
		v = 0 // along the first vector
	}
	return strconv.FormatFloat(v, 'f', -1, 64) + " deg"
}

// magnitude is a given number, in newtons or pounds where it is a force; other
// vectors add the same way, and stand as newtons.
func (r publishedRow) magnitude(key string) string {
	unit := "N"
	if r.Givens[key][1] == "lb" {
		unit = "lb"
	}
	return strconv.FormatFloat(r.Givens[key][0].(float64), 'f', -1, 64) + " " + unit
}

// TestPublishedResultants solves the printed exercises of two vectors given by
// magnitude and direction (OpenStax Precalculus 2e, University Physics 1 and
// Calculus 3) through the command. Left out are those that give components or
// ask for the forces behind a resultant: up5-t1, up5-p25, calc2r-x445.
func TestPublishedResultants(t *testing.T) {
	type answers map[string]func(v map[string]float64) float64
	of := func(name string) func(map[string]float64) float64 {
		return func(v map[string]float64) float64 { return v[name] }
	}
	fromNorth := func(v map[string]float64) float64 { return math.Abs(90 - v["theta"]) }
	back := func(v map[string]float64) float64 { return 180 + v["theta"] }
	rows := []struct {
		id, m1, d1, m2, d2 string
		want               answers
	}{
		{"pre88-x61", "d1", "dir1", "d2", "dir2", answers{"distance_home": of("R"), "direction_N_of_E": back}},
		{"pre88-x67", "v_air", "heading", "wind", "wind_from", answers{"ground_speed": of("R"), "off_course": fromNorth}},
		{"pre88-x73", "v1", "", "v2", "angle_between", answers{"direction": of("theta")}},
		{"up2-p11", "d1", "dir1", "d2", "dir2", answers{"distance": of("R"), "direction_from_E": of("theta")}},
		{"up4-t6", "v_BR", "dirB", "v_RE", "dirR", answers{"v_BE": of("R"), "E_of_N": fromNorth}},
		{"up5-p5", "F_A", "dirA", "F_J", "dirJ", answers{"F": of("R"), "N_of_E": of("theta"), "Fx": of("Rx"), "Fy": of("Ry")}},
		{"up5-a2", "F1", "", "F2", "angle_between", answers{"m": func(v map[string]float64) float64 { return v["R"] / 10 }}}, // a = 10 m/s²
		{"up6-p27", "F1", "dir1", "F2", "dir2", answers{"F": of("R"), "theta": of("theta")}},
		{"calc21-e9", "F1", "", "F2", "angle_between", answers{"R": of("R"), "direction_from_F1": of("theta")}},
		{"calc21-e10", "v_plane", "dir", "wind", "wind_from", answers{"ground_speed": of("R"), "S_of_W": back}},
		{"calc21-t10", "v_plane", "dir", "wind", "wind_from", answers{"ground_speed": of("R")}},
		{"calc21-x53", "v_plane", "dir", "wind", "wind_toward", answers{"ground_speed": of("R"), "bearing_E_of_N": fromNorth}},
	}
	file, err := os.ReadFile(filepath.Join("..", "..", "statics", "testdata", "published.json"))
	require.NoError(t, err)
	var all []publishedRow
	require.NoError(t, json.Unmarshal(file, &all))
	for _, row := range rows {
		t.Run(row.id, func(t *testing.T) {
			i := slices.IndexFunc(all, func(r publishedRow) bool { return r.ID == row.id })
			require.GreaterOrEqual(t, i, 0)
			r := all[i]
			require.Equal(t, "resultant-2-forces", r.Kind)
			require.Len(t, r.Asked, len(row.want), "an answer for all that is asked")
			got := solveJSON(t, forces(t, r.magnitude(row.m1), r.direction(row.d1), r.magnitude(row.m2), r.direction(row.d2)))
			for name, value := range row.want {
				v := value(got)
				assert.InDelta(t, r.Computed[name], v, 6e-8*math.Abs(v), "%s against the recomputed value", name)
				printed, err := strconv.ParseFloat(r.Asked[name][0], 64)
				require.NoError(t, err)
				if within := r.HalfUnit[name] * (1 + 1e-9); slices.Contains(r.Inconsistent, name) {
					assert.Greater(t, math.Abs(printed-v), within, "%s is called inconsistent, yet agrees", name)
				} else {
					assert.InDelta(t, printed, v, within, "%s as printed in %s", name, r.Source)
				}
			}
		})
	}
}
