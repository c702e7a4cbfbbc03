package main

import (
	"errors"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func TestWrapKeepsEveryWordWithinTheWidth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringOf(rapid.SampledFrom([]rune("aθ°−1  \n"))).Draw(t, "text")
		width := rapid.IntRange(1, 20).Draw(t, "width")
		lines := wrap(text, width)
		assert.NotEmpty(t, lines)
		assert.Equal(t, strings.Fields(text), strings.Fields(strings.Join(lines, " ")))
		for _, l := range lines {
			assert.True(t, utf8.RuneCountInString(l) <= width || !strings.Contains(l, " "), "%q", l)
		}
	})
}

func TestNumbersStandAtTheirPoint(t *testing.T) {
	assert.Equal(t, []string{"   1.5 N", "−286.4 N", "  87.0°", "   5 N", "    –"}, atPoint([]string{"1.5 N", "−286.4 N", "87.0°", "5 N", "–"}))
}

func TestStylesShowOnATerminalOnly(t *testing.T) {
	var b strings.Builder
	page := newScreen(&b)
	page.paragraph(2, bold, "Given")
	page.styled = true
	page.paragraph(2, bold, "Given")
	assert.Equal(t, "  Given\n  \x1b[1mGiven\x1b[0m\n", b.String())
}

func TestTheFirstErrorOfWritingEndsTheOutput(t *testing.T) {
	w := &fullDisk{}
	page := newScreen(w)
	page.line("one")
	page.line("two")
	assert.Equal(t, 1, w.writes)
	assert.ErrorIs(t, written(page.err), errFull)
}

var errFull = errors.New("the disk is full")

type fullDisk struct{ writes int }

func (w *fullDisk) Write([]byte) (int, error) { w.writes++; return 0, errFull }
