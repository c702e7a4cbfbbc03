package site

import (
	"html"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"closingside/tutor/text"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

var broughtLine = regexp.MustCompile(`<data class="bring" value="([^"]*)"(?: data-before="(\d+)")?>`)

// take brings a copy into a log as the page does, and returns the log after it and
// what is said.
func take(t require.TestingT, log []string, copied string) (merged []string, said string) {
	request := append([]string{line("do", "bring", "lines", strconv.Itoa(len(log)), "at", "1")}, log...)
	reply := string(Handle([]byte(strings.Join(append(request, copied), "\n"))))
	before := map[int][]string{}
	for _, m := range broughtLine.FindAllStringSubmatch(reply, -1) {
		at := len(log)
		if m[2] != "" {
			at, _ = strconv.Atoi(m[2])
		}
		before[at] = append(before[at], html.UnescapeString(m[1]))
	}
	for i := range len(log) + 1 {
		merged = append(merged, before[i]...)
		if i < len(log) {
			merged = append(merged, log[i])
		}
	}
	_, said, found := strings.Cut(reply, `<p id="brought" role="status">`)
	require.True(t, found, reply)
	return merged, html.UnescapeString(strings.TrimSuffix(said, "</p>"))
}

// dayOne is a log of some work, dayTwo one of more on the same problem, later.
func dayOne() []string {
	return []string{
		line("do", "open", "problem", barge(), "at", "1000"),
		line("do", "enter", "problem", barge(), "quantity", "gamma", "entry", "93", "at", "2000"),
		line("do", "outcome", "v", "1", "problem", barge(), "quantity", "gamma", "verdict", "slip", "slips", "included-for-interior"),
		line("do", "again", "problem", barge()) + "&at=3000",
	}
}

func dayTwo() []string {
	return []string{
		line("do", "open", "problem", barge(), "at", "11000"),
		line("do", "enter", "problem", barge(), "quantity", "gamma", "entry", "87", "at", "12000"),
		line("do", "outcome", "v", "1", "problem", barge(), "quantity", "gamma", "verdict", "correct", "slips", ""),
	}
}

func TestACopyOfWorkIsTakenBack(t *testing.T) {
	saved := strings.Join(dayOne(), "\n") + "\n"
	t.Run("on a new device", func(t *testing.T) {
		merged, said := take(t, nil, saved)
		assert.Equal(t, dayOne(), merged)
		assert.Equal(t, text.Say("page.brought", "n", "3"), said)
	})
	t.Run("one step", func(t *testing.T) {
		_, said := take(t, dayOne()[:3], saved)
		assert.Equal(t, text.Say("page.brought.one"), said)
	})
	t.Run("with something pasted in it that was far too long to be read", func(t *testing.T) {
		merged, _ := take(t, nil, saved+line("do", "enter", "problem", barge(), "quantity", "R", "entry", strings.Repeat("9", 1<<17), "at", "4000")+"\n")
		assert.Equal(t, dayOne(), merged)
	})
	t.Run("in the order in which it was done", func(t *testing.T) {
		merged, _ := take(t, dayTwo(), saved)
		assert.Equal(t, append(dayOne(), dayTwo()...), merged)
		merged, _ = take(t, dayOne(), strings.Join(dayTwo(), "\n"))
		assert.Equal(t, append(dayOne(), dayTwo()...), merged)
	})
	t.Run("once", func(t *testing.T) {
		merged, said := take(t, append(dayOne(), dayTwo()...), saved)
		assert.Equal(t, append(dayOne(), dayTwo()...), merged)
		assert.Equal(t, text.Say("page.brought.nothing"), said)
	})
	t.Run("so that what was done last stands", func(t *testing.T) {
		merged, _ := take(t, dayTwo(), saved)
		start := line("do", "start", "hash", barge(), "at", "99000")
		screen := string(Handle([]byte(start + "\n" + strings.Join(merged, "\n"))))
		assert.Contains(t, screen, `data-state="found"`, "the problem was started again before that")
	})
	t.Run("with a mark at its head and lines as Windows ends them", func(t *testing.T) {
		merged, _ := take(t, nil, "\ufeff"+strings.ReplaceAll(saved, "\n", "\r\n")+"aside=x-1\r\n")
		assert.Equal(t, dayOne(), merged)
	})
}

func TestABrokenFileIsRefusedWhole(t *testing.T) {
	saved := strings.Join(dayOne(), "\n") + "\n"
	for name, c := range map[string]struct {
		file, why string
		line      int
	}{
		"empty":        {" \n", "empty", 0},
		"a photograph": {"\x89PNG\r\n\x1a\n\xff\xfe", "foreign", 0},
		"a letter":     {"Dear Sir,\nhere is my work.\n", "line", 1},
		"cut short":    {saved[:len(saved)-8], "line", 4},
		"a line more":  {saved + "do=start&hash=&at=5\n", "line", 5},
		"far too long": {strings.Repeat(dayOne()[0]+"\n", MaxLines+1), "long", 0},
		"too large":    {strings.Repeat("a", MaxSaved+1), "long", 0},
	} {
		t.Run(name, func(t *testing.T) {
			merged, said := take(t, dayTwo(), c.file)
			assert.Equal(t, dayTwo(), merged)
			assert.Equal(t, text.Say("page.brought."+c.why, "n", strconv.Itoa(c.line))+" "+text.Say("page.brought.kept"), said)
		})
	}
}

// TestTwoCopiesOfWork: whatever two devices did, and however often one's copy is
// taken on the other, everything is there once, and each one's own order stays.
func TestTwoCopiesOfWork(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		make := func(name string) (log []string) {
			at := 0
			for range rapid.IntRange(0, 8).Draw(t, name) {
				at += rapid.IntRange(0, 3).Draw(t, "later")
				log = append(log, line("do", "enter", "problem", barge(), "quantity", "R", "entry", name, "at", strconv.Itoa(at)))
				for range rapid.IntRange(0, 2).Draw(t, "outcomes") {
					log = append(log, line("do", "outcome", "v", "1", "quantity", "R", "verdict", name))
				}
			}
			return log
		}
		first, own, theirs := make("both"), make("own"), make("theirs")
		log, other := append(slices.Clone(first), own...), append(slices.Clone(first), theirs...)
		if len(other) == 0 {
			return
		}
		merged, _ := take(t, log, strings.Join(other, "\n"))
		assert.ElementsMatch(t, append(slices.Clone(log), theirs...), merged)
		kept := slices.DeleteFunc(slices.Clone(merged), func(l string) bool { return strings.Contains(l, "theirs") })
		assert.Equal(t, strings.Join(log, "\n"), strings.Join(kept, "\n"), "the log's own order")
		again, _ := take(t, merged, strings.Join(other, "\n"))
		assert.Equal(t, merged, again)
	})
}
