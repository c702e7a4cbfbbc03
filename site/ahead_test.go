package site

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"closingside/tutor/kinds"
)

// What is made ahead comes to an end, begins anew after an entry and with
// another problem, and changes nothing that is seen.
func TestWhatIsMadeAhead(t *testing.T) {
	made := func() (pieces int) {
		for ask("do", "ahead") != `<data id="ahead" value="made"></data>` {
			pieces++
			if pieces > 100000 {
				t.Fatal("no end")
			}
		}
		return pieces
	}
	problems := kinds.All.ByName("two-forces").BankProblems()
	ask("do", "start", "hash", "")
	assert.Zero(t, made(), "on the home screen")
	ask("do", "start", "hash", problems[0].Code())
	cold := ask("do", "enter", "problem", problems[0].Code(), "quantity", "R", "entry", "713.7 N", "at", "3")
	ask("do", "start", "hash", problems[0].Code())
	assert.Greater(t, made(), 50)
	assert.Zero(t, made(), "twice")
	assert.Equal(t, cold, ask("do", "enter", "problem", problems[0].Code(), "quantity", "R", "entry", "713.7 N", "at", "3"))
	assert.NotZero(t, made(), "after an entry")
	ask("do", "open", "hash", problems[1].Code(), "at", "4")
	assert.Contains(t, ask("do", "ahead"), "more")
	ask("do", "open", "hash", problems[0].Code(), "at", "5")
	made()
}
