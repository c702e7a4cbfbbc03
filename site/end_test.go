package site

import (
	"math"
	"regexp"
	"strings"
	"testing"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/text"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// work opens the problem of the barge, calculating at once, and makes entries
// in order; what comes back is the last reply.
func work(t *testing.T, entries ...[2]string) (reply string) {
	t.Helper()
	ask("do", "start", "at", "1")
	ask("do", "open", "problem", barge(), "at", "2")
	ask("do", "sketch", "act", "skip", "problem", barge(), "at", "2")
	for _, e := range entries {
		reply = ask("do", "enter", "problem", barge(), "quantity", e[0], "entry", e[1], "at", "3")
	}
	return reply
}

// part is the element of a reply that has an id, by its text alone.
func part(t *testing.T, reply, id string) string {
	t.Helper()
	_, after, found := strings.Cut(reply, ` id="`+id+`"`)
	require.True(t, found, "no element %s", id)
	_, after, _ = strings.Cut(after, ">")
	if i := strings.Index(after, "<div id="); i >= 0 {
		after = after[:i]
	}
	return regexp.MustCompile(`<[^>]*>`).ReplaceAllString(after, " ")
}

func byTriangle(answers ...[2]string) [][2]string {
	return append([][2]string{{"phi", "93"}, {"gamma", "87"}}, answers...)
}

func TestTheEndSumsUp(t *testing.T) {
	right := [][2]string{{"R", "sqrt(340^2+610^2-2*340*610*cos(87))"}, {"alpha", "29.83"}, {"theta", "88.2"}}
	components := [][2]string{{"F1x", "308.1 N"}, {"F1y", "143.7 N"}, {"F2x", "-286.4 N"}, {"F2y", "538.6 N"}, {"Rx", "21.77 N"}, {"Ry", "682.3 N"}, {"R", "683 N"}, {"theta", "88.2"}}
	rows := map[string]struct {
		entries     [][2]string
		says        []string
		suggestions string // the key of the one suggestion
	}{
		"after a mistake":     {append([][2]string{{"gamma", "93"}}, byTriangle(right...)...), []string{text.Say("page.end.met.of", "symbol", "γ", "slips", text.Say("slip.included-for-interior.title")), text.Say("page.end.same")}, "page.another"},
		"by the triangle":     {byTriangle(right...), []string{text.Say("method.triangle.by"), text.Say("page.end.met.none"), "29.83"}, "page.next.go"},
		"by another route":    {byTriangle([2]string{"R", "sqrt(340^2+610^2+2*340*610*cos(93))"}, [2]string{"alpha", "29.83"}, [2]string{"theta", "88.2"}), []string{text.Say("page.end.your-way"), text.Say("page.end.their-way")}, "page.next.go"},
		"by components alone": {components, []string{text.Say("method.components.by")}, "page.next.go"},
		"both ways":           {append(byTriangle(right...), components[:6]...), []string{text.Say("page.end.both")}, "page.end.open"},
	}
	for name, row := range rows {
		t.Run(name, func(t *testing.T) {
			end := part(t, work(t, row.entries...), "end")
			for _, s := range row.says {
				assert.Contains(t, end, s)
			}
			var offered []string
			for _, key := range []string{"page.another", "page.end.open"} {
				if strings.Contains(end, text.Say(key)) {
					offered = append(offered, key)
				}
			}
			if before, _, _ := strings.Cut(text.Say("page.next.go", "symbol", "\n"), "\n"); strings.Contains(end, before+" ") {
				offered = append(offered, "page.next.go")
			}
			assert.Equal(t, []string{row.suggestions}, offered, "one suggestion: %s", end)
		})
	}
}

// What was reached is said once; the bar above it tells what Undo takes back.
func TestTheEndIsSaidOnce(t *testing.T) {
	reply := work(t, byTriangle([2]string{"R", "682.6 N"}, [2]string{"alpha", "29.83"}, [2]string{"theta", "88.2°"})...)
	bar, _, _ := strings.Cut(part(t, reply, "next"), text.Say("page.undo"))
	assert.Contains(t, bar, text.Say("page.latest", "entry", "88.2°", "symbol", "θ"))
	assert.NotContains(t, bar, text.Say("page.done"))
}

// A number does not tell the way it came by: the end says nothing of it.
func TestTheEndClaimsNoWayForANumber(t *testing.T) {
	end := part(t, work(t, byTriangle([2]string{"R", "682.6 N"}, [2]string{"alpha", "29.83"}, [2]string{"beta", "63.17"}, [2]string{"theta", "88.2"})...), "end")
	assert.Contains(t, end, text.Say("page.end.worked"))
	for _, key := range []string{"page.end.same", "page.end.your-way"} {
		assert.NotContains(t, end, text.Say(key))
	}
}

// Who enters the answers alone may have gone any way: none is named, and there
// is no other one to check by.
func TestTheEndClaimsNoWayForAnswersAlone(t *testing.T) {
	end := part(t, work(t, [2]string{"R", "682.6 N"}, [2]string{"theta", "88.2"}), "end")
	assert.Contains(t, end, text.Say("page.end.found"))
	for _, way := range []string{"method.triangle.by", "method.components.by"} {
		assert.NotContains(t, end, text.Say(way))
	}
	assert.Contains(t, end, text.Say("page.end.open"))
}

func TestHelpIsSaidAtTheEnd(t *testing.T) {
	work(t, byTriangle([2]string{"R", "682.6 N"}, [2]string{"alpha", "29.83"})...)
	for range 2 {
		ask("do", "hint", "problem", barge(), "quantity", "theta", "at", "4")
	}
	end := part(t, ask("do", "enter", "problem", barge(), "quantity", "theta", "entry", "88.2", "at", "5"), "end")
	assert.Contains(t, end, text.Say("page.end.hints", "list", text.Say("page.end.hints.of", "n", "2", "symbol", "θ")))
	assert.Contains(t, end, text.Say("page.end.alone"))
}

func TestUndoTakesBackTheLatest(t *testing.T) {
	reply := work(t, [2]string{"gamma", "93"}, [2]string{"gamma", "87"})
	assert.Contains(t, reply, text.Say("page.undo.what", "entry", "87", "symbol", "γ"))
	undo := func() string { return ask("do", "undo", "problem", barge(), "at", "4") }
	reply = undo()
	assert.Contains(t, reply, `data-verdict="slip"`, "the entry before it stands again")
	assert.Contains(t, reply, text.Say("page.undone"))
	reply = undo()
	assert.NotContains(t, reply, "data-verdict")
	assert.NotContains(t, reply, `id="undo"`, "nothing is left to take back")
	assert.Contains(t, reply, `data-focus="entry-gamma"`)
	assert.Contains(t, undo(), text.Say("page.nothing"))
}

func TestStartAgainAsksFirst(t *testing.T) {
	work(t, [2]string{"gamma", "93"})
	desk := ask("do", "open", "problem", barge(), "at", "4")
	_, tools, _ := strings.Cut(desk, `id="tools"`)
	_, fold, found := strings.Cut(tools, "<details>")
	require.True(t, found)
	assert.Contains(t, fold, text.Say("page.again.sure"))
	assert.Contains(t, fold, `value="again"`, "the button that erases is behind the question")
	assert.NotContains(t, strings.Replace(desk, fold, "", 1), `value="again"`)
	assert.NotContains(t, ask("do", "again", "problem", barge(), "at", "5"), "data-verdict")
}

func TestTheHistoryOfAQuantity(t *testing.T) {
	reply := work(t, [2]string{"gamma", "93"}, [2]string{"gamma", "267"}, [2]string{"gamma", "87"})
	_, history, _ := strings.Cut(reply, `class="history"`)
	history, _, _ = strings.Cut(history, "</ol>")
	var order []int
	for _, e := range []string{"<b>87</b>", "<b>267</b>", "<b>93</b>"} {
		order = append(order, strings.Index(history, e))
	}
	assert.IsIncreasing(t, order, "newest first: %s", history)
	assert.NotEqual(t, -1, order[0])
}

func TestExamplesOfOnesOwnDiffer(t *testing.T) {
	ask("do", "start", "at", "1")
	home := ask("do", "form", "kind", "two-forces", "at", "1")
	_, form, _ := strings.Cut(home, `id="two-forces.forces.0.name"`)
	form, _, _ = strings.Cut(form, "</form>")
	for _, e := range []string{"340 N", "610 N", "25 deg", "118 deg"} {
		assert.Equal(t, 1, strings.Count(form, `placeholder="`+e+`"`), e)
	}
}

// Every kind ends with one thing to do next, whichever way it was worked.
func TestEveryKindEnds(t *testing.T) {
	for _, k := range kinds.All {
		for n, p := range k.BankProblems() {
			t.Run(k.Name+" "+itoa(n), func(t *testing.T) {
				l, err := openCode(p.Code())
				require.NoError(t, err)
				ask("do", "start", "at", "1")
				ask("do", "open", "problem", p.Code(), "at", "2")
				reply := ""
				for i := range l.Quantities {
					if q := &l.Quantities[i]; !q.Given && (q.Answer || n%2 == 0) && !math.IsNaN(q.True) {
						value := l.Show(q, q.True, lesson.Digits{Magnitude: 7, Angle: 5})
						reply = ask("do", "enter", "problem", p.Code(), "quantity", q.Name, "entry", value, "at", "3")
					}
				}
				_, end, found := strings.Cut(reply, ` id="end"`)
				require.True(t, found)
				end, _, _ = strings.Cut(end, "</section>")
				require.Contains(t, end, text.Say("page.done"))
				assert.Equal(t, 1, strings.Count(end, "primary"), "one suggestion")
				assert.Contains(t, end, "</table>")
			})
		}
	}
}

// What was not entered is said quietly: only what the learner found is heavy.
func TestWhatWasNotEnteredIsQuiet(t *testing.T) {
	end := work(t, [2]string{"R", "682.6 N"}, [2]string{"theta", "88.2"})
	assert.Contains(t, end, `<td class="soft">`+text.Say("page.end.none")+`</td>`)
	assert.NotContains(t, end, `<td>`+text.Say("page.end.none"))
}

// What was entered and is not right yet is not called “not entered”.
func TestWhatStandsWrongIsNotCalledMissing(t *testing.T) {
	end := work(t, [2]string{"gamma", "93"}, [2]string{"R", "682.6 N"}, [2]string{"theta", "88.2"})
	row := rowOf(t, end, "γ")
	assert.Contains(t, row, text.Say("page.end.wrong"))
	assert.NotContains(t, row, text.Say("page.end.none"))
	assert.Contains(t, rowOf(t, end, "φ"), text.Say("page.end.none"))
}

// A value that the worked solution does not need is among what was found, with
// what it comes to where solutions are shown.
func TestEverythingFoundIsListed(t *testing.T) {
	end := work(t, [2]string{"R", "682.6 N"}, [2]string{"beta", "63.2"}, [2]string{"theta", "88.2"})
	assert.Contains(t, rowOf(t, end, "β"), "63.2")
	assert.Contains(t, rowOf(t, end, "β"), "63.17°")
	assert.Equal(t, 1, strings.Count(end, `<th scope="row"><i>R</i></th>`))
}

// rowOf is the row of a quantity in the table of what was found.
func rowOf(t *testing.T, end, symbol string) string {
	t.Helper()
	_, row, found := strings.Cut(end, `<th scope="row"><i>`+symbol+`</i></th>`)
	require.True(t, found, "%s in %s", symbol, end)
	row, _, _ = strings.Cut(row, "</tr>")
	return row
}
