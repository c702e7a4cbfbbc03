package kinds

import (
	"encoding/json"
	"math"
	"os"
	"slices"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor"
	"closingside/tutor/lesson"
)

// published is a printed answer of an open textbook (OpenStax Precalculus 2e,
// University Physics Volume 1, Calculus Volume 3; each row names its section and
// item), with the value recomputed independently to eight digits.
type published struct {
	ID, Source, Kind string
	Asked            map[string][2]string // digits as printed, and the unit
	Computed         map[string]float64   // the value that is right
	Half             map[string]float64   `json:"rounding_half_unit"` // of the last printed digit; 0 is exact
	Wrong            []string             `json:"inconsistent_answers"`
}

// textbook is printed answers by id.
type textbook map[string]published

func readPublished(t testing.TB) textbook {
	t.Helper()
	all := textbook{}
	for _, name := range []string{"published_forces.json", "published_particles.json"} {
		file, err := os.ReadFile("testdata/" + name)
		require.NoError(t, err)
		var rows []published
		require.NoError(t, json.Unmarshal(file, &rows))
		for _, r := range rows {
			all[r.ID] = r
		}
	}
	return all
}

// as is a printed answer as a quantity of a lesson: times scale gives the
// book's unit.
type as struct {
	quantity string
	scale    float64
}

// holds checks one printed answer: the lesson agrees with the value recomputed,
// and the print with both but where the book is inconsistent, where it must
// not: the test says so.
func (p published) holds(t *testing.T, answer string, got float64, angle bool) {
	t.Helper()
	off := func(a, b float64) float64 {
		if angle {
			return math.Abs(math.Remainder(a-b, 360))
		}
		return math.Abs(a - b)
	}
	want, ok := p.Computed[answer]
	require.True(t, ok, "%s has no %s", p.ID, answer)
	assert.LessOrEqual(t, off(got, want), 6e-8*math.Max(1, math.Abs(want)), "%s: %s = %v, want %v", p.Source, answer, got, want)
	printed, err := strconv.ParseFloat(p.Asked[answer][0], 64)
	if err != nil || p.Half[answer] == 0 {
		return // printed with a root, not as a number
	}
	agrees := off(printed, got) <= p.Half[answer]*(1+1e-9)
	inconsistent := false
	for _, w := range p.Wrong {
		inconsistent = inconsistent || w == answer
	}
	assert.Equal(t, !inconsistent, agrees, "%s prints %s for %s; right is %v", p.Source, p.Asked[answer][0], answer, got)
	if inconsistent {
		t.Logf("%s prints %s for %s, which its givens do not give; right is %.6g", p.Source, p.Asked[answer][0], answer, got)
	}
}

// counterpart is a problem of ours whose quantities are printed answers.
type counterpart struct {
	id  string
	src lesson.Source
	is  map[string]as
}

// check holds our counterparts of a kind of printed problem to what is printed.
func (b textbook) check(t *testing.T, kind string, rows []counterpart) {
	t.Helper()
	var ids []string
	for _, r := range rows {
		ids = append(ids, r.id)
		t.Run(r.id, func(t *testing.T) { checkPublished(t, b[r.id], lessonOf(t, r.src), r.is) })
	}
	b.covered(t, kind, ids)
}

// covered checks that every printed problem of a kind is among those checked.
func (b textbook) covered(t *testing.T, kind string, ids []string) {
	t.Helper()
	for id, row := range b {
		assert.True(t, row.Kind != kind || slices.Contains(ids, id), "%s is not checked", id)
	}
}

func polar(magnitude, direction string) lesson.Source {
	return ComponentsSource("", "F", magnitude+" N", direction)
}
func parts(x, y string) lesson.Source { return FromComponentsSource("", "F", x+" N", y+" N") }

// Lengths and velocities stand as forces here: components are the same for all.
func TestPublishedComponents(t *testing.T) {
	xy := func(x, y string) map[string]as { return map[string]as{x: {"Fx", 1}, y: {"Fy", 1}} }
	md := func(m, d string) map[string]as { return map[string]as{m: {"F", 1}, d: {"theta", 1}} }
	readPublished(t).check(t, "components-2d", []counterpart{
		{"pre88-e13", polar("7", "135 deg"), xy("vx", "vy")},
		{"pre88-t4", parts("3", "5"), md("magnitude", "direction")},
		{"pre88-x23", polar("1", "5:2 up left"), xy("ux", "uy")},
		{"pre88-x25", polar("1", "15:2 up left"), xy("ux", "uy")},
		{"pre88-x29", parts("6", "5"), md("magnitude", "direction")},
		{"pre88-x51", polar("6", "45 deg"), xy("vx", "vy")},
		{"pre88-x55", polar("60", "12 deg right of -y"), map[string]as{"normal": {"Fy", -1}, "parallel": {"Fx", 1}}},
		{"pre88-x75", polar("50", "19 deg right of -y"), map[string]as{"perpendicular": {"Fy", -1}, "parallel": {"Fx", 1}}},
		{"pre88-r15", parts("-9", "-4"), md("r", "theta")},
		{"up2-t5", parts("-5", "-3"), md("magnitude", "direction")},
		{"up2-e6", polar("20", "20 deg N of E"), xy("xS", "yS")},
		{"up2-e6", polar("10", "20 deg N of W"), xy("xG", "yG")},
		{"up2-p19", polar("2.5", "30 deg"), xy("x1", "y1")},
		{"up2-p19", polar("3.8", "120 deg"), xy("x2", "y2")},
		{"up2-p21", parts("2", "-4"), map[string]as{"rA": {"F", 1}, "thetaA_over_pi": {"theta", 1. / 180}}},
		{"up2-p21", parts("-3", "3"), map[string]as{"rB": {"F", 1}, "thetaB_over_pi": {"theta", 1. / 180}}},
		{"up2-e13", parts("-40", "30"), map[string]as{"AT": {"F", 1}}},
		{"up2-t10", polar("1", "3:4 up right"), xy("ux", "uy")},
		{"up2-t10", parts("4", "3"), map[string]as{"N_of_E": {"theta", 1}}},
		{"up5-e5", parts("1.2", "2.8"), md("F", "theta")},
		{"calc21-t8", polar("5", "2:9 down left"), xy("wx", "wy")},
		{"calc21-t9", polar("1", "225 deg"), xy("bx", "by")},
		{"calc21-x11", polar("1", "4:3 up right"), xy("ux", "uy")},
		{"calc21-x27", polar("7", "5:3 down right"), xy("vx", "vy")},
		{"calc21-x29", polar("2", "30 deg"), xy("ux", "uy")},
		{"calc21-x35", parts("7.0710678118654755", "-7.0710678118654755"), map[string]as{"theta": {"theta", math.Pi / 180}}},
		{"calc21-x45", polar("70", "30 deg above +x"), xy("vx", "vy")},
		{"calc21-x59", polar("50", "75:50 up right"), xy("Tx", "Ty")},
	})
}

func checkPublished(t *testing.T, row published, l *tutor.Lesson, is map[string]as) {
	t.Helper()
	for answer, a := range is {
		got, angle := l.Truth(a.quantity)*a.scale, l.Quantity(a.quantity).Turns
		if turn := 360 * a.scale; angle && a.scale != 1 { // in radians or in π: bring it round first
			got, angle = math.Mod(got+turn, turn), false
		}
		row.holds(t, answer, got, angle)
	}
}

func TestPublishedResultants(t *testing.T) {
	f := func(m, d string) [2]string { return [2]string{m, d} }
	sum := func(forces ...[2]string) lesson.Source {
		var all []lesson.Source
		for i, x := range forces {
			all = append(all, ForceSource("F"+strconv.Itoa(i+1), x[0]+" N", x[1]))
		}
		return ConcurrentForcesSource("", all...)
	}
	root := func(v float64) string { return strconv.FormatFloat(math.Sqrt(v), 'g', 17, 64) }
	u, v, a, b := root(13), root(17), root(13), root(17)
	rxy := func(x, y string) map[string]as { return map[string]as{x: {"Rx", 1}, y: {"Ry", 1}} }
	readPublished(t).check(t, "resultant-n-components", []counterpart{
		{"pre88-e5", sum(f(u, "2:3 down right"), f(v, "4:1 up left")), rxy("sum_x", "sum_y")},
		{"pre88-e5", sum(f(u, "2:3 down right"), f(v, "4:1 down right")), rxy("diff_x", "diff_y")},
		{"pre88-e7", sum(f(root(9*13), "2:3 down right"), f(root(4*17), "4:1 up left")), rxy("wx", "wy")},
		{"pre88-x19", sum(f("5", "4:3 up left"), f(root(5), "1:2 up left")), rxy("sum_x", "sum_y")},
		{"pre88-x19", sum(f("5", "4:3 up left"), f(root(5), "1:2 down right")), rxy("diff_x", "diff_y")},
		{"pre88-x19", sum(f("10", "4:3 up left"), f(root(45), "1:2 down right")), rxy("2u-3v_x", "2u-3v_y")},
		{"up2-t3", sum(f("10", "35 deg"), f("14", "-110 deg"), f("20", "290 deg")), map[string]as{"G": {"R", 1}, "theta_G": {"theta", 1}}},
		{"up2-p5", sum(f("40", "N"), f("20", "W"), f("60", "N 45 E"), f("50", "N")), map[string]as{"distance": {"R", 1}, "direction_from_E": {"theta", 1}}},
		{"up2-p23", sum(f(a, "2:3 down left"), f(b, "4:1 down left")), map[string]as{"sum_x": {"Rx", 1}, "sum_y": {"Ry", 1}, "sum": {"R", 1}, "theta_sum": {"theta", 1}}},
		{"up2-p23", sum(f(a, "2:3 down left"), f(b, "4:1 up right")), map[string]as{"diff_x": {"Rx", 1}, "diff_y": {"Ry", 1}, "diff": {"R", 1}, "theta_diff": {"theta", 1}}},
		{"up2-a13", sum(f("90", "N"), f("200", "E"), f("80", "30 deg"), f("150", "S")), map[string]as{"distance": {"R", 1}}},
		{"up5-e7", sum(f("10", "30 deg"), f("40", "-90 deg"), f("5", "180 deg"), f("2", "90 deg")), map[string]as{"ax": {"Rx", 0.25}, "ay": {"Ry", 0.25}, "a": {"R", 0.25}, "direction": {"theta", 1}}},
		// Wind from NE, the track north: the heading is that of the air speed, E of N.
		{"up4-e14", MissingForceSource("", ForceSource("W", "90 N", "-135 deg"), MissingSource("A", "magnitude", "300 N"), DirectedSource("90 deg")), map[string]as{"v_PG": {"R", 1}}},
		// D + R = −4|D| j with D = (3, −4): R is the force missing from 20 down.
		{"up2-p33", MissingForceSource("", ForceSource("D", "5 N", "4:3 down right"), MissingSource("E"), ResultantSource("20 N", "down")), map[string]as{"Rx": {"F2x", 1}, "Ry": {"F2y", 1}}},
	})
}

// A triangle of which two sides and an angle not between them are given, as
// the question which direction of a force of given size, or which size in a
// given direction, makes the resultant: the same triangles, both ways round.
func TestPublishedTrianglesOfTwoSolutions(t *testing.T) {
	rows := []struct {
		id, angle, opposite, other string    // the angle, the side facing it, another side
		is                         [3]string // the angle facing the other side, the third angle, the third side
	}{
		{"pre81-e2", "35", "6", "8", [3]string{"beta", "gamma", "c"}},
		{"pre81-t2", "80", "120", "121", [3]string{"beta", "gamma", "c"}},
		{"pre81-e3", "85", "12", "9", [3]string{"beta", "alpha", "a"}},
		{"pre81-t3", "80", "100", "10", [3]string{"beta", "gamma", "c"}},
		{"pre81-e4", "50", "4", "10", [3]string{}},
		{"pre81-t4", "48", "26", "31", [3]string{}},
		{"pre81-x15", "113", "32", "10", [3]string{"beta", "alpha", "a"}},
		{"pre81-x17", "35", "12", "17", [3]string{"gamma", "beta", "b"}},
		{"pre81-x23", "119", "8.2", "11.3", [3]string{}},
		{"pre81-x43", "93", "32.6", "24.1", [3]string{"C", "A", "BC"}},
		{"pre82-x13", "43.1", "184.2", "242.8", [3]string{"", "", "c"}},
		{"pre82-x15", "50", "45", "105", [3]string{}},
		{"pre88-r1", "50", "45", "105", [3]string{}},
		{"pre88-pt1", "68", "21", "16", [3]string{"gamma", "alpha", "a"}},
	}
	book := readPublished(t)
	var ids []string
	for _, r := range rows {
		ids = append(ids, r.id)
		first := ForceSource("P", r.other+" N", r.angle+" deg")
		turn := MissingForceSource("", first, MissingSource("Q", "magnitude", r.opposite+" N"), DirectedSource("0 deg"))
		v, _ := strconv.ParseFloat(r.angle, 64)
		back := strconv.FormatFloat(180-v, 'f', -1, 64) + " deg"
		size := MissingForceSource("", ForceSource("P", r.other+" N", "0 deg"), MissingSource("Q", "direction", back), lesson.Branch("resultant", lesson.Leaf("magnitude", r.opposite+" N")))
		t.Run(r.id+" turned", func(t *testing.T) { checkTriangles(t, book[r.id], turn, r.is, [3]string{"alpha", "gamma", "R"}) })
		t.Run(r.id+" sized", func(t *testing.T) { checkTriangles(t, book[r.id], size, r.is, [3]string{"alpha", "beta", "F2"}) })
	}
	book.covered(t, "triangle-SSA", ids)
}

// A triangle of which two sides and the angle between them are given, as two
// forces and their resultant; lengths and speeds stand as forces.
func TestPublishedTrianglesOfTwoForces(t *testing.T) {
	rows := []struct {
		id          string
		first       string
		between     float64 // at the corner of the triangle
		second      string
		third, a, b string // the answers: the third side, the angles facing the first and the second
	}{
		{"pre81-x57", "4.6", 74, "5", "LN", "L", "N"},
		{"pre82-x7", "6", 120, "7", "a", "", ""},
		{"pre82-x9", "18", 115, "23", "c", "", ""},
		{"pre82-x21", "8", 35, "11", "a", "B", "C"},
		{"pre82-x23", "21", 121, "37", "c", "A", "B"},
		{"pre82-x33", "4.5", 42, "3.4", "x", "", ""},
		{"pre82-x37", "0.2", 123, "0.3333333333333333", "x", "", ""},
		{"pre82-x45", "20", 22, "13", "x", "", ""},
		{"pre82-x63", "370", 2.1, "350", "distance", "", ""},
		{"pre82-x65", "113", 90 - 34, "98", "wire", "", ""},
		{"pre82-x67", "36", 60 - 327 + 360, "8", "separation", "", ""}, // two hours at 18 and 4
		{"pre82-x69", "1020", 180 - 10, "1360", "distance", "", ""},    // 1.5 h and 2 h at 680
		{"pre88-r9", "210", 1.8, "250", "distance", "", ""},
		{"pre88-pt3", "1150", 180 - 15, "575", "distance", "", ""}, // 2 h and 1 h at 575
	}
	book := readPublished(t)
	var ids []string
	for _, r := range rows {
		ids = append(ids, r.id)
		t.Run(r.id, func(t *testing.T) {
			l := pulls(t, r.first+" N", "0 deg", r.second+" N", inFull(180-r.between)+" deg")
			for answer, name := range map[string]string{r.third: "R", r.a: "alpha", r.b: "beta"} {
				if answer != "" {
					book[r.id].holds(t, answer, l.Truth(name), name != "R")
				}
			}
		})
	}
	book.covered(t, "triangle-SAS", ids)
}

func inFull(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

// A triangle of which one side and the angles at its ends are given, as the
// question how large a force of known direction brings the resultant into
// another.
func TestPublishedTrianglesOfTwoDirections(t *testing.T) {
	rows := []struct {
		id   string
		at   float64 // the angle at one end
		side string
		to   float64 // at the other
		is   map[string]as
	}{
		{"pre81-t1", 98, "22", 43, map[string]as{"a": {"F2", 1}, "c": {"R", 1}, "beta": {"alpha", 1}}},
		{"pre81-x7", 35, "20", 180 - 73 - 35, map[string]as{"a": {"F2", 1}, "b": {"R", 1}, "beta": {"gamma", 1}}},
		{"pre81-x33", 45, "15", 75, map[string]as{"x": {"F2", 1}}},
		{"pre81-x35", 50, "14", 180 - 42 - 50, map[string]as{"x": {"F2", 1}}},
		{"pre81-x59", 55, "42", 90 - 7, map[string]as{"pole": {"F2", 1}}},
		{"pre81-x63", 38 - 20, "8", 90 - 38, map[string]as{"support": {"F2", 1}}},
		{"pre81-x69", 27, "18480", 41, map[string]as{"altitude": {"Ry", 1}}},
		{"pre88-r5", 180 - 49, "2.1", 25, map[string]as{"dist_from_A": {"R", 1}, "elevation": {"Ry", 1}}},
		{"up2-a5", 180 - (37 + 62), "4.76", 180 - (159 - 37), map[string]as{"NP": {"F2", 1}, "PM": {"R", 1}, "NP_km": {"F2", 1.852}, "PM_km": {"R", 1.852}}},
	}
	var all []counterpart
	for _, r := range rows {
		src := MissingForceSource("", ForceSource("P", r.side+" N", "0 deg"), MissingSource("Q", "direction", inFull(180-r.to)+" deg"), DirectedSource(inFull(r.at)+" deg"))
		all = append(all, counterpart{r.id, src, r.is})
	}
	readPublished(t).check(t, "triangle-ASA/AAS", all)
}

func checkTriangles(t *testing.T, row published, src lesson.Source, is, names [3]string) {
	t.Helper()
	count, ok := row.Computed["n_triangles"]
	if !ok {
		count = 1
	}
	p, err := All.Read(src)
	require.NoError(t, err)
	l, err := tutor.Open(p)
	if count == 0 {
		assert.ErrorContains(t, err, "too small")
		return
	}
	require.NoError(t, err)
	require.Len(t, l.Solutions(), int(count))
	for i, each := range l.Solutions() {
		end := ""
		if count == 2 {
			end = "_" + strconv.Itoa(i+1)
		}
		for k, answer := range is {
			if answer != "" {
				row.holds(t, answer+end, each.Truth(names[k]), k < 2)
			}
		}
	}
}
