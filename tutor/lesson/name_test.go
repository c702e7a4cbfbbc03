package lesson_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
)

// A name is what the reader makes of it: letters of other scripts are those they
// look like, and case alone tells no two things apart.
func TestNamesThatReadAlikeAreRefused(t *testing.T) {
	named := func(names ...string) error {
		var forces []lesson.Source
		for i, name := range names {
			forces = append(forces, kinds.ForceSource(name, "340 N", []string{"25 deg", "118 deg"}[i]))
		}
		p, err := kinds.All.Read(kinds.TwoForcesSource("", forces...))
		if err == nil {
			_, err = p.Build()
		}
		return err
	}
	for _, row := range []struct{ one, other, says string }{
		{"A", "А", "read alike"}, // the second is Cyrillic
		{"P", "p", "read alike"},
		{"F1", "F₁", "letters and digits"},
		{"P", "P", "Two things are called “P”"},
		{"P", "R", "“R” is"},
		{"γ", "Q", "“γ” is"},
		{"gamma", "Q", "“gamma” is"},
		{"P", "Px", "“Px” is"},
		{"P", "q", ""},
		{"F2", "F1", ""},
		{"r", "Q", ""},
	} {
		err := named(row.one, row.other)
		if row.says == "" {
			assert.NoError(t, err, "%s, %s", row.one, row.other)
		} else {
			assert.ErrorContains(t, err, row.says, "%s, %s", row.one, row.other)
		}
	}
}
