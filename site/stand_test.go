package site

import (
	"strings"
	"testing"

	"closingside/tutor/text"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestStandingByARefusedEntry(t *testing.T) {
	ask("do", "start", "at", "1")
	const why = "I measured it & it's <700>"
	enter := []string{"do", "enter", "problem", barge(), "quantity", "R", "entry", "700 N", "at", "2"}
	stand := []string{"do", "stand", "problem", barge(), "quantity", "R", "entry", "700 N", "reason", why, "at", "3"}
	withdraw := []string{"do", "withdraw", "problem", barge(), "quantity", "R", "entry", "700 N", "at", "4"}

	refused := ask(enter...)
	assert.Contains(t, refused, text.Say("page.stand"))
	assert.Contains(t, refused, `name="reason"`)
	assert.NotContains(t, ask("do", "enter", "problem", barge(), "quantity", "gamma", "entry", "87°", "at", "2"), "reason-gamma", "a right entry needs none")

	stood := ask(stand...)
	shown := "I measured it &amp; it's &lt;700&gt;"
	require.Contains(t, stood, shown)
	assert.Contains(t, stood, text.Say("page.stand.kept"), "announced")
	assert.Contains(t, stood, text.Say("page.stand.withdraw"))
	assert.NotContains(t, stood, `name="reason"`)
	outcome := stood[strings.Index(stood, `id="log"`):]
	assert.Contains(t, outcome, "stands=I+measured+it+%26", "the log keeps the reason beside the verdict")
	assert.Contains(t, outcome, "verdict=early-rounding")

	t.Run("replay", func(t *testing.T) {
		back := string(Handle([]byte(line("do", "start", "hash", barge(), "at", "9") + "\n" + strings.Join([]string{line(enter...), line(stand...)}, "\n"))))
		assert.Contains(t, back, shown)
		back = string(Handle([]byte(line("do", "start", "hash", barge(), "at", "9") + "\n" + strings.Join([]string{line(enter...), line(stand...), line(withdraw...)}, "\n"))))
		assert.NotContains(t, back, shown)
		assert.Contains(t, back, `name="reason"`)
	})
	t.Run("withdrawn", func(t *testing.T) {
		ask(stand...)
		gone := ask(withdraw...)
		assert.NotContains(t, gone, shown)
		assert.Contains(t, gone, text.Say("page.stand.withdrawn"))
		assert.NotContains(t, gone[strings.Index(gone, `id="log"`):], "stands=")
	})
	t.Run("of another entry", func(t *testing.T) {
		ask("do", "enter", "problem", barge(), "quantity", "R", "entry", "701 N", "at", "5")
		assert.NotContains(t, ask(stand...), shown, "the reason was given for 700 N")
	})
	t.Run("nothing to stand by", func(t *testing.T) {
		ask("do", "start", "at", "1")
		assert.NotContains(t, ask(stand...), shown)
		assert.NotContains(t, ask("do", "stand", "problem", barge(), "quantity", "F1", "reason", why, "at", "3"), shown)
	})
}

// Correcting an entry judges the later ones again: their cards are sent, marked,
// and announced.
func TestWhatIsJudgedAgainIsShownAndAnnounced(t *testing.T) {
	ask("do", "start", "at", "1")
	enter := func(q, e string) string {
		return ask("do", "enter", "problem", barge(), "quantity", q, "entry", e, "at", "2")
	}
	enter("beta", "61.0°")
	assert.Contains(t, enter("theta", "86.0°"), `data-verdict="carried"`)
	said := func(reply string) string {
		at := strings.Index(reply, `id="say"`)
		return reply[at : at+strings.Index(reply[at:], "</p>")]
	}
	fixed := enter("beta", "63.17°")
	assert.Contains(t, fixed, `id="card-theta"`)
	assert.Contains(t, fixed, text.Say("page.again.mark"))
	assert.Contains(t, fixed, text.Say("page.since", "from", "β"))
	assert.Contains(t, said(fixed), text.Say("page.again.judged", "symbol", "θ", "verdict", text.Say("verdict.carried")))

	right := enter("theta", "88.2°")
	assert.NotContains(t, right, text.Say("page.again.mark"), "a new entry is judged for the first time")
	assert.NotContains(t, said(right), "judged again")

	undone := ask("do", "undo", "problem", barge(), "at", "3") // θ = 86.0° stands again
	assert.NotContains(t, said(undone), "judged again")
	undone = ask("do", "undo", "problem", barge(), "at", "4") // and β = 61.0°
	assert.Contains(t, undone, `id="card-theta"`)
	assert.Contains(t, said(undone), "judged again")
}
