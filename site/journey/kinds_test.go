package journey

import (
	"fmt"
	"testing"

	"closingside/tutor"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestEveryKindOnTheScreen works a problem of every kind on a phone and on a
// desk's screen, from the statement to the worked solution: axe-core finds
// nothing to complain of, and nothing scrolls sideways.
func TestEveryKindOnTheScreen(t *testing.T) {
	source := axe(t)
	h := newSite(t)
	for _, size := range []struct {
		width, height int64
		scheme        string
	}{{390, 844, "light"}, {1280, 800, "dark"}} {
		p := newVisitor(t, h, browser, chromedp.WithNewBrowserContext())
		p.screen(size.width, size.height, size.scheme)
		p.home()
		p.ready()
		p.eval(source+";0", nil)
		for _, k := range kinds.All {
			t.Run(fmt.Sprintf("%s %d %s", k.Name, size.width, size.scheme), func(t *testing.T) {
				p.t = t
				p.walkKind(k, func(state string) {
					p.view(fmt.Sprintf("%s-%d-%s", k.Name, size.width, state))
					var covered bool // by a scroll bar of its own
					p.eval(`[...document.querySelectorAll("math")].some((m) => m.scrollHeight > m.clientHeight && getComputedStyle(m).overflowY !== "hidden" && getComputedStyle(m).overflowY !== "visible")`, &covered)
					assert.False(t, covered, "%s: a formula scrolls up and down", state)
					p.sound(state)
				})
			})
		}
	}
}

// walkKind shows the states of one kind of problem in turn.
func (p *visitor) walkKind(k *lesson.Kind, look func(state string)) {
	p.t.Helper()
	bank := k.BankProblems()
	problem := bank[min(3, len(bank)-1)]
	l, err := tutor.Open(problem)
	require.NoError(p.t, err)
	p.eval(`document.querySelector("main nav button")?.click()`, nil)
	p.await("the list shows", `document.querySelector(".kind")`)
	p.eval(fmt.Sprintf(`document.querySelectorAll(".kind, .kind details").forEach((d) => d.open = d.id === "kind-%[1]s" || Boolean(d.closest("#kind-%[1]s")))`, k.Name), nil)
	p.eval(fmt.Sprintf(`document.querySelector("#kind-%s").scrollIntoView()`, k.Name), nil)
	look("kind")
	p.eval(fmt.Sprintf(`document.querySelector("#kind-%s form:has([value=form]) button").click()`, k.Name), nil)
	p.await("the form shows", `document.activeElement.id === "own"`)
	p.eval(fmt.Sprintf(`document.querySelectorAll("#kind-%s details").forEach((d) => d.open = true)`, k.Name), nil)
	look("own")
	p.eval(fmt.Sprintf(`document.querySelector(%q).click()`, fmt.Sprintf(`.choices form:has([value=%q]) button`, problem.Code())), nil)
	p.await("the desk shows", `document.querySelector("#next")`)
	if p.count("#sketch-skip") > 0 {
		p.skipSketch()
	}
	look("start")
	w := tutor.NewWork(l, problem.Settings)
	for n := w.Next(); n != ""; n = w.Next() {
		q := l.Quantity(n)
		entry := l.Show(q, q.True, lesson.Digits{Magnitude: 4, Angle: 2})
		if q.Equation {
			entry = l.Text(q.Routes[0].Tree) + " = 0"
		}
		w.Enter(n, entry)
		p.enter(n, entry)
		p.await(n+" is found", fmt.Sprintf(`document.querySelector("#card-%s[data-state=found]")`, n))
		if n == l.Ways[0].Steps[0].Quantity {
			look("begun")
		}
	}
	p.eval(`document.querySelector("#figure").scrollIntoView()`, nil)
	look("done")
	p.eval(`document.querySelector("#solution button").click()`, nil)
	p.await("the worked solution shows", `document.querySelector("#solution math")`)
	p.eval(`document.querySelector("#solution").scrollIntoView()`, nil)
	look("solution")
}
