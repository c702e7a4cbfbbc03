package verdict

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// Logs, scripts and the page's style know verdicts by these words.
func TestWordsOfVerdicts(t *testing.T) {
	for v, word := range map[Verdict]string{
		Unreadable: "unreadable", Correct: "correct", Carried: "carried",
		EarlyRounding: "early-rounding", SlipFound: "slip", Unexplained: "unexplained",
	} {
		assert.Equal(t, word, v.String())
	}
	assert.Len(t, words, int(Unexplained)+1, "a word for each")
}
