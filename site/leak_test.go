package site

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"closingside/statics/expr"
	"closingside/tutor"
	"closingside/tutor/kinds"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// figures are v as it may be met in a text: to three digits and more.
func figures(v float64) []string {
	var all []string
	for _, digits := range []int{3, 4, 5, 6} {
		s := expr.FormatNumber(math.Abs(v), digits)
		if len(strings.ReplaceAll(s, ".", "")) >= 3 && !slices.Contains(all, s) {
			all = append(all, s)
		}
	}
	return all
}

// The live reading shows how an entry is read and nothing else: whatever names
// stand in it, no value that the learner has not found comes back, nor that of
// an expression.
func TestLiveReadingLeaksNoValue(t *testing.T) {
	seen := 0
	for _, k := range kinds.All {
		p := k.BankProblems()[0]
		l, err := tutor.Open(p)
		require.NoError(t, err)
		ask("do", "start", "at", "1")
		ask("do", "open", "problem", p.Code(), "at", "2")
		for i := range l.Quantities {
			q := &l.Quantities[i]
			if q.Given {
				continue
			}
			for j := range l.Quantities {
				o := &l.Quantities[j]
				if o.Given || math.IsNaN(o.True) {
					continue
				}
				for _, entry := range []string{"{}", "-{}", "{} + 0", "2*{}", "{}/3", "1/{}", "sqrt({}^2)", "sin({})", "asin({})", "asin({}/1)", "118° − {}", "{} − 25°", "{} = {}", "{} deg", "{} N", "{} from P", "|{}|", "{0}"} {
					entry = strings.ReplaceAll(strings.ReplaceAll(entry, "{0}", "0*{}"), "{}", l.SymbolText(o.Name))
					reply := ask("do", "read", "problem", p.Code(), "quantity", q.Name, "entry", entry, "at", "3")
					require.Contains(t, reply, `id="reading-`+q.Name+`"`)
					assert.NotContains(t, reply, "data-verdict")
					for _, f := range figures(o.True) {
						assert.NotContains(t, strings.ReplaceAll(reply, entry, ""), f, "%s: %s for %s", k.Name, entry, q.Name)
					}
					seen++
				}
			}
			for _, route := range q.Routes { // the right formula is shown, not its value
				formula := withNumbers(l, route.Tree)
				for _, f := range figures(q.True) {
					for _, fault := range []string{"asin(" + formula + ")", "√(0−(" + formula + "))", "(" + formula + ")/0"} {
						reply := ask("do", "read", "problem", p.Code(), "quantity", "alpha", "entry", fault, "at", "3")
						assert.NotContains(t, strings.ReplaceAll(reply, formula, ""), f, "%s of %s", route.ID, q.Name)
					}
				}
				reply := ask("do", "read", "problem", p.Code(), "quantity", q.Name, "entry", formula, "at", "3")
				assert.NotContains(t, reply, strconv.FormatFloat(math.Abs(q.True), 'f', 2, 64), "%s of %s", route.ID, q.Name)
			}
		}
	}
	t.Logf("%d readings", seen)
}

// withNumbers is a formula with the givens' numbers in it; what is not given
// stays a name.
func withNumbers(l *tutor.Lesson, tree expr.Node) string {
	return expr.Plain(expr.Substitute(tree, func(name string) (expr.Node, bool) {
		q := l.Quantity(name)
		if q == nil || !q.Given {
			return nil, false
		}
		if q.IsAngle() {
			return expr.Deg(q.True), true
		}
		return expr.N(q.True), true
	}), l.Symbol)
}
