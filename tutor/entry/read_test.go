package entry

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/text"
)

func init() { text.Strict = true }

func unit(symbol string) statics.Unit {
	u, ok := statics.UnitBySymbol(symbol)
	if !ok {
		panic(symbol)
	}
	return u
}

// testNames are the spellings of two tug forces and what follows from them.
var testNames = Names{
	"F1": "F1", "P": "F1", "F2": "F2", "Q": "F2", "R": "R", "Rx": "Rx", "Ry": "Ry", "F1x": "F1x",
	"γ": "gamma", "gamma": "gamma", "φ": "phi", "phi": "phi", "β": "beta", "beta": "beta",
	"θ": "theta", "theta": "theta", "θ1": "theta1", "theta1": "theta1", "T1": "T1", "T2": "T2", "ΣFx": "sumx", "sumx": "sumx",
}

// testKnown: P = 340 N, Q = 610 N, γ = 87°.
func testKnown(name string) float64 {
	if v, ok := map[string]float64{"F1": 340, "F2": 610, "gamma": 87, "Rx": 21.76}[name]; ok {
		return v
	}
	return math.NaN()
}

func testDims(name string) (statics.Dimension, bool) {
	switch name {
	case "gamma", "phi", "beta", "theta", "theta1":
		return statics.DimAngle, true
	}
	return statics.DimForce, true
}

// scopeFor is a scope that asks for R in newtons, β in degrees, and so on.
func scopeFor(asked string) Scope {
	s := Scope{Force: unit("N"), Words: NewVocabulary(testNames), Known: testKnown, Unknowns: []string{"theta"}, Asked: asked, Dims: testDims}
	switch asked {
	case "R":
		s.Dim, s.Unit = statics.DimForce, unit("N")
	case "beta":
		s.Dim, s.Unit, s.Direction = statics.DimAngle, unit("deg"), true
	case "ratio":
		s.Dim, s.Unit = statics.DimRatio, unit("")
	case "kN":
		s.Dim, s.Unit, s.Force, s.Asked = statics.DimForce, unit("kN"), unit("kN"), "R"
	case "moment":
		s.Dim, s.Unit = statics.DimMoment, unit("N·m")
	case "balance":
		s.Dim, s.Unit, s.Unknowns, s.Asked, s.Equation, s.Equations = statics.DimForce, unit("N"), []string{"T1", "T2"}, "sumx", true, []string{"sumx"}
	case "sum":
		s.Dim, s.Unit, s.Unknowns = statics.DimForce, unit("N"), []string{"T1", "T2"}
	default:
		panic(asked)
	}
	return s
}

func number6(v float64) string { return strconv.FormatFloat(v, 'g', 6, 64) }

// describe writes a reading in one line: form, value, half-units, unit as
// written, tree; or where the error points and its key.
func describe(r Reading, err *Error) string {
	if err != nil {
		return "error " + strconv.Itoa(err.Col) + "+" + strconv.Itoa(err.Len) + " " + strings.TrimPrefix(err.Key, "entry.")
	}
	parts := []string{r.Form.String()}
	switch r.Form {
	case Affine:
		parts = append(parts, number6(r.Const)+" + "+number6(r.Coef)+"·"+r.In)
	case Equation:
		parts = append(parts, expr.Plain(r.Tree, nil)+" = "+expr.Plain(r.Right, nil))
		if u := r.Unequal; u != nil {
			parts = append(parts, strings.TrimPrefix(u.Key, "entry."), strconv.Itoa(u.Col)+"+"+strconv.Itoa(u.Len))
		}
	default:
		parts = append(parts, number6(r.Value))
	}
	if len(r.Halves) > 0 {
		h := make([]string, len(r.Halves))
		for i, v := range r.Halves {
			h[i] = number6(v)
		}
		parts = append(parts, "± "+strings.Join(h, " "))
	}
	if r.UnitWritten {
		parts = append(parts, r.Unit)
	}
	switch r.Form {
	case Expression, Affine:
		parts = append(parts, "| "+expr.Plain(r.Tree, nil))
	case Direction:
		parts = append(parts, "| "+r.Heading.String())
	}
	return strings.Join(parts, " ")
}

// eachRow calls do for each row of readRows and readRowsPhone.
func eachRow(do func(asked, entry, want string)) {
	spaces := strings.NewReplacer("␣", "\u00a0", "␢", "\u202f", "¦", "\u200b", "␛", "\u20d7")
	for row := range strings.Lines(readRows + readRowsPhone) {
		row = strings.TrimSpace(row)
		if row == "" || strings.HasPrefix(row, "#") {
			continue
		}
		head, want, ok := strings.Cut(row, " → ")
		asked, entry, colon := strings.Cut(head, ": ")
		if !ok || !colon {
			panic("malformed row: " + row)
		}
		do(asked, spaces.Replace(entry), want)
	}
}

// TestRead: one row an entry. Numbers and results were worked out by hand or
// on a pocket calculator.
func TestRead(t *testing.T) {
	seen := map[string]bool{}
	eachRow(func(asked, entry, want string) {
		name := asked + ": " + entry
		require.False(t, seen[name], "row stands twice: %s", name)
		seen[name] = true
		t.Run(name, func(t *testing.T) {
			r, err := Read(entry, scopeFor(asked))
			assert.Equal(t, want, describe(r, err), "Read(%q)", entry)
			if err != nil {
				checkError(t, entry, err)
			}
		})
	})
}

// checkError: an error points into the text, and its sentence is whole.
func checkError(t require.TestingT, entry string, err *Error) {
	n := len([]rune(entry))
	require.True(t, err.Col >= 1 && err.Len >= 0 && err.Col-1+err.Len <= n, "%q: column %d+%d of %d", entry, err.Col, err.Len, n)
	require.Empty(t, text.Missing(err.Key))
	m := err.Message()
	require.True(t, strings.HasSuffix(m, ".") || strings.HasSuffix(m, "?"), m)
}

// Two capital letters before a key are two forces, be it that they read as the inverse
// key too; one at the beginning of an angle is a key that the phone has capitalised.
func TestNamesBeforeAKeyAreNoInverseKey(t *testing.T) {
	names := Names{"A": "F1", "R": "F2", "α": "alpha", "Q": "Q"}
	sc := Scope{Force: unit("N"), Words: NewVocabulary(names), Known: func(name string) float64 { return 100 }}
	rows := []struct{ asked, entry, want string }{
		{"Q", "√(A²+R²−2ARcos 45)", "expression 76.5367 | √(F1² + F2² − 2·F1·F2·cos 45)"},
		{"Q", "2AR cos 60/A", "expression 100 | 2·F1·F2·cos(60)/F1"},
		{"Q", "2RAcos(60)/A", "expression 100 | 2·F2·F1·cos(60)/F1"},
		{"Q", "Acos60", "expression 50 | F1·cos 60"},
		{"alpha", "Asin(0.5)", "expression 30 | sin⁻¹(0.5)"},
		{"alpha", "α = Acos 0.5", "expression 60 | cos⁻¹(0.5)"},
		{"alpha", "asin(Asin30/R)", "expression 30 | sin⁻¹(F1·sin(30)/F2)"},
		{"alpha", "ARCSIN(0.5)", "expression 30 | sin⁻¹(0.5)"},
		{"alpha", "Arcsin 0.5", "expression 30 | sin⁻¹(0.5)"},
	}
	for _, row := range rows {
		sc.Asked, sc.Dim, sc.Unit = row.asked, statics.DimForce, unit("N")
		if row.asked == "alpha" {
			sc.Dim, sc.Unit = statics.DimAngle, unit("deg")
		}
		assert.Equal(t, row.want, describe(Read(row.entry, sc)), row.entry)
	}
}
