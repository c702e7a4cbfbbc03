package tutor

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/spatial/r2"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/sketch"
	"closingside/tutor/verdict"
)

// The sentences of a description that tell of a force, read by a listener who
// knows English and no figure: name, magnitude, direction.
var (
	pullSaid   = regexp.MustCompile(`([A-Z][A-Za-z0-9]*) = ([0-9.,]+) (\w+)(?: starts at [^.]*? and)? points ([^.]*(?:\.\d[^.]*)*)\.(?: |$)`)
	alongSaid  = regexp.MustCompile(`^along the (positive|negative) (x|y) axis$`)
	besideSaid = regexp.MustCompile(`^([0-9.]+) degrees? (above|below) the (positive|negative) x axis$`)
	towardSaid = regexp.MustCompile(`^([0-9.]+) degrees? from the (positive|negative) y axis, towards the (positive|negative) x axis$`)
	turnedSaid = regexp.MustCompile(`^([0-9.]+) degrees? (counter-clockwise|clockwise) from the (positive|negative) (x|y) axis, `)
	slopeSaid  = regexp.MustCompile(`^along a slope that goes ([0-9.]+) across for every ([0-9.]+) of height, (up|down) and to the (left|right)$`)
)

// heard is the direction in degrees that the words tell.
func heard(t testing.TB, words string) float64 {
	t.Helper()
	axis := func(sign, letter string) float64 {
		return map[string]float64{"positive x": 0, "positive y": 90, "negative x": 180, "negative y": 270}[sign+" "+letter]
	}
	num := func(s string) float64 {
		v, err := strconv.ParseFloat(s, 64)
		require.NoError(t, err)
		return v
	}
	if m := alongSaid.FindStringSubmatch(words); m != nil {
		return axis(m[1], m[2])
	}
	if m := besideSaid.FindStringSubmatch(words); m != nil {
		if (m[2] == "below") == (m[3] == "positive") {
			return axis(m[3], "x") - num(m[1])
		}
		return axis(m[3], "x") + num(m[1])
	}
	if m := towardSaid.FindStringSubmatch(words); m != nil {
		if (m[2] == "positive") == (m[3] == "positive") {
			return axis(m[2], "y") - num(m[1])
		}
		return axis(m[2], "y") + num(m[1])
	}
	if m := turnedSaid.FindStringSubmatch(words); m != nil {
		if m[2] == "clockwise" {
			return axis(m[3], m[4]) - num(m[1])
		}
		return axis(m[3], m[4]) + num(m[1])
	}
	m := slopeSaid.FindStringSubmatch(words)
	require.NotNil(t, m, "no direction in %q", words)
	run, rise := num(m[1]), num(m[2])
	if m[4] == "left" {
		run = -run
	}
	if m[3] == "down" {
		rise = -rise
	}
	return math.Atan2(rise, run) * 180 / math.Pi
}

// resultantHeard is the sum of the forces that a description tells.
func resultantHeard(t testing.TB, desc string) (sum r2.Vec, forces int) {
	t.Helper()
	for _, m := range pullSaid.FindAllStringSubmatch(desc, -1) {
		size, err := strconv.ParseFloat(strings.ReplaceAll(m[2], ",", ""), 64)
		require.NoError(t, err)
		sin, cos := math.Sincos(heard(t, m[4]) * math.Pi / 180)
		sum = r2.Add(sum, r2.Scale(size, r2.Vec{X: cos, Y: sin}))
		forces++
	}
	return sum, forces
}

// Every figure of a resultant can be worked from its description alone: as
// given, on the sketch before and after it is closed, and head to tail. The
// problems are of the harbour and drawn at random.
func TestDescriptionsAreEnough(t *testing.T) {
	scenes := 0
	for _, k := range kinds.All {
		if k.Sketch == nil {
			continue
		}
		problems := k.BankProblems()
		for seed := range uint64(60) {
			problems = append(problems, Generate(k, seed))
		}
		for _, p := range problems {
			l, err := Open(p)
			require.NoError(t, err)
			w := NewWork(l, lesson.DefaultSettings())
			n := len(p.Group("forces"))
			check := func(desc string) {
				sum, forces := resultantHeard(t, desc)
				require.Equal(t, n, forces, desc)
				size := 0.0
				for i := range n {
					size = max(size, l.Truth("F"+strconv.Itoa(i+1)))
				}
				truth := r2.Vec{X: l.Truth("Rx"), Y: l.Truth("Ry")}
				require.LessOrEqual(t, r2.Norm(r2.Sub(sum, truth)), 1e-3*size, "%s\nheard %v, true %v", desc, sum, truth)
				scenes++
			}
			check(w.Scenes()[0].Desc)
			s := w.Sketch()
			check(s.Scene().Desc)
			for i := 1; i < n; i++ {
				require.Equal(t, verdict.Correct, s.Put(sketch.End{Arrow: i, Head: false}, sketch.End{Arrow: i - 1, Head: true}).Verdict)
			}
			check(s.Scene().Desc)
			s.Close(sketch.End{Arrow: 0, Head: false}, sketch.End{Arrow: n - 1, Head: true})
			check(s.Scene().Desc)
			s.Passed = true
			all := w.Scenes()
			check(all[len(all)-1].Desc)
		}
	}
	assert.Greater(t, scenes, 500)
}
