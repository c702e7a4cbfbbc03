package report

import (
	"html"
	"regexp"
	"runtime"
	"strings"
	"sync"
	"testing"

	"closingside/site"
	"closingside/tutor"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/sets"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func barge() string { return kinds.All.ByName("two-forces").BankProblems()[0].Code() }

// written is a log of lines, each of names and values; the time goes on by so
// many seconds before each.
func written(t *testing.T, name string, lines ...[]string) *Log {
	t.Helper()
	clock := int64(1_793_000_000_000)
	var b strings.Builder
	for _, pairs := range lines {
		f := site.Form{}
		for i := 0; i+1 < len(pairs); i += 2 {
			f = append(f, site.Field{Name: pairs[i], Value: pairs[i+1]})
		}
		clock += 40_000
		b.WriteString(append(f, site.Field{Name: "at", Value: itoa(clock)}).Line() + "\r\n")
	}
	l, err := ReadLog(name, name+".txt", []byte("\ufeff"+b.String()))
	require.NoError(t, err)
	return l
}

func itoa(n int64) string {
	s := ""
	for ; n > 0; n /= 10 {
		s = string(rune('0'+n%10)) + s
	}
	return s
}

func enter(q, e string) []string {
	return []string{"do", "enter", "problem", barge(), "quantity", q, "entry", e}
}

func hint(q string) []string { return []string{"do", "hint", "problem", barge(), "quantity", q} }

var open = []string{"do", "open", "hash", barge()}

// The barge: γ = 87°, R = 682.6 N, θ = 88.2° (see testdata/published.json of tutor).
func TestHowAValueWasFound(t *testing.T) {
	r, faults := Of([]*Log{
		written(t, "at once", open, enter("gamma", "87°"), enter("R", "682.6 N"), enter("theta", "88.2°")),
		written(t, "later", open, enter("gamma", "93°"), enter("gamma", "87°")),
		written(t, "after a hint", open, hint("gamma"), enter("gamma", "87°")),
		written(t, "after the solution", open, []string{"do", "solution", "problem", barge()}, enter("R", "682.6 N"), enter("theta", "88.2")),
		written(t, "never", open, enter("gamma", "93°"), enter("gamma", "93 +")),
		written(t, "began again", open, enter("R", "682.6 N"), enter("theta", "88.2"), []string{"do", "again", "problem", barge()}, enter("R", "1 N")),
	}, nil)
	require.Empty(t, faults)
	require.Len(t, r.Problems, 1)
	p := r.Problems[0]
	assert.Equal(t, [3]int{6, 3, 1}, [3]int{p.Began, p.Done, p.Shown})
	by := map[string]Quantity{}
	for _, q := range p.Quantities {
		by[q.Name] = q
	}
	g := by["gamma"]
	assert.Equal(t, [5]int{4, 1, 1, 1, 1}, [5]int{g.Tried, g.First, g.Later, g.Helped, g.Never})
	assert.Equal(t, 80.0, g.Seconds, "of 40, 80, 80 and 80, each with what could not be read and the hint")
	assert.Equal(t, [5]int{3, 2, 0, 1, 0}, [5]int{by["R"].Tried, by["R"].First, by["R"].Later, by["R"].Helped, by["R"].Never})
	require.NotEmpty(t, r.Slips)
	s := r.Slips[0]
	assert.Equal(t, "included-for-interior", s.ID)
	assert.Equal(t, [2]int{2, 2}, [2]int{s.Students, s.Times})
	assert.Equal(t, Example{"γ", "93°"}, s.Example)
	assert.Equal(t, 1, r.Entries.Unreadable)
	for _, s := range r.Students {
		if s.Name == "began again" {
			assert.Equal(t, [3]int{1, 1, 3}, [3]int{s.Done, s.Began, s.Entries}, "what was done is done")
		}
	}
}

// A question between two slips counts as what the learner says.
func TestAnAnsweredQuestion(t *testing.T) {
	answer := func(which string) []string {
		return []string{"do", "answer", "problem", barge(), "quantity", "R", "entry", "698 N", "which", which}
	}
	times := func(lines ...[]string) (n int) {
		r, faults := Of([]*Log{written(t, "one", lines...)}, nil)
		require.Empty(t, faults)
		for _, s := range r.Slips {
			n += s.Times
		}
		return n
	}
	assert.Equal(t, 1, times(open, enter("R", "698 N"), answer("1")))
	assert.Equal(t, 0, times(open, enter("R", "698 N"), answer("3")))
	assert.Equal(t, 1, times(open, enter("R", "698 N")), "left open: the likelier one")
}

// Logs that can't be worked again are all named at once; the report is on the
// others, each worked once.
func TestFaultsAreToldTogether(t *testing.T) {
	var logs []*Log
	for _, name := range []string{"a", "b", "c", "d"} {
		logs = append(logs, written(t, name, open, enter("gamma", "87°")))
	}
	var lock sync.Mutex
	worked := map[string]int{}
	r, faults := of(logs, nil, func(l *Log) (*learner, error) {
		lock.Lock()
		worked[l.Name]++
		lock.Unlock()
		if l.Name == "a" || l.Name == "c" {
			return nil, &LogError{l.Path, 0, "broken"}
		}
		return retrace(l)
	})
	require.Len(t, faults, 2)
	assert.EqualError(t, faults[0], "a.txt: broken")
	assert.EqualError(t, faults[1], "c.txt: broken")
	assert.Len(t, r.Students, 2)
	assert.Equal(t, []Alike{{"b", "d", 1}}, r.Alike)
	assert.Equal(t, map[string]int{"a": 1, "b": 1, "c": 1, "d": 1}, worked)
}

// What is kept of a learner is what was done, not what checking it needed.
func TestMemoryOfALearner(t *testing.T) {
	var lines [][]string
	for _, kind := range kinds.All {
		for _, p := range kind.BankProblems()[:4] {
			l, err := tutor.Open(p)
			require.NoError(t, err)
			lines = append(lines, []string{"do", "open", "hash", p.Code()})
			for _, q := range l.Quantities {
				if !q.Given && !q.Equation {
					lines = append(lines, []string{"do", "enter", "problem", p.Code(), "quantity", q.Name, "entry", itoa(int64(q.True*1.13) + 7)})
				}
			}
		}
	}
	log := written(t, "one", lines...)
	before := heap()
	p, err := retrace(log)
	require.NoError(t, err)
	assert.Less(t, heap()-before, 10.0, "MB; tables and lists of 24 problems are some 200")
	assert.Len(t, p.desks, 24)
}

// heap is what is in use, in MB.
func heap() float64 {
	runtime.GC()
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return float64(m.HeapAlloc) / 1e6
}

// A draw and what was drawn are one problem, not two, in the count of what
// nobody does in a term.
func TestADrawIsOneProblem(t *testing.T) {
	var b strings.Builder
	for i := range site.MaxOpened - 1 { // lines of no problem count as one
		at := itoa(1_793_000_000_000 + int64(i))
		b.WriteString("do=draw&kind=two-forces&at=" + at + "\ndo=outcome&v=1&problem=x" + at + "&drew=do%3Ddraw\n")
	}
	_, err := ReadLog("x", "x.txt", []byte(b.String()))
	assert.NoError(t, err)
	b.WriteString("do=draw&kind=two-forces&at=1\n")
	_, err = ReadLog("x", "x.txt", []byte(b.String()))
	assert.ErrorContains(t, err, "more than 400 problems")
}

func FuzzReadLog(f *testing.F) {
	for _, s := range []string{"do=open&hash=&at=1", "do=enter&problem=" + barge() + "&quantity=R&entry=1&at=2\ndo=outcome", "aside=x\n\n",
		"do=draw&kind=two-forces&at=3\ndo=sketch&act=put&at=4", "do=personal&set=s1+T+1+++d1;two-forces++0000&student=7&at=5", "do=own&kind=components&at=6"} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, content []byte) {
		l, err := ReadLog("x", "x.txt", content)
		if err != nil {
			assert.True(t, strings.HasPrefix(err.Error(), "x.txt:"), err)
			return
		}
		r, faults := Of([]*Log{l}, nil)
		require.Empty(t, faults)
		require.Len(t, r.Students, 1)
	})
}

// What the page logs of the longest set can be read: the problems that it drew
// are named in one line.
func TestTheLinesOfALongSetAreRead(t *testing.T) {
	leaf := func(key, value string) lesson.Source { return lesson.Source{Key: key, Text: value} }
	set, err := sets.Read(lesson.Source{Kids: []lesson.Source{
		leaf("title", "Derrick, the whole unit"), leaf("note", strings.Repeat("! ", 299)), leaf("numbers", "own"),
		{Key: "problems", Kids: []lesson.Source{{Kids: []lesson.Source{leaf("generate", "particle-equilibrium"), leaf("count", "40")}}}}}})
	require.NoError(t, err)
	code := set.Code("s1042")
	ask := func(do, field string) string {
		return string(site.Handle([]byte(site.Form{{Name: "do", Value: do}, {Name: field, Value: code}}.Line())))
	}
	reply := ask("start", "hash")
	for strings.Contains(reply, `id="drawing"`) {
		reply = ask("deal", "set")
	}
	line := regexp.MustCompile(`<data id="log" value="([^"]*)"`).FindStringSubmatch(reply)
	require.NotNil(t, line)
	require.Greater(t, len(line[1]), 8<<10)
	at := site.Field{Name: "at", Value: "1793000000000"}
	opened := site.Form{{Name: "do", Value: "open"}, {Name: "problem", Value: code}, at}.Line()
	_, err = ReadLog("x", "x.txt", []byte(opened+"\n"+html.UnescapeString(line[1])+"\n"))
	assert.NoError(t, err)
}

// Work at a set that another version draws is not counted in silence as work of no set.
func TestASetOfAnotherVersionIsToldOf(t *testing.T) {
	set, err := sets.Read(lesson.Branch("", lesson.Leaf("title", "Buoys"), lesson.Branch("problems", lesson.Branch("", lesson.Leaf("generate", "two-forces")))))
	require.NoError(t, err)
	known := set.Code("")
	body := "s1older" + known[strings.Index(known, "+"):strings.LastIndex(known, "+")]
	of := func(set string) []string { return append([]string{"set", set}, open...) }
	r, faults := Of([]*Log{written(t, "known", of(known), enter("R", "682.6 N")), written(t, "none", open, enter("R", "682.6 N")),
		written(t, "older", of(body+"+"+lesson.Checksum(body)), enter("R", "682.6 N"), enter("theta", "88.2"))}, nil)
	require.Empty(t, faults)
	assert.Equal(t, 1, r.Strange)
}

// A problem that students have under names of their own is told under those of one of
// them, and a slip at the same step of each counts as one.
func TestOneProblemHasOneSetOfNames(t *testing.T) {
	typed := func(a, b, turn string) string {
		p, err := kinds.All.Read(kinds.TwoForcesSource("", kinds.ForceSource(a, "340 N", turn), kinds.ForceSource(b, "610 N", "118 deg")))
		require.NoError(t, err)
		return p.Code()
	}
	at := func(code, q, e string) []string {
		return []string{"do", "enter", "problem", code, "quantity", q, "entry", e}
	}
	first, second := typed("P", "Q", "25 deg"), typed("A", "B", "30 deg")
	r, faults := Of([]*Log{
		written(t, "Ada", []string{"do", "open", "hash", first}, at(first, "alpha", "29.83"), at(first, "F1x", "143.7 N")),
		written(t, "Kit", []string{"do", "open", "hash", second}, at(second, "beta", "61"), at(second, "F1x", "170.0 N")),
	}, nil)
	require.Empty(t, faults)
	require.Len(t, r.Problems, 1)
	for _, q := range r.Problems[0].Quantities {
		assert.NotRegexp(t, `\b[AB]`, q.Symbol+" "+q.What)
	}
	require.Len(t, r.Slips, 1, "%+v", r.Slips)
	assert.Equal(t, 2, r.Slips[0].Times)
	assert.Equal(t, "Px", r.Slips[0].At)
	assert.Equal(t, "Px", r.Slips[0].Example.Quantity)
}
