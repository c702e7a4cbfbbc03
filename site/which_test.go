package site

import (
	"strings"
	"testing"

	"closingside/tutor/text"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestAQuestionBetweenTwoSlipsIsAnswered(t *testing.T) {
	ask("do", "start", "at", "1")
	enter := []string{"do", "enter", "problem", barge(), "quantity", "R", "entry", "698 N", "at", "2"}
	answer := []string{"do", "answer", "problem", barge(), "quantity", "R", "entry", "698 N", "which", "2", "at", "3"}
	asked := ask(enter...)
	require.Contains(t, asked, text.Say("page.which"))
	assert.Equal(t, 3, strings.Count(asked, `name="which"`))
	shown, heard, _ := strings.Cut(asked, `id="say"`)
	title := text.Say("slip.cross-term-missing.title")
	assert.Equal(t, 1, strings.Count(shown, title), "on the screen the buttons alone tell what there is to choose from")
	assert.Contains(t, heard, title, "read aloud, the question does")
	told := ask(answer...)
	assert.NotContains(t, told, `name="which"`, "asked once")
	assert.Contains(t, told, text.Say("slip.other-force.ask", "where", text.Say("feedback.where", "at", "Qx")))
	assert.Contains(t, told[strings.Index(told, `id="log"`):], "slips=other-force", "the log has it first")

	t.Run("replay", func(t *testing.T) {
		back := string(Handle([]byte(line("do", "start", "hash", barge(), "at", "9") + "\n" + line(enter...) + "\n" + line(answer...))))
		assert.NotContains(t, back, `name="which"`)
		asked, _, _ := strings.Cut(text.Say("slip.other-force.ask", "where", "|"), "|")
		assert.Contains(t, back, asked)
	})
	t.Run("of another entry", func(t *testing.T) {
		ask("do", "enter", "problem", barge(), "quantity", "R", "entry", "691 N", "at", "5")
		assert.NotContains(t, ask(answer...), `id="log"`)
	})
}
