package site

import (
	"html"
	"math"
	"math/rand/v2"
	"regexp"
	"runtime"
	"strconv"
	"strings"
	"testing"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/text"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var toLog = regexp.MustCompile(`<data id="log" value="([^"]*)">`)

// keeper is a page that keeps its log: every request, and what the reply gives it.
type keeper struct {
	log  []string
	time int
}

// fresh is a page opened for the first time.
func fresh() *keeper {
	ask("do", "start", "at", "0")
	return &keeper{time: 1_793_000_000_000}
}

// ask sends a request as the page does.
func (k *keeper) ask(pairs ...string) string {
	k.time += 1000
	request := line(append(pairs, "at", strconv.Itoa(k.time))...)
	reply := string(Handle([]byte(request)))
	k.log = append(k.log, request)
	for _, m := range toLog.FindAllStringSubmatch(reply, -1) {
		k.log = append(k.log, html.UnescapeString(m[1]))
	}
	return reply
}

// back is what is seen when the page is opened anew.
func (k *keeper) back() string {
	return string(Handle([]byte(line("do", "start", "at", "1") + "\n" + strings.Join(k.log, "\n"))))
}

// old is the log as it was kept before it held more than the requests.
func (k *keeper) old() *keeper {
	var requests []string
	for _, l := range k.log {
		if !strings.HasPrefix(l, "do=outcome") {
			requests = append(requests, l)
		}
	}
	return &keeper{log: requests, time: k.time}
}

// opened are the quantities that may be entered for a problem, after it was opened.
func (k *keeper) opened(p *lesson.Problem) (code string, asked []*lesson.Quantity) {
	code = p.Code()
	k.ask("do", "open", "problem", code)
	l := here.desks[code].lesson
	for i := range l.Quantities {
		if q := &l.Quantities[i]; !q.Given && !q.Equation {
			asked = append(asked, q)
		}
	}
	return code, asked
}

// work enters a value wrongly for some quantities of a problem and rightly for all.
func (k *keeper) work(p *lesson.Problem) {
	code, asked := k.opened(p)
	for i, q := range asked {
		if i%3 == 0 {
			k.ask("do", "enter", "problem", code, "quantity", q.Name, "entry", figures6(q.True*1.13+7))
		}
		k.ask("do", "enter", "problem", code, "quantity", q.Name, "entry", figures6(q.True))
	}
}

func figures6(v float64) string { return strconv.FormatFloat(v, 'g', 6, 64) }

// Whatever is done on a problem, its log tells what stands on its desk.
func TestTheLogTellsHowFarWorkIs(t *testing.T) {
	rows := map[string]*lesson.Problem{
		"one triangle": kinds.All.ByName("two-forces").BankProblems()[0],
		"two":          kinds.All.ByName("missing-force").BankProblems()[2],
		"equations":    kinds.All.ByName("particle-equilibrium").BankProblems()[0],
	}
	for name, problem := range rows {
		t.Run(name, func(t *testing.T) {
			k, r := fresh(), rand.New(rand.NewPCG(7, 11))
			code, asked := k.opened(problem)
			enter := func(q *lesson.Quantity, e string) {
				k.ask("do", "enter", "problem", code, "quantity", q.Name, "entry", e)
			}
			anew, ended := 0, 0
			for range 150 {
				q := asked[r.IntN(len(asked))]
				switch n := r.IntN(20); {
				case n == 0 && r.IntN(4) == 0:
					k.ask("do", "again", "problem", code)
				case n < 2:
					enter(q, "3 +")
				case n < 4:
					k.ask("do", "undo", "problem", code)
				case n < 5:
					k.ask("do", "hint", "problem", code, "quantity", q.Name)
				case n < 8:
					enter(q, figures6(q.True*1.1))
				case n < 10 && !math.IsNaN(q.Also):
					enter(q, figures6(q.Also))
				case n < 11:
					k.ask("do", "answer", "problem", code, "quantity", q.Name, "which", "3")
				default:
					enter(q, figures6(q.True))
				}
				work := here.desks[code].work
				anew += len(work.Changed())
				var s session
				s.start(Form{}, strings.Join(k.log, "\n")+"\ndo=home")
				d := s.desks[code]
				require.NotEmpty(t, d.past, "not brought back")
				require.True(t, d.told.whole())
				begun, done := s.howFar(d)
				require.Equal(t, [2]bool{len(work.Past) > 0, work.Done()}, [2]bool{begun, done})
				if done {
					ended++
				}
				for _, q := range asked {
					stands, told := "", ""
					if a := work.Standing(q.Name); a != nil {
						stands = a.Verdict.String()
					}
					if i := d.told.latest(q.Name); i >= 0 {
						told = d.told.entries[i].said
					}
					require.Equal(t, stands, told, q.Name)
				}
			}
			assert.NotZero(t, anew, "entries judged again")
			assert.NotZero(t, ended)
		})
	}
}

// The home screen of a long log is the one there was, and no entry is judged
// for it. One of a log that tells less is the same.
func TestHomeComesFromTheLog(t *testing.T) {
	k := fresh()
	for _, kind := range kinds.All {
		k.work(kind.BankProblems()[1])
		code, asked := k.opened(kind.BankProblems()[2])
		k.ask("do", "enter", "problem", code, "quantity", asked[0].Name, "entry", figures6(asked[0].True))
	}
	live, _, _ := strings.Cut(k.ask("do", "home"), `<p id="say"`)
	assert.True(t, k.back() == live, "to the letter")
	for _, d := range here.desks {
		assert.NotEmpty(t, d.past)
	}
	assert.True(t, k.old().back() == live)
}

// An entry whose outcome was not kept any more, for the page was closed, is
// judged again.
func TestAnEntryWithoutItsOutcome(t *testing.T) {
	for _, last := range []string{"theta", "R"} {
		k := fresh()
		k.ask("do", "open", "problem", barge())
		answers := map[string]string{"R": "682.6 N", "theta": "88.2°"}
		for name, entry := range answers {
			if name != last {
				k.ask("do", "enter", "problem", barge(), "quantity", name, "entry", entry)
			}
		}
		k.ask("do", "enter", "problem", barge(), "quantity", last, "entry", answers[last])
		k.log = k.log[:len(k.log)-1]
		k.ask("do", "home")
		k.back()
		_, done := here.howFar(here.desks[barge()])
		assert.True(t, done)
	}
}

// However many problems are worked, the engine holds what two need.
func TestMemoryOfManyProblems(t *testing.T) {
	k := fresh()
	var problems []*lesson.Problem
	for n := range 5 {
		for _, kind := range kinds.All {
			problems = append(problems, kind.BankProblems()[n])
		}
	}
	heap := func() float64 {
		runtime.GC()
		runtime.GC()
		var m runtime.MemStats
		runtime.ReadMemStats(&m)
		return float64(m.HeapAlloc) / (1 << 20)
	}
	worked := func(from, to int) (most float64) {
		for _, p := range problems[from:to] {
			k.work(p)
			most = max(most, heap())
		}
		return most
	}
	few := worked(0, 6) // one of each kind
	many := worked(6, 30)
	t.Logf("%.1f MB at most after problems of every kind, %.1f MB after %d", few, many, len(problems))
	assert.Less(t, many, 2*few)
}

// What was given up is made again: nothing that is said depends on it.
func TestWhatIsGivenUpChangesNothing(t *testing.T) {
	session := func(before func()) (replies []string) {
		k := fresh()
		do := func(pairs ...string) {
			before()
			replies = append(replies, k.ask(pairs...))
		}
		for _, kind := range kinds.All {
			code, asked := k.opened(kind.BankProblems()[0])
			for i, q := range asked {
				on := []string{"problem", code, "quantity", q.Name}
				do("do", "ahead")
				do(append([]string{"do", "enter", "entry", figures6(q.True*1.13 + 7)}, on...)...)
				do(append([]string{"do", "hint"}, on...)...)
				do(append([]string{"do", "read", "entry", "2·" + q.Name}, on...)...)
				do(append([]string{"do", "enter", "entry", figures6(q.True)}, on...)...)
				if i == len(asked)/2 {
					do("do", "undo", "problem", code)
				}
			}
			do("do", "solution", "problem", code)
			do("do", "again", "problem", code)
		}
		return replies
	}
	forget := func() {
		for _, d := range here.desks {
			d.work.Forget()
		}
	}
	kept, given := session(func() {}), session(forget)
	require.Len(t, given, len(kept))
	for i := range kept {
		if !strings.HasPrefix(kept[i], `<data id="ahead"`) {
			require.True(t, kept[i] == given[i], "reply %d: %s", i, given[i])
		}
	}
}

// A problem that was drawn comes back as the one it was, whatever is drawn
// today; where the log does not tell, it is drawn again.
func TestADrawnProblemComesBack(t *testing.T) {
	k := fresh()
	k.ask("do", "draw", "kind", "two-forces")
	code := here.current
	require.Len(t, k.log, 2, "the request, and what was drawn")
	k.back()
	assert.Equal(t, code, here.current)
	live, _, _ := strings.Cut(k.ask("do", "home"), `<p id="say"`)
	assert.NotContains(t, live, text.Say("page.state.begun"), "drawn, and nothing more")
	assert.True(t, k.back() == live)
	k.log = k.log[:2]
	k.old().back()
	assert.Equal(t, code, here.current)

	other := kinds.All.ByName("two-forces").BankProblems()[3].Code()
	for told, want := range map[string]string{
		other: other,
		kinds.All.ByName("components").BankProblems()[0].Code(): code, // of another kind
		"nonsense": code, "": code, "s1+T+1+++d1;two-forces++0000": code,
	} {
		as := ReadForm(k.log[1])
		for i := range as {
			if as[i].Name == "problem" {
				as[i].Value = told
			}
		}
		(&keeper{log: []string{k.log[0], as.Line()}}).back()
		assert.Equal(t, want, here.current, told)
	}
}
