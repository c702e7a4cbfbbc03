package site

import (
	"regexp"
	"strconv"
	"strings"
	"testing"

	"closingside/tutor/kinds"
	"closingside/tutor/text"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// viewOf is the view of the sketch on the screen: x, y of the origin, scale.
func viewOf(t testing.TB, screen string) (string, [3]float64) {
	t.Helper()
	m := regexp.MustCompile(`name="view" value="([^"]*)"`).FindStringSubmatch(screen)
	require.NotNil(t, m)
	var v [3]float64
	for i, s := range strings.Fields(m[1]) {
		x, err := strconv.ParseFloat(s, 64)
		require.NoError(t, err)
		v[i] = x
	}
	return m[1], v
}

// A drag is what the page reports: places in the drawing's own coordinates.
func TestADragIsJudged(t *testing.T) {
	ask("do", "start", "at", "1")
	screen := ask("do", "open", "problem", barge(), "at", "2")
	written, v := viewOf(t, screen)
	at := func(x, y float64) (string, string) { // newtons to the drawing's coordinates
		f := func(v float64) string { return strconv.FormatFloat(v, 'f', 1, 64) }
		return f(v[0] + x*v[2]), f(v[1] - y*v[2])
	}
	drag := func(tool, held string, x0, y0, x1, y1 float64) string {
		a, b := at(x0, y0)
		c, d := at(x1, y1)
		return ask("do", "sketch", "act", "drag", "problem", barge(), "tool", tool, "held", held, "view", written, "x0", a, "y0", b, "x1", c, "y1", d, "at", "3")
	}
	hx, hy := 308.1446, 143.6902 // 340 N at 25°
	moved := drag("move", "F2", -100, 200, -100+hx+20, 200+hy-15)
	assert.Contains(t, moved, `data-stage="close"`)
	assert.Contains(t, moved, `quantity=sketch&amp;verdict=correct`)
	wrong := drag("draw", "", 21.76, 682.29, 10, -20)
	assert.Contains(t, wrong, text.Say("sketch.reversed"))
	assert.Contains(t, wrong, "slips=resultant-reversed")
	right := drag("draw", "", 15, -20, 40, 660)
	assert.Contains(t, right, `id="estimate-R"`)
	done := ask("do", "sketch", "act", "estimate", "problem", barge(), "estimate.R", "700", "estimate.theta", "90", "at", "4")
	assert.NotContains(t, done, `class="fig sketch"`)
	assert.Contains(t, ask("do", "enter", "problem", barge(), "quantity", "R", "entry", "950 N", "at", "5"), "700 N")
}

// What was sketched comes back from the log to the letter.
func TestTheLogBringsTheSketchBack(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		lines := []string{line("do", "open", "problem", barge(), "at", "1")}
		act := rapid.SampledFrom([]string{"put", "close", "drag", "undo", "skip", "back", "estimate", "pass"})
		corner := rapid.SampledFrom([]string{"t0", "h0", "t1", "h1", "t7", ""})
		where := rapid.SampledFrom([]string{"100", "174.8", "296", "0", "-40", "nan", "1e300"})
		for range rapid.IntRange(1, 8).Draw(rt, "acts") {
			lines = append(lines, line("do", "sketch", "problem", barge(), "act", act.Draw(rt, "act"),
				"end", corner.Draw(rt, "end"), "at", corner.Draw(rt, "at"), "from", corner.Draw(rt, "from"), "to", corner.Draw(rt, "to"),
				"tool", rapid.SampledFrom([]string{"move", "draw"}).Draw(rt, "tool"), "held", rapid.SampledFrom([]string{"F1", "F2", ""}).Draw(rt, "held"),
				"view", "174.8 296 0.384", "x0", where.Draw(rt, "x0"), "y0", where.Draw(rt, "y0"), "x1", where.Draw(rt, "x1"), "y1", where.Draw(rt, "y1"),
				"estimate.R", "700", "estimate.theta", "1"))
		}
		ask("do", "start", "at", "0")
		for _, l := range lines {
			Handle([]byte(l))
		}
		live := strings.SplitN(ask("do", "start-over", "at", "7"), `<p id="say"`, 2)[0]
		again := string(Handle([]byte(line("do", "start", "at", "8") + "\n" + strings.Join(lines, "\n"))))
		require.Equal(rt, live, again)
	})
}

func TestHostileSketches(t *testing.T) {
	ask("do", "start", "at", "1")
	for _, r := range []string{"act=drag", "act=drag&view=1+2+0&x0=1&y0=1&x1=2&y1=2", "act=drag&view=0+0+1e-300&x0=1e12&y0=1&x1=2&y1=2", "act=drag&tool=draw&view=1+1+NaN&x0=1&y0=1&x1=2&y1=2",
		"act=put&end=t9&at=h0", "act=put&end=t0&at=h0", "act=close&from=h0&to=h0", "act=estimate", "act=", "act=undo", "act=pass"} {
		assert.NotPanics(t, func() { Handle([]byte("do=sketch&problem=" + line("", barge())[1:] + "&" + r)) }, r)
	}
	none := kinds.All.ByName("components").BankProblems()[0].Code()
	assert.NotPanics(t, func() { ask("do", "sketch", "problem", none, "act", "put", "end", "t0", "at", "h1") })
	assert.NotContains(t, ask("do", "open", "problem", none), "sketch-skip", "no sketch where the kind has none")
}

// Settings may leave the sketch out: then nothing of it is on the page, and a
// request about it does nothing.
func TestNoSketchWhereSettingsLeaveItOut(t *testing.T) {
	p := *kinds.All.ByName("two-forces").BankProblems()[0]
	p.Settings.Sketch = false
	code := p.Code()
	ask("do", "start", "at", "1")
	screen := ask("do", "open", "problem", code, "at", "2")
	assert.Contains(t, screen, `id="entry-phi"`)
	assert.NotContains(t, screen, "sketch-")
	assert.NotContains(t, ask("do", "sketch", "act", "back", "problem", code, "at", "3"), "sketch-title")
}

// A button of a sign alone has its name once: what is its title beside a label of
// the same words is read out twice.
func TestASignIsNamedOnce(t *testing.T) {
	work(t)
	desk := ask("do", "open", "problem", barge(), "at", "9")
	for _, name := range []string{text.Say("sketch.replay"), text.Say("sketch.back")} {
		assert.Equal(t, 1, strings.Count(desk, `="`+name+`"`), name)
	}
}
