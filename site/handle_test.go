package site

import (
	"net/url"
	"strings"
	"testing"

	"closingside/tutor/kinds"
	"closingside/tutor/text"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestMain(m *testing.M) {
	text.Strict = true
	m.Run()
}

// ask sends a request of names and values and returns the reply.
func ask(pairs ...string) string {
	q := url.Values{}
	for i := 0; i+1 < len(pairs); i += 2 {
		q.Set(pairs[i], pairs[i+1])
	}
	return string(Handle([]byte(q.Encode())))
}

func line(pairs ...string) string {
	q := url.Values{}
	for i := 0; i+1 < len(pairs); i += 2 {
		q.Set(pairs[i], pairs[i+1])
	}
	return q.Encode()
}

// barge is the code of the first problem of the bank.
func barge() string { return kinds.All.ByName("two-forces").BankProblems()[0].Code() }

func TestHomeListsTheBank(t *testing.T) {
	home := ask("do", "start", "at", "1")
	for _, p := range kinds.All.ByName("two-forces").BankProblems() {
		assert.Contains(t, home, p.Story)
	}
	assert.Contains(t, home, `id="main"`)
}

func TestAProblemIsWorked(t *testing.T) {
	ask("do", "start", "at", "1")
	desk := ask("do", "open", "problem", barge(), "at", "2")
	assert.Contains(t, desk, "P = 340 N")
	assert.Contains(t, desk, `id="entry-theta"`)
	assert.Contains(t, desk, "<svg")

	enter := func(q, e string) string {
		return ask("do", "enter", "problem", barge(), "quantity", q, "entry", e, "at", "3")
	}
	wrong := enter("gamma", "93°")
	assert.Contains(t, wrong, `data-verdict="slip"`)
	assert.Contains(t, wrong, `value="93°"`, "what was typed stays in the field")
	assert.Contains(t, wrong, "included-for-interior", "the log keeps the slip")
	for _, e := range [][2]string{{"phi", "93"}, {"gamma", "87°"}, {"R", "682.6 N"}, {"alpha", "29.83"}} {
		assert.Contains(t, enter(e[0], e[1]), `data-state="found"`, e)
	}
	end := enter("theta", "88.2°")
	assert.Contains(t, end, text.Say("page.done"))
	assert.Contains(t, end, text.Say("slip.included-for-interior.title"))
}

func TestHintsAndSolution(t *testing.T) {
	ask("do", "start", "at", "1")
	for level := range 4 {
		got := ask("do", "hint", "problem", barge(), "quantity", "R", "at", "2")
		assert.Equal(t, level+1, strings.Count(got, `class="hint"`))
	}
	assert.Contains(t, ask("do", "solution", "problem", barge(), "at", "3"), "<math")

	hint := func() string { return ask("do", "hint", "problem", barge(), "quantity", "phi", "at", "4") }
	hint()
	hint()
	_, heard, _ := strings.Cut(hint(), `id="say"`)
	assert.Contains(t, heard, "equals 118 degrees minus 25 degrees", "the formula is read aloud, too")
}

func TestTheLogBringsTheWorkBack(t *testing.T) {
	lines := []string{
		line("do", "open", "problem", barge(), "at", "1"),
		line("do", "enter", "problem", barge(), "quantity", "R", "entry", "682.6 N", "at", "2"),
		line("do", "outcome", "verdict", "correct"),
		line("do", "enter", "problem", barge(), "quantity", "R", "entry", "<b>", "at", "3"),
		line("do", "hint", "problem", barge(), "quantity", "theta", "at", "4"),
		line("do", "draw", "kind", "two-forces", "at", "5"),
		line("do", "open", "problem", barge(), "at", "6"),
	}
	ask("do", "start", "at", "0")
	for _, l := range lines {
		Handle([]byte(l))
	}
	live := ask("do", "start-over", "at", "7") // any unknown request shows the screen as it stands
	live = strings.SplitN(live, `<p id="say"`, 2)[0]
	again := string(Handle([]byte(line("do", "start", "at", "8") + "\n" + strings.Join(lines, "\n"))))
	require.NotEmpty(t, again)
	assert.True(t, live == again, "the same screen, to the letter")
	assert.Contains(t, again, "682.6 N")
	assert.Contains(t, again, "&lt;b&gt;")
}

func TestAProblemOfOnesOwn(t *testing.T) {
	ask("do", "start", "at", "1")
	own := []string{"do", "own", "kind", "two-forces", "at", "2",
		"forces.0.name", "A", "forces.0.magnitude", "120 lb", "forces.0.direction", "N 30 E",
		"forces.1.name", "B", "forces.1.magnitude", "90 lb"}
	ok := ask(append(own, "forces.1.direction", "30 deg below -x")...)
	assert.Contains(t, ok, "A = 120 lb")
	bad := ask(append(own, "forces.1.direction", "sideways")...)
	assert.Contains(t, bad, `value="120 lb"`, "nothing typed is lost")
	assert.Contains(t, bad, `role="alert"`)
}

func TestHostileRequests(t *testing.T) {
	for _, r := range []string{"", "do=enter", "do=enter&problem=x&quantity=R", "do=open&hash=%3Cscript%3E", "do=hint&problem=" + url.QueryEscape(barge()) + "&quantity=F1", "do=read", "do=draw&kind=none", "do=undo&problem=" + url.QueryEscape(barge())} {
		assert.NotPanics(t, func() { Handle([]byte(r)) }, r)
	}
}

// An engine that was never started takes a request all the same.
func TestARequestBeforeTheStart(t *testing.T) {
	f := ReadForm(line("do", "enter", "problem", barge(), "quantity", "R", "entry", "682.6 N"))
	assert.Contains(t, string(new(session).handle(f, "").Render(nil)), "682.6 N")
}

func FuzzHandle(f *testing.F) {
	f.Add("do=start\ndo=open&problem=x")
	f.Add(line("do", "enter", "problem", barge(), "quantity", "R", "entry", "682.6 N"))
	f.Add(line("do", "own", "kind", "two-forces", "forces.0.name", "P"))
	f.Fuzz(func(t *testing.T, req string) { Handle([]byte(req)) })
}

func TestOwnProblemNamesTheField(t *testing.T) {
	rows := map[string]struct {
		q, wrong, why string
	}{
		"empty":     {"", "forces.1.magnitude", text.Say("page.home.own.empty")},
		"no number": {"six", "forces.1.magnitude", `id="refused"`},
		"no force":  {"6 m", "forces.1.magnitude", `id="refused"`},
	}
	for name, row := range rows {
		t.Run(name, func(t *testing.T) {
			ask("do", "start", "at", "0")
			got := ask("do", "own", "kind", "two-forces", "forces.0.name", "P", "forces.0.magnitude", "3 N", "forces.0.direction", "25 deg",
				"forces.1.name", "Q", "forces.1.magnitude", row.q, "forces.1.direction", "70 deg", "at", "1")
			require.Equal(t, 1, strings.Count(got, `aria-invalid="true"`))
			_, input, _ := strings.Cut(got, `name="`+row.wrong+`"`)
			input, rest, _ := strings.Cut(input, ">")
			assert.Contains(t, input, `aria-invalid="true"`)
			assert.Contains(t, rest, row.why)
		})
	}
}

// Who opens the page again without a link is not told once more that the link of
// last time was broken, nor that a damaged line of the log is one.
func TestABrokenLinkIsToldOfOnce(t *testing.T) {
	const broken = "This link is not whole"
	for name, past := range map[string]string{
		"a link followed before": line("do", "open", "hash", barge()+"x", "at", "1"),
		"a damaged line":         line("do", "enter", "problem", "", "quantity", "R", "entry", "1", "at", "1"),
	} {
		again := func(hash string) string {
			return string(Handle([]byte(line("do", "start", "hash", hash, "at", "2") + "\n" + past)))
		}
		assert.NotContains(t, again(""), broken, name)
		assert.Contains(t, again(barge()+"y"), broken, "the link it is opened with is told of")
	}
}

// TestAnUnreadableEntryForAFoundValueIsStillInUse: what was found stands, but what
// was typed last can't be read, so nobody is sent on to the next value.
func TestAnUnreadableEntryForAFoundValueIsStillInUse(t *testing.T) {
	ask("do", "start", "at", "1")
	ask("do", "open", "problem", barge(), "at", "2")
	enter := func(e string) string {
		return ask("do", "enter", "problem", barge(), "quantity", "R", "entry", e, "at", "3")
	}
	assert.Contains(t, enter("682.6 N"), `data-focus="entry-`, "on to the next")
	again := enter("7,1,2 N")
	assert.Contains(t, again, `data-verdict="unreadable"`)
	assert.NotContains(t, again, "data-focus", "the field in use stays so")
	assert.NotContains(t, again, text.Say("page.next.label")+":", "nor is another announced")
	assert.Contains(t, again, `<details class="again" open>`, "and is in view")
}
