package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A value that is right in every digit typed is not told that its last one is
// off, even where one digit fewer was asked and both round apart.
func TestTheLastDigitIsOffOnlyWhereItIs(t *testing.T) {
	for entry, off := range map[string]bool{
		"396.5 N": false, // 396.523 N
		"397 N":   false,
		"396.52":  false,
		"396 N":   true,
		"396.4 N": true,
	} {
		t.Run(entry, func(t *testing.T) {
			w := NewWork(bankLesson(t, &obliqueComponents, 0), DefaultSettings())
			r := w.Enter("Fv", entry)
			assert.Equal(t, Correct, r.Verdict)
			if off {
				assert.Contains(t, r.Notes, "last-digit")
			} else {
				assert.NotContains(t, r.Notes, "last-digit")
			}
		})
	}
}
