package site

import (
	"testing"

	"closingside/statics/expr"

	"github.com/stretchr/testify/assert"
)

// TestALongSumMayGoOnBelow: its line is cut into pieces, and read as one formula.
func TestALongSumMayGoOnBelow(t *testing.T) {
	sum := expr.Add(expr.Add(expr.Add(expr.S("a"), expr.S("b")), expr.S("c")), expr.N(-4))
	got := Chain(nil, "12 N", expr.S("R"), sum).String()
	assert.Contains(t, got, `<div class="long" role="math" aria-label="R equals `)
	assert.Contains(t, got, `<math aria-hidden="true"><mi>R</mi><mo form="infix">=</mo><mi>a</mi></math><math aria-hidden="true"><mrow><mo form="infix">+</mo><mi>b</mi></mrow></math>`)
	assert.Contains(t, got, `<math display="block" aria-label="equals 12 N">`, "a short line is one")
	assert.Contains(t, Chain(nil, "", sum, expr.N(0)).String(), `<math aria-hidden="true"><mo form="infix">=</mo><mn>0</mn></math>`, "what a long side equals may go on below, too")
	assert.NotContains(t, Chain(nil, "", expr.S("R"), expr.Add(expr.S("a"), expr.S("b"))).String(), "long")
}
