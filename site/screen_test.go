package site

import (
	"strings"
	"testing"

	"closingside/site/html"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/text"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The home screen names every kind in teaching order, with what it practises
// and how far the learner has come.
func TestHomeLeadsThroughTheUnit(t *testing.T) {
	home := ask("do", "start", "at", "1")
	at := 0
	for _, k := range kinds.All {
		next := strings.Index(home, `id="kind-`+k.Name+`"`)
		assert.Greater(t, next, at, k.Name)
		at = next
		assert.Contains(t, home, text.Say(k.Name+".practises"))
	}
	assert.NotContains(t, home, "done<")
	ask("do", "enter", "problem", barge(), "quantity", "R", "entry", "682.6 N", "at", "2")
	assert.Contains(t, ask("do", "home", "at", "3"), `class="progress">`+text.Say("page.state.begun"))
	ask("do", "enter", "problem", barge(), "quantity", "theta", "entry", "88.2", "at", "4")
	assert.Contains(t, ask("do", "home", "at", "5"), "1 of 6 done")
}

// A new problem and one's own are asked for above the list of problems, where a
// phone shows them.
func TestOnesOwnProblemStandsAboveTheList(t *testing.T) {
	home := ask("do", "start", "at", "1")
	for _, k := range kinds.All {
		fold := home[strings.Index(home, `id="kind-`+k.Name+`"`):]
		own := strings.Index(fold, text.Say("page.home.own"))
		require.Positive(t, own, k.Name)
		assert.Less(t, own, strings.Index(fold, `class="choices"`), k.Name)
	}
}

// A problem of one's own of every kind: its bank's first problem typed into the
// form opens the same problem, and every field has its own word.
func TestOwnProblemsOfEveryKind(t *testing.T) {
	for _, k := range kinds.All {
		t.Run(k.Name, func(t *testing.T) {
			ask("do", "start", "at", "1")
			home := ask("do", "form", "kind", k.Name, "at", "1")
			for _, p := range k.BankProblems() {
				form := []string{"do", "own", "kind", k.Name, "story", p.Story, "at", "2"}
				for _, g := range k.Groups {
					items := p.Group(g.Key)
					for i := range g.Max { // a browser sends every field, the empty ones too
						for _, spec := range g.Fields {
							name, value := fieldName(g.Key, i, spec.Key), ""
							if i < len(items) {
								value = items[i].Field(spec.Key).Written
							}
							assert.Contains(t, home, `name="`+name+`"`)
							if spec.Is == lesson.ChoiceField && value == "" {
								assert.Contains(t, home, `name="`+name+`"><option value=""`, "can be left empty")
							}
							form = append(form, name, value)
						}
					}
				}
				opened := ask(form...)
				require.Contains(t, opened, `class="statement"`, p.Story)
				assert.Equal(t, p.Code(), here.current)
			}
			for _, g := range k.Groups {
				for _, f := range g.Fields {
					assert.NotEqual(t, f.Key, word(k, "field", f.Key), "the page's word for it")
				}
				if g.Min > 0 {
					assert.NotEqual(t, g.Key+" 1", word(k, "item", g.Key, "n", "1"))
				}
			}
		})
	}
}

// Whoever hears the page finds the card of a quantity by its symbol: browsers
// leave the letters of a formula out of the name of what unfolds.
func TestACardIsCalledByItsSymbol(t *testing.T) {
	ask("do", "start", "at", "1")
	page := ask("do", "open", "problem", barge(), "at", "2")
	for id, symbol := range map[string]string{"gamma": "gamma", "F1x": "P x", "R": "R"} {
		_, card, found := strings.Cut(page, `id="card-`+id+`"`)
		require.True(t, found)
		head, _, _ := strings.Cut(card, "</summary>")
		assert.Contains(t, head, `aria-label="`+symbol+`"`)
	}
}

// One goes on where one was last, and not with what was opened for the first
// time last.
func TestGoingOnIsWhereOneWasLast(t *testing.T) {
	other := kinds.All.ByName("components").BankProblems()[0]
	ask("do", "start", "at", "1")
	for _, code := range []string{barge(), other.Code(), barge()} {
		ask("do", "open", "problem", code, "at", "2")
	}
	home := ask("do", "home", "at", "3")
	_, going, found := strings.Cut(home, `id="going"`)
	require.True(t, found)
	going, _, _ = strings.Cut(going, "</section>")
	assert.Contains(t, going, "Two tugs hold a barge")
	assert.NotContains(t, going, other.Story)
	assert.Contains(t, home, `id="kind-two-forces" open`)
}

// A key shows its symbol as one part: a flex container would take the letter and
// what stands below the line for two, side by side.
func TestAKeysSymbolIsOnePart(t *testing.T) {
	ask("do", "start", "at", "1")
	page := ask("do", "open", "problem", barge(), "at", "2")
	_, keys, found := strings.Cut(page, `id="keys"`)
	require.True(t, found)
	assert.Contains(t, keys, "<span><i>θ</i><sub><i>P</i></sub></span></button>")
}

// Every drawn problem that was begun can be gone on with: no list has it. One of
// the harbour, or of a set, is marked in its own.
func TestEveryDrawnProblemCanBeGoneOnWith(t *testing.T) {
	going := func() string {
		_, going, found := strings.Cut(ask("do", "home", "at", "9"), `id="going"`)
		require.True(t, found)
		going, _, _ = strings.Cut(going, "</section>")
		return going
	}
	ask("do", "start", "at", "1")
	var drawn []string
	for _, seed := range []string{"1", "2", "3", "4", "5", "6"} {
		ask("do", "draw", "kind", "two-forces", "seed", seed, "at", seed)
		drawn = append(drawn, here.current)
		if seed != "3" { // looked at only
			ask("do", "enter", "problem", here.current, "quantity", "R", "entry", "1 N", "at", seed)
		}
	}
	listed := func(code string) bool { return strings.Contains(going(), html.Escape(code)) }
	for i, want := range []bool{false, true, false, true, true, true} { // the latest four
		assert.Equal(t, want, listed(drawn[i]), "problem %d", i+1)
	}
	for _, code := range drawn[3:] {
		assert.Contains(t, going(), text.Say("page.state.begun")+" · "+html.Escape(here.desks[code].lesson.Given()[0]), "what tells problems of one story apart")
	}
	ask("do", "enter", "problem", barge(), "quantity", "R", "entry", "1 N", "at", "7")
	assert.True(t, listed(barge()), "the latest")
	ask("do", "open", "problem", drawn[1], "at", "8")
	assert.True(t, listed(drawn[1]))
	assert.False(t, listed(barge()), "it is marked in its list")
}
