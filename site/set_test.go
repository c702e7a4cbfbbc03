package site

import (
	stdhtml "html"
	"net/url"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/site/html"
	"closingside/tutor"
	"closingside/tutor/draw"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"
	"closingside/tutor/text"
)

var twoForces = kinds.All.ByName("two-forces")

// aSet is a set of two problems of the harbour and one drawn.
func aSet(t *testing.T, extra ...lesson.Source) *sets.Set {
	leaf := func(key, text string) lesson.Source { return lesson.Source{Key: key, Text: text} }
	bank := twoForces.Bank
	item := func(kids ...lesson.Source) lesson.Source { return lesson.Source{Kids: kids} }
	list := lesson.Source{Key: "problems", Kids: []lesson.Source{
		item(append([]lesson.Source{leaf("marks", "4")}, bank[0].Kids...)...), item(bank[1].Kids...), item(leaf("generate", "two-forces"))}}
	set, err := sets.Read(lesson.Source{Kids: append([]lesson.Source{leaf("title", "Week 3 & more"), leaf("note", "Use <degrees>."), list}, extra...)})
	require.NoError(t, err)
	return set
}

// learner is a session and the log that the page would keep of it.
type learner struct {
	session
	log []string
}

func (l *learner) ask(fields ...string) string {
	var f Form
	for i := 0; i < len(fields); i += 2 {
		f = append(f, Field{fields[i], fields[i+1]})
	}
	if do := f.Get("do"); do != "start" && do != "deal" {
		l.log = append(l.log, f.Line())
	}
	reply := string(l.handle(f, strings.Join(l.log, "\n")).Render(nil))
	for _, found := range logValue.FindAllStringSubmatch(reply, -1) {
		l.log = append(l.log, stdhtml.UnescapeString(found[1]))
	}
	return reply
}

var logValue = regexp.MustCompile(`<data id="log" value="([^"]*)"`)

func (l *learner) deal(set string) string { return l.ask("do", "deal", "set", set) }

func (l *learner) enter(problem, quantity, entry string) string {
	return l.ask("do", "enter", "problem", problem, "quantity", quantity, "entry", entry)
}

func TestASetIsOpenedAndWorked(t *testing.T) {
	set := aSet(t)
	code := set.Code("")
	l := &learner{}
	home := l.ask("do", "start", "hash", "", "sets", code)
	assert.Contains(t, home, "Sets from your instructor")
	assert.Contains(t, home, "Week 3 &amp; more")

	screen := l.ask("do", "open", "problem", code)
	assert.Contains(t, screen, `data-hash="`+html.Escape(code)+`"`)
	assert.Contains(t, screen, "Use &lt;degrees&gt;.")
	assert.Contains(t, screen, "0 of 3 problems done, 0 of 6 marks")
	assert.Contains(t, screen, "Go to problem 1")

	first := twoForces.BankProblems()[0].Code()
	desk := l.ask("do", "open", "problem", first, "set", code)
	assert.Contains(t, desk, "← Week 3 &amp; more")
	l.enter(first, "R", "682.6 N")
	screen = l.ask("do", "open", "problem", code)
	assert.Contains(t, screen, "0 of 3 problems done, 2 of 6 marks")
	assert.Contains(t, screen, "2 of 4 marks · begun")

	l.ask("do", "open", "problem", first, "set", code)
	end := l.enter(first, "theta", "88.2")
	assert.Contains(t, end, "Go to problem 2")
	second := twoForces.BankProblems()[1].Code()
	l.ask("do", "open", "problem", second, "set", code)

	// The log alone brings it back, the way back to the set included.
	again := &learner{log: l.log}
	assert.Contains(t, again.ask("do", "start", "hash", "", "sets", code)+again.ask("do", "home"), "3 problems, 6 marks · 1 of 3 done")
	desk = again.ask("do", "start", "hash", second, "sets", code)
	assert.Contains(t, desk, "← Week 3 &amp; more")
	screen = again.ask("do", "open", "problem", code)
	assert.Contains(t, screen, "1 of 3 problems done, 4 of 6 marks")
	assert.Contains(t, screen, "Go to problem 2")
	assert.Equal(t, screen, l.ask("do", "open", "problem", code))
}

// A set that was drawn is not drawn anew when the page is opened again: the log
// tells which problems they were.
func TestALogTellsWhichProblemsASetDrew(t *testing.T) {
	set := aSet(t, lesson.Source{Key: "numbers", Text: "own"}, lesson.Source{Key: "order", Text: "shuffled"})
	code := set.Code("s1042")
	v, err := set.Variant("s1042")
	require.NoError(t, err)
	drawn := func(student string) string {
		d, err := set.Draw(student, 0)
		require.NoError(t, err)
		return d.Problem.Code()
	}
	first := &learner{}
	screen := first.ask("do", "start", "hash", code)
	require.Len(t, first.log, 1)
	line := first.log[0]
	require.Equal(t, drawn("s1042"), ReadForm(line).Get("dealt"))
	assert.NotContains(t, first.ask("do", "home"), "dealt=", "told once")

	again := &learner{log: []string{line}}
	assert.Equal(t, screen, again.ask("do", "start", "hash", code)+string(logLine(ReadForm(line)).Render(nil)))
	assert.Equal(t, []string{line}, again.log)

	// What the log tells is taken: a log of another student's shows whose it is.
	told := func(dealt ...string) string {
		return Form{{"do", "outcome"}, {"v", "1"}, {"set", code}, {"dealt", strings.Join(dealt, " ")}}.Line()
	}
	other := drawn("s2000")
	again = &learner{log: []string{told(other)}}
	assert.Contains(t, again.ask("do", "start", "hash", code), other)
	assert.Equal(t, v.Tasks, Retrace([]Form{ReadForm("do=open&problem=" + url.QueryEscape(code)), ReadForm(again.log[0])}, func(Trace) {})[0].Tasks,
		"a report draws the set itself")

	// What can't be the set's is drawn.
	for _, wrong := range [][]string{{}, {"x"}, {other, other}, {draw.Generate(kinds.All.ByName("components"), 1).Code()}} {
		again = &learner{log: []string{told(wrong...)}}
		assert.Equal(t, screen, again.ask("do", "start", "hash", code))
	}
}

// Drawing many problems takes a phone a while: it is done a few at a time, and
// the screen shows how far.
func TestManyProblemsAreDrawnAFewAtATime(t *testing.T) {
	leaf := func(key, value string) lesson.Source { return lesson.Source{Key: key, Text: value} }
	set, err := sets.Read(lesson.Source{Kids: []lesson.Source{leaf("title", "Buoys"),
		{Key: "problems", Kids: []lesson.Source{{Kids: []lesson.Source{leaf("generate", "components"), leaf("count", "8")}}}}}})
	require.NoError(t, err)
	code := set.Code("")
	l := &learner{}
	shown := l.ask("do", "start", "hash", code)
	for _, n := range []string{"3", "6"} {
		assert.Contains(t, shown, "Drawing the problems: "+n+" of 8")
		assert.NotContains(t, shown, "Go to problem")
		assert.Empty(t, l.log)
		shown = l.deal(code)
	}
	assert.Contains(t, shown, "0 of 8 problems done")
	require.Len(t, l.log, 1)
	assert.Equal(t, shown, (&learner{log: l.log}).ask("do", "start", "hash", code)+string(logLine(ReadForm(l.log[0])).Render(nil)))

	l = &learner{}
	l.ask("do", "start", "hash", code)
	l.ask("do", "home")
	assert.Empty(t, l.deal(code), "the learner has gone elsewhere")
	assert.Empty(t, l.deal("s1+"))
	assert.Contains(t, l.ask("do", "open", "problem", code), "6 of 8", "goes on where it was left")
}

func TestTheLastProblemLeadsBackToTheSet(t *testing.T) {
	set := aSet(t)
	v, err := set.Variant("")
	require.NoError(t, err)
	last := v.Tasks[2].Problem
	lesson, err := tutor.Open(last)
	require.NoError(t, err)
	l := &learner{}
	l.ask("do", "start", "hash", "")
	l.ask("do", "open", "problem", last.Code(), "set", set.Code(""))
	shown := ""
	for _, q := range lesson.Quantities {
		if q.Answer {
			shown = l.enter(last.Code(), q.Name, lesson.Show(&q, q.True, last.Settings.Answer))
		}
	}
	assert.Contains(t, shown, "Back to Week 3 &amp; more")
}

func TestAVariantIsAskedForByNumber(t *testing.T) {
	set := aSet(t, lesson.Source{Key: "numbers", Text: "own"})
	l := &learner{}
	screen := l.ask("do", "start", "hash", set.Code(""))
	assert.Contains(t, screen, `name="student"`)
	assert.NotContains(t, screen, "problems done")

	screen = l.ask("do", "personal", "set", set.Code(""), "student", "  ")
	assert.Contains(t, screen, "Write your number or name first")
	screen = l.ask("do", "personal", "set", set.Code(""), "student", "S 1042")
	assert.Contains(t, screen, "0 of 3 problems done")
	assert.Contains(t, screen, "These problems are for s1042")
	v, err := set.Variant("s1042")
	require.NoError(t, err)
	assert.Contains(t, screen, v.Tasks[2].Problem.Code())

	home := l.ask("do", "home")
	assert.Equal(t, 1, strings.Count(home, "Week 3 &amp; more"), "the variant stands for the set")
	again := &learner{log: l.log}
	assert.True(t, strings.HasPrefix(home, again.ask("do", "start", "hash", "")))
}

func TestABrokenSetLinkIsRefused(t *testing.T) {
	code := aSet(t).Code("")
	for _, bad := range []string{code[:len(code)-1], "s", "s1+", code + "x"} {
		l := &learner{}
		screen := l.ask("do", "start", "hash", bad)
		assert.Contains(t, screen, `role="alert"`)
		screen = l.ask("do", "open", "problem", bad)
		assert.Contains(t, screen, `role="alert"`)
		assert.NotContains(t, l.ask("do", "start", "hash", "", "sets", bad), "Sets from")
		for _, do := range []string{"enter", "hint", "read", "personal", "again"} {
			l.ask("do", do, "problem", bad, "set", bad, "quantity", "R", "entry", "1", "student", "1")
			l.ask("do", do, "problem", code, "set", code, "quantity", "R", "entry", "1", "student", "1")
		}
	}
}

// Who sends no number is brought to its field.
func TestAMissingNumberIsAskedForAtItsField(t *testing.T) {
	l := &learner{}
	code := aSet(t, lesson.Source{Key: "numbers", Text: "own"}).Code("")
	l.ask("do", "start", "hash", code)
	screen := l.ask("do", "personal", "set", code, "student", " ")
	_, first, found := strings.Cut(screen, `data-focus="`)
	require.True(t, found)
	first, _, _ = strings.Cut(first, `"`)
	assert.Equal(t, "student", first)
}

// One mark is one mark.
func TestAProblemOfOneMark(t *testing.T) {
	l := &learner{}
	code := aSet(t).Code("")
	l.ask("do", "start", "hash", code)
	second := twoForces.BankProblems()[1].Code()
	l.ask("do", "open", "problem", second, "set", code)
	l.enter(second, "R", "1 N")
	assert.Contains(t, l.ask("do", "open", "problem", code), "0 of 1 mark ·")
}

// At the end of a problem of a set its next problem is the one thing to do: what
// else may be suggested is quieter, and no other kind leads away from the set.
func TestAtTheEndOfAProblemOfASetTheSetGoesOn(t *testing.T) {
	code, first := aSet(t).Code(""), twoForces.BankProblems()[0].Code()
	rows := map[string]struct {
		entries [][2]string
		says    string // what is suggested beside the next problem
	}{
		"all went well":  {nil, ""},
		"after mistakes": {[][2]string{{"gamma", "93"}}, text.Say("page.another")},
		"one way":        {byTriangle(), "Find"},
	}
	for name, row := range rows {
		t.Run(name, func(t *testing.T) {
			l := &learner{}
			l.ask("do", "start", "hash", code)
			l.ask("do", "open", "problem", first, "set", code)
			var end string
			for _, e := range append(row.entries, [2]string{"R", "682.6 N"}, [2]string{"theta", "88.2"}) {
				end = l.enter(first, e[0], e[1])
			}
			_, end, found := strings.Cut(end, `id="end"`)
			require.True(t, found)
			end, _, _ = strings.Cut(end, text.Say("page.end.found"))
			assert.Contains(t, end, "Go to problem 2")
			assert.Equal(t, 1, strings.Count(end, "primary"), end)
			assert.NotContains(t, end, text.Say("page.end.open"))
			assert.Contains(t, end, row.says)
			assert.Equal(t, row.says != "", strings.Contains(end, text.Say("page.end.next")))
		})
	}
}
