package html

import (
	"encoding/xml"
	"io"
	"strings"
	"testing"

	"closingside/statics/expr"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestMath(t *testing.T) {
	m := expr.Markup{Tag: "msup", Kids: []expr.Markup{{Tag: "mi", Text: "F", Attr: []expr.Attr{{Name: "mathvariant", Value: "normal"}}}, {Tag: "mn", Text: "2"}}}
	assert.Equal(t, `<math aria-label="F squared"><msup><mi mathvariant="normal">F</mi><mn>2</mn></msup></math>`, Math(m, "F squared").String())
	assert.Equal(t, `<math><mo>&lt;</mo></math>`, Math(expr.Markup{Tag: "mo", Text: "<"}, "").String())
	assert.Equal(t, `<math display="block"></math>`, Math(expr.Markup{Tag: "math", Attr: []expr.Attr{{Name: "display", Value: "block"}}}, "").String())
}

// The cosine law as the product writes it holds every character it should,
// in well-formed markup.
func TestMathOfTheCosineLaw(t *testing.T) {
	law := expr.Sqrt(expr.Sub(expr.Add(expr.Sq(expr.S("P")), expr.Sq(expr.S("Q"))), expr.Mul(expr.N(2), expr.S("P"), expr.S("Q"), expr.Cos(expr.S("gamma")))))
	naming := func(name string) expr.Symbol { return expr.Symbol{Letter: name} }
	page := Math(expr.Math(law, naming), expr.Speech(law, naming)).String()
	d := xml.NewDecoder(strings.NewReader(page))
	var text strings.Builder
	for {
		token, err := d.Token()
		if err == io.EOF {
			break
		}
		require.NoError(t, err, page)
		if c, ok := token.(xml.CharData); ok {
			text.Write(c)
		}
	}
	for _, part := range []string{"P", "Q", "2", "−", "cos", "gamma"} {
		assert.Contains(t, text.String(), part)
	}
	assert.Contains(t, page, "<msqrt>")
}
