package site

import (
	"testing"

	"closingside/tutor/kinds"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Symbols with letters below the line are set so in sentences, as words of
// their own alone.
func TestSymbolsInSentences(t *testing.T) {
	l, err := openCode(kinds.All.ByName("particle-equilibrium").BankProblems()[5].Code())
	require.NoError(t, err)
	d := &desk{lesson: l}
	for sentence, want := range map[string]string{
		"Find T, W and mW.":               "Find T, W and <i>m</i><sub><i>W</i></sub>.",
		"mW":                              "<i>m</i><sub><i>W</i></sub>",
		"12 mWh, θT₁ and θTx stand as is": "12 mWh, θT₁ and θTx stand as is",
		"At θT: is it θT, or ΣFx?":        "At <i>θ</i><sub><i>T</i></sub>: is it <i>θ</i><sub><i>T</i></sub>, or Σ<i>F</i><sub><i>x</i></sub>?",
		"A < B":                           "A &lt; B",
	} {
		assert.Equal(t, want, string(d.prose(sentence).Render(nil)))
	}
	l, err = openCode(kinds.All.ByName("oblique-components").BankProblems()[0].Code())
	require.NoError(t, err)
	assert.Equal(t, "Is <i>P</i><sub><i>u</i></sub> longer than <i>P</i><sub><i>v</i></sub>?", string((&desk{lesson: l}).prose("Is Pu longer than Pv?").Render(nil)))
	l, err = openCode(kinds.All.ByName("oblique-components").BankProblems()[1].Code())
	require.NoError(t, err)
	assert.Equal(t, "Find <i>M</i><sub><i>a</i></sub> and <i>M</i><sub><i>b</i></sub> along a.", string((&desk{lesson: l}).prose("Find Ma and Mb along a.").Render(nil)))
	l, err = openCode("1!two-forces!!forces:A;460_N;-7_deg!forces:B;700_N;64_deg!4nz5")
	require.NoError(t, err)
	by := "<i>B</i><sub><i>y</i></sub>"
	for sentence, want := range map[string]string{
		"By rectangular components": "By rectangular components", "Right. By which law?": "Right. By which law?", "Which one? By\u00a0it": "Which one? By\u00a0it",
		"By": by, "By = 629.2 N, By\u00a0=\u00a0629.2\u00a0N": by + " = 629.2 N, " + by + "\u00a0=\u00a0629.2\u00a0N",
		"What is By of B?": "What is " + by + " of B?", "in By: a sign lost": "in " + by + ": a sign lost",
	} {
		assert.Equal(t, want, string((&desk{lesson: l}).prose(sentence).Render(nil)), "By is a word where it may begin a sentence")
	}
}
