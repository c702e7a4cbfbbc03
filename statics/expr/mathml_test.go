package expr_test

import (
	"encoding/xml"
	"io"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	. "closingside/statics/expr"
)

// render writes markup as XML, with the escaping of encoding/xml.
func render(t require.TestingT, m Markup) string {
	var b strings.Builder
	enc := xml.NewEncoder(&b)
	var walk func(Markup)
	walk = func(m Markup) {
		start := xml.StartElement{Name: xml.Name{Local: m.Tag}}
		for _, a := range m.Attr {
			start.Attr = append(start.Attr, xml.Attr{Name: xml.Name{Local: a.Name}, Value: a.Value})
		}
		require.NoError(t, enc.EncodeToken(start))
		require.NoError(t, enc.EncodeToken(xml.CharData(m.Text)))
		for _, k := range m.Kids {
			walk(k)
		}
		require.NoError(t, enc.EncodeToken(start.End()))
	}
	walk(m)
	require.NoError(t, enc.Flush())
	return b.String()
}

func TestMath(t *testing.T) {
	a, b := S("a"), S("b")
	for _, row := range []struct {
		name string
		n    Node
		want string
	}{
		{"cosine law", cosineLaw(), `<msqrt>` +
			`<msup><msub><mi>F</mi><mn>1</mn></msub><mn>2</mn></msup><mo>+</mo>` +
			`<msup><msub><mi>F</mi><mn>2</mn></msub><mn>2</mn></msup><mo>−</mo>` +
			`<mn>2</mn><mo>⋅</mo><msub><mi>F</mi><mn>1</mn></msub><mo>⋅</mo><msub><mi>F</mi><mn>2</mn></msub><mo>⋅</mo>` +
			`<mi>cos</mi><mo>apply</mo><mspace width="0.1667em"></mspace><mi>γ</mi></msqrt>`},
		{"sine law", Asin(Div(Mul(S("F2"), Sin(S("gamma"))), S("R"))), `<mrow>` +
			`<msup><mi>sin</mi><mrow><mo>−</mo><mn>1</mn></mrow></msup><mo>apply</mo>` +
			`<mrow><mo>(</mo><mfrac><mrow><msub><mi>F</mi><mn>2</mn></msub><mo>⋅</mo>` +
			`<mi>sin</mi><mo>apply</mo><mspace width="0.1667em"></mspace><mi>γ</mi></mrow><mi>R</mi></mfrac><mo>)</mo></mrow></mrow>`},
		{"function that is multiplied", Mul(Cos(a), b), `<mrow><mi>cos</mi><mo>apply</mo><mrow><mo>(</mo><mi>a</mi><mo>)</mo></mrow><mo>⋅</mo><mi>b</mi></mrow>`},
		{"angle", Sub(Deg(118), S("theta1")), `<mrow><mn>118</mn><mo>°</mo><mo>−</mo><msub><mi>θ</mi><mn>1</mn></msub></mrow>`},
		{"radians", Ang{1.5, UnitRad}, "<mrow><mn>1.5</mn><mtext>\u00a0rad</mtext></mrow>"},
		{"mixed subscript", S("F1x"), `<msub><mi>F</mi><mrow><mn>1</mn><mi>x</mi></mrow></msub>`},
		{"minus", Neg{a}, `<mrow><mo form="prefix">−</mo><mi>a</mi></mrow>`},
		{"square of a fraction", Sq(Div(a, b)), `<msup><mrow><mo>(</mo><mfrac><mi>a</mi><mi>b</mi></mfrac><mo>)</mo></mrow><mn>2</mn></msup>`},
		{"negative exponent", Pow(a, N(-1)), `<msup><mi>a</mi><mrow><mo form="prefix">−</mo><mn>1</mn></mrow></msup>`},
		{"bars", Abs(a), `<mrow><mo>|</mo><mi>a</mi><mo>|</mo></mrow>`},
		{"pi", Pi{}, `<mi>π</mi>`},
		{"power of ten", N(1.5e-9), `<mrow><mn>1.5</mn><mo>×</mo><msup><mn>10</mn><mrow><mo>−</mo><mn>9</mn></mrow></msup></mrow>`},
		{"wrong mode", Fn{FnCos, InRadians, a}, `<mrow><msub><mi>cos</mi><mi>rad</mi></msub><mo>apply</mo><mspace width="0.1667em"></mspace><mi>a</mi></mrow>`},
		{"wrong inverse mode", Fn{FnAtan, InGradians, a}, `<mrow><msubsup><mi>tan</mi><mi>grad</mi><mrow><mo>−</mo><mn>1</mn></mrow></msubsup><mo>apply</mo><mrow><mo>(</mo><mi>a</mi><mo>)</mo></mrow></mrow>`},
	} {
		t.Run(row.name, func(t *testing.T) {
			want := strings.ReplaceAll(row.want, "<mo>apply</mo>", "<mo>\u2061</mo>")
			assert.Equal(t, want, render(t, Math(row.n, naming)))
		})
	}
}

// kidsOf says how many kids each MathML element we use takes (-1: any number,
// 0: none, it holds text). MathML Core, sections 3.2 and 3.3.
var kidsOf = map[string]int{
	"mrow": -1, "msqrt": -1, "mi": 0, "mn": 0, "mo": 0, "mtext": 0, "mspace": 0,
	"mfrac": 2, "msup": 2, "msub": 2, "msubsup": 3,
}

// linear writes what is drawn as one line: fractions and exponents, which the
// drawing encloses, in parentheses of their own.
func linear(t *rapid.T, m Markup) string {
	want, known := kidsOf[m.Tag]
	if !known || (want >= 0 && len(m.Kids) != want) || (want != 0 && m.Text != "") {
		t.Fatalf("bad element %+v", m)
	}
	if want == 0 {
		return strings.NewReplacer("⋅", "·", "\u2061", "", "\u00a0", " ").Replace(m.Text)
	}
	if m.Tag == "mrow" && len(m.Kids) < 2 {
		t.Fatalf("a needless mrow %+v", m)
	}
	var parts []string
	for i, k := range m.Kids {
		part := linear(t, k)
		switch {
		case k.Tag == "mo" && (part == "−" || part == "+") && i > 0 && !slices.Contains([]string{"(", "|"}, m.Kids[i-1].Text):
			part = " " + part + " "
		case k.Tag == "mspace":
			part = " "
		}
		parts = append(parts, part)
	}
	switch m.Tag {
	case "mfrac":
		return "((" + parts[0] + ")/(" + parts[1] + "))"
	case "msqrt":
		return "√(" + strings.Join(parts, "") + ")"
	case "msub":
		if m.Kids[0].Text == "cos" || m.Kids[0].Text == "sin" || m.Kids[0].Text == "tan" {
			return parts[0] + "_" + parts[1]
		}
		return Symbol{Letter: parts[0], Sub: parts[1]}.String()
	case "msubsup":
		return parts[0] + "⁻¹_" + parts[1]
	case "msup":
		if slices.Contains([]string{"sin", "cos", "tan"}, parts[0]) {
			return parts[0] + "⁻¹"
		}
		return parts[0] + "^(" + parts[1] + ")"
	}
	return strings.Join(parts, "")
}

// drawn holds of every tree: its MathML is well formed, each element has the
// kids it must have, and what is drawn reads back to the tree.
func drawn(t *rapid.T) {
	n := treeOptions{modes: true}.trees(6).Draw(t, "tree")
	m := Math(n, naming)
	dec := xml.NewDecoder(strings.NewReader(render(t, m)))
	for {
		_, err := dec.Token()
		if err == io.EOF {
			break
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	line := linear(t, m)
	got, err := readPlain(line, false)
	if err != nil {
		t.Fatal(err)
	}
	if got != n {
		t.Fatalf("%s draws %s, which reads as %s", Plain(n, naming), line, Plain(got, naming))
	}
}

func TestMathIsDrawn(t *testing.T) { rapid.Check(t, drawn) }

func FuzzMathIsDrawn(f *testing.F) { f.Fuzz(rapid.MakeFuzz(drawn)) }

func TestMathKeepsHostileNamesAsText(t *testing.T) {
	m := Math(S("x"), func(string) Symbol { return Symbol{Letter: "<script>", Sub: `"&1`} })
	assert.Equal(t, "<script>", m.Kids[0].Text, "escaping is the renderer's")
	assert.Contains(t, render(t, m), "&lt;script&gt;")
}

// A letter alone is slanted, digits, the sign of a sum and words are upright.
func TestSymbolsAreSet(t *testing.T) {
	for _, row := range []struct{ letter, sub, want string }{
		{"ΣF", "x", `<msub><mrow><mi mathvariant="normal">Σ</mi><mi>F</mi></mrow><mi>x</mi></msub>`},
		{"F", "12x", `<msub><mi>F</mi><mrow><mn>12</mn><mi>x</mi></mrow></msub>`},
		{"T", "AB", `<msub><mi>T</mi><mi mathvariant="normal">AB</mi></msub>`},
		{"θ", "", `<mi>θ</mi>`},
	} {
		t.Run(row.letter+row.sub, func(t *testing.T) {
			got := render(t, Math(S("q"), func(string) Symbol { return Symbol{Letter: row.letter, Sub: row.sub} }))
			assert.Equal(t, row.want, got)
		})
	}
}
