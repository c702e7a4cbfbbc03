package tutor

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// checked is the barge's problem with settings, given as "key: value" lines.
func checked(t *testing.T, lines ...string) (*Problem, error) {
	t.Helper()
	check := branch(CheckKey)
	for i, l := range lines {
		key, value, _ := strings.Cut(l, ": ")
		check.Kids = append(check.Kids, Source{Key: key, Text: value, Line: i + 10, Col: 3})
	}
	src := harbour("", force("P", "340 N", "25 deg"), force("Q", "610 N", "118 deg"))
	src.Kids = append(src.Kids, check)
	return All.Read(src)
}

func TestSettingsAreRead(t *testing.T) {
	set := func(change func(*Settings)) Settings {
		s := DefaultSettings()
		change(&s)
		return s
	}
	rows := []struct {
		lines string
		want  Settings
	}{
		{"", DefaultSettings()},
		{"digits: 4", set(func(s *Settings) { s.Answer.Magnitude, s.Work.Magnitude = 4, 5 })},
		{"digits: 4|working-digits: 4", set(func(s *Settings) { s.Answer.Magnitude = 4 })},
		{"working-digits: 6", set(func(s *Settings) { s.Work.Magnitude = 6 })},
		{"places: 0|working-places: 1", set(func(s *Settings) { s.Answer.Angle, s.Work.Angle = 0, 1 })},
		{"places: 3", set(func(s *Settings) { s.Answer.Angle, s.Work.Angle = 3, 4 })},
		{"entries: numbers|units: required", set(func(s *Settings) { s.NumbersOnly, s.UnitsRequired = true, true })},
		{"direction: from +x", DefaultSettings()},
		{"direction: from Q", set(func(s *Settings) { s.Direction = Reference{FromThing, "Q"} })},
		{"direction: from the vertical", set(func(s *Settings) { s.Direction.As = FromVertical })},
		{"direction: bearing", set(func(s *Settings) { s.Direction.As = AsBearing })},
		{"direction: acute", set(func(s *Settings) { s.Direction.As = AsAcute })},
		{"method: components|hints: delayed|solution: off", set(func(s *Settings) { s.Method, s.Hints, s.Solution = ByComponents, HelpDelayed, HelpOff })},
		{"method: Triangle|hints: no|sketch: false", set(func(s *Settings) { s.Method, s.Hints, s.Sketch = ByTriangle, HelpOff, false })},
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
			l, err := openCode(p.Code())
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
			fault := (*SourceError)(nil)
			require.ErrorAs(t, err, &fault)
			assert.Equal(t, r.line, fault.Line)
			assert.Contains(t, fault.Message, r.says)
		})
	}
	t.Run("no mapping", func(t *testing.T) {
		for _, src := range []Source{leaf(CheckKey, "strict"), branch(CheckKey, leaf("", "digits"))} {
			_, err := ReadSettings(src)
			assert.ErrorContains(t, err, "a line of its own")
		}
		s, err := ReadSettings(leaf(CheckKey, ""))
		require.NoError(t, err)
		assert.Equal(t, DefaultSettings(), s)
	})
	t.Run("over others", func(t *testing.T) { // a problem of a set changes what the set asks
		of, err := ReadSettings(branch(CheckKey, leaf("hints", "off"), leaf("digits", "4")))
		require.NoError(t, err)
		s, err := of.With(branch(CheckKey, leaf("hints", "on")))
		require.NoError(t, err)
		assert.Equal(t, HelpOn, s.Hints)
		assert.Equal(t, Digits{4, 1}, s.Answer)
	})
}

// Any settings go through a file's form and through a code unchanged, and
// settings that change nothing take no room in a code.
func TestSettingsGoThroughACode(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		src := branch(CheckKey)
		for _, key := range SettingKeys() {
			if words := SettingWords(key); rapid.Bool().Draw(r, key) {
				if key == "direction" {
					words = append(words[:len(words):len(words)], "from P", "from Q")
				}
				src.Kids = append(src.Kids, leaf(key, rapid.SampledFrom(words).Draw(r, key)))
			}
		}
		s, err := ReadSettings(src)
		if err != nil {
			r.Skip(err.Error()) // working digits coarser than the answers'
		}
		again, err := ReadSettings(s.Source())
		require.NoError(r, err)
		require.Equal(r, s, again)
		p := twoForces.BankProblems()[0]
		require.NoError(r, p.Use(s))
		l, err := openCode(p.Code())
		require.NoError(r, err, p.Code())
		require.Equal(r, s, l.Problem.Settings)
		require.Equal(r, p.Code(), l.Problem.Code())
	})
	assert.NotContains(t, twoForces.BankProblems()[0].Code(), CheckKey+":")
}
