package lesson_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
)

// checked is the barge's problem with settings, given as "key: value" lines.
func checked(t *testing.T, lines ...string) (*lesson.Problem, error) {
	t.Helper()
	check := lesson.Branch(lesson.CheckKey)
	for i, l := range lines {
		key, value, _ := strings.Cut(l, ": ")
		check.Kids = append(check.Kids, lesson.Source{Key: key, Text: value, Line: i + 10, Col: 3})
	}
	src := kinds.TwoForcesSource("", kinds.ForceSource("P", "340 N", "25 deg"), kinds.ForceSource("Q", "610 N", "118 deg"))
	src.Kids = append(src.Kids, check)
	return kinds.All.Read(src)
}

func TestSettingsAreRead(t *testing.T) {
	set := func(change func(*lesson.Settings)) lesson.Settings {
		s := lesson.DefaultSettings()
		change(&s)
		return s
	}
	rows := []struct {
		lines string
		want  lesson.Settings
	}{
		{"", lesson.DefaultSettings()},
		{"digits: 4", set(func(s *lesson.Settings) { s.Answer.Magnitude, s.Work.Magnitude = 4, 5 })},
		{"digits: 4|working-digits: 4", set(func(s *lesson.Settings) { s.Answer.Magnitude = 4 })},
		{"working-digits: 6", set(func(s *lesson.Settings) { s.Work.Magnitude = 6 })},
		{"places: 0|working-places: 1", set(func(s *lesson.Settings) { s.Answer.Angle, s.Work.Angle = 0, 1 })},
		{"places: 3", set(func(s *lesson.Settings) { s.Answer.Angle, s.Work.Angle = 3, 4 })},
		{"entries: numbers|units: required", set(func(s *lesson.Settings) { s.NumbersOnly, s.UnitsRequired = true, true })},
		{"direction: from +x", lesson.DefaultSettings()},
		{"direction: from Q", set(func(s *lesson.Settings) { s.Direction = lesson.Reference{As: lesson.FromThing, Thing: "Q"} })},
		{"direction: from the vertical", set(func(s *lesson.Settings) { s.Direction.As = lesson.FromVertical })},
		{"direction: bearing", set(func(s *lesson.Settings) { s.Direction.As = lesson.AsBearing })},
		{"direction: acute", set(func(s *lesson.Settings) { s.Direction.As = lesson.AsAcute })},
		{"method: components|hints: delayed|solution: off", set(func(s *lesson.Settings) {
			s.Method, s.Hints, s.Solution = lesson.ByComponents, lesson.HelpDelayed, lesson.HelpOff
		})},
		{"method: Triangle|hints: no|sketch: false", set(func(s *lesson.Settings) { s.Method, s.Hints, s.Sketch = lesson.ByTriangle, lesson.HelpOff, false })},
	}
	for _, r := range rows {
		t.Run(r.lines, func(t *testing.T) {
			var lines []string
			if r.lines != "" {
				lines = strings.Split(r.lines, "|")
			}
			p, err := checked(t, lines...)
			require.NoError(t, err)
			assert.Equal(t, r.want, p.Settings)
			l, err := opened(p.Code())
			require.NoError(t, err)
			assert.Equal(t, r.want, l.Problem.Settings, "through %s", p.Code())
		})
	}
}

func TestSettingsThatWontDo(t *testing.T) {
	rows := []struct {
		lines string
		line  int
		says  string
	}{
		{"digits: 2", 10, "from 3 to 8"},
		{"digits: many", 10, "from 3 to 8"},
		{"digits: ", 10, "from 3 to 8"},
		{"digit: 4", 10, "digits, working-digits"},
		{"hints: on|hints: off", 11, "twice"},
		{"hints: sometimes", 10, "on, delayed, off"},
		{"direction: from above", 10, "above"},
		{"direction: from Z", 10, "P, Q"},
		{"direction: north", 10, "bearing"},
		{"hints: off|working-digits: 3|digits: 5", 11, "at least 5"},
		{"working-places: 0", 10, "at least 1"},
	}
	for _, r := range rows {
		t.Run(r.lines, func(t *testing.T) {
			_, err := checked(t, strings.Split(r.lines, "|")...)
			fault := (*lesson.SourceError)(nil)
			require.ErrorAs(t, err, &fault)
			assert.Equal(t, r.line, fault.Line)
			assert.Contains(t, fault.Message, r.says)
		})
	}
	t.Run("no mapping", func(t *testing.T) {
		for _, src := range []lesson.Source{lesson.Leaf(lesson.CheckKey, "strict"), lesson.Branch(lesson.CheckKey, lesson.Leaf("", "digits"))} {
			_, err := lesson.ReadSettings(src)
			assert.ErrorContains(t, err, "a line of its own")
		}
		s, err := lesson.ReadSettings(lesson.Leaf(lesson.CheckKey, ""))
		require.NoError(t, err)
		assert.Equal(t, lesson.DefaultSettings(), s)
	})
	t.Run("over others", func(t *testing.T) { // a problem of a set changes what the set asks
		of, err := lesson.ReadSettings(lesson.Branch(lesson.CheckKey, lesson.Leaf("hints", "off"), lesson.Leaf("digits", "4")))
		require.NoError(t, err)
		s, err := of.With(lesson.Branch(lesson.CheckKey, lesson.Leaf("hints", "on")))
		require.NoError(t, err)
		assert.Equal(t, lesson.HelpOn, s.Hints)
		assert.Equal(t, lesson.Digits{Magnitude: 4, Angle: 1}, s.Answer)
	})
}

// Any settings go through a file's form and through a code unchanged, and
// settings that change nothing take no room in a code.
func TestSettingsGoThroughACode(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		src := lesson.Branch(lesson.CheckKey)
		for _, key := range lesson.SettingKeys() {
			if words := lesson.SettingWords(key); rapid.Bool().Draw(r, key) {
				if key == "direction" {
					words = append(words[:len(words):len(words)], "from P", "from Q")
				}
				src.Kids = append(src.Kids, lesson.Leaf(key, rapid.SampledFrom(words).Draw(r, key)))
			}
		}
		s, err := lesson.ReadSettings(src)
		if err != nil {
			r.Skip(err.Error()) // working digits coarser than the answers'
		}
		again, err := lesson.ReadSettings(s.Source())
		require.NoError(r, err)
		require.Equal(r, s, again)
		p := kinds.TwoForces.BankProblems()[0]
		require.NoError(r, p.Use(s))
		l, err := opened(p.Code())
		require.NoError(r, err, p.Code())
		require.Equal(r, s, l.Problem.Settings)
		require.Equal(r, p.Code(), l.Problem.Code())
	})
	assert.NotContains(t, kinds.TwoForces.BankProblems()[0].Code(), lesson.CheckKey+":")
}
