package entry

import (
	"maps"
	"slices"
	"strings"
	"unicode"

	"closingside/statics"
	"closingside/statics/expr"
)

// Names gives the canonical name for each spelling of a quantity or a given:
// "γ" and "gamma" for "gamma", "P" for "F1". Underscores, braces and lowered
// digits need no spelling of their own: F₁, F_1 and F1 are one, and should not
// stand for two things. Where no other spelling differs by case alone, case does
// not matter.
type Names map[string]string

// function is a key of the calculator: what is pressed and what it inverts to.
type function struct {
	fn      expr.Func
	inverse expr.Func // fn again where there is none
	name    string    // for messages
}

// functions holds every word read as a function, in lower case.
var functions = indexFunctions()

func indexFunctions() map[string]function {
	m := map[string]function{
		"abs": {expr.FnAbs, expr.FnAbs, "abs"},
	}
	for _, w := range strings.Fields("sqrt root squareroot sqr") {
		m[w] = function{expr.FnSqrt, expr.FnSqrt, "√"}
	}
	for _, k := range []struct {
		forward, inverse expr.Func
		spellings        string
	}{
		{expr.FnSin, expr.FnAsin, "sin sine sen"},
		{expr.FnCos, expr.FnAcos, "cos cosine"},
		{expr.FnTan, expr.FnAtan, "tan tangent tg tang"},
	} {
		words := strings.Fields(k.spellings)
		for _, w := range words {
			m[w] = function{k.forward, k.inverse, words[0]}
			for _, prefix := range inverseWords {
				m[prefix+w] = function{k.inverse, k.inverse, words[0] + "⁻¹"}
			}
		}
	}
	return m
}

// inverseWords may stand before a function, joined to it or not.
var inverseWords = []string{"a", "arc", "arcus", "ar", "inv", "inverse"}

// between are words that stand between two values.
var between = []string{"or", "and", "at"}

// Vocabulary is every word an entry may use. It is read-only once made.
type Vocabulary struct {
	names Names
	exact map[string]string // spelling → canonical name
	lower map[string]string // the same in lower case; "" where two differ
	most  int               // runes of the longest spelling of anything
}

// longestUnit bounds the spellings of units that are tried.
const longestUnit = 14

// NewVocabulary is the words with which quantities and givens have these names.
func NewVocabulary(names Names) *Vocabulary {
	v := &Vocabulary{names: names, exact: map[string]string{}, lower: map[string]string{}, most: longestUnit}
	for _, spelling := range slices.Sorted(maps.Keys(names)) {
		w, name := Spelling(spelling), names[spelling]
		v.exact[w] = name
		l := foldWord(w)
		if other, ok := v.lower[l]; ok && other != name {
			name = ""
		}
		v.lower[l] = name
		v.most = max(v.most, len([]rune(w)))
	}
	return v
}

// Spelling is a name as the reader compares it: each letter of another script,
// and each lowered digit, as the plain one it looks like, and no underscores.
func Spelling(name string) string {
	return strings.ReplaceAll(string(foldAll(name)), "_", "")
}

// noNames are the words where nothing has a name.
var noNames = NewVocabulary(nil)

// foldWord is w in lower case.
func foldWord(w string) string { return strings.ToLower(w) }

// find is the token that the word w makes.
func (v *Vocabulary) find(w string) (token, bool) {
	if name, ok := v.exact[w]; ok {
		return token{kind: tName, name: name}, true
	}
	low := foldWord(w)
	if f, ok := functions[low]; ok {
		return token{kind: tFunc, fn: f}, true
	}
	unit, isUnit := statics.UnitBySymbol(w)
	isUnit = isUnit && w != ""
	if isUnit && unit.Symbol == w {
		return token{kind: tUnit, unit: unit}, true
	}
	if name := v.lower[low]; name != "" {
		return token{kind: tName, name: name}, true
	}
	switch {
	case isUnit:
		return token{kind: tUnit, unit: unit}, true
	case low == "pi" || low == "π":
		return token{kind: tPi}, true
	case slices.Contains(inverseWords[1:], low):
		return token{kind: tInverse}, true
	case slices.Contains(between, low):
		return token{kind: tValueEnd}, true
	}
	return token{}, false
}

// Reserved reports whether the reader takes the word for something of its own
// (a function, a unit, π), so that no force may be called by it.
func Reserved(word string) bool {
	w := Spelling(word)
	t, ok := noNames.find(w)
	return ok && (t.kind != tUnit || len([]rune(w)) > 1 || t.unit.Symbol == w)
}

// word cuts the run of letters and digits at hand into words: F1cosγ is F1,
// cos, γ. The longest word that leaves a rest which can be cut wins. A unit
// stands at the beginning alone (340Ncos25).
//
//	word = ( name | function | unit | "pi" | … ) [ word ]
func (x *lexer) word() {
	from := x.pos
	if x.timesLetter() {
		x.take(from, 1, token{kind: tOp, op: '*'})
		return
	}
	if x.newton() || x.compoundUnit() || x.spoken() || x.braced() || x.summed() {
		return
	}
	tried := map[int]bool{}
	if words, ok := x.cut(from, tEnd, tried); ok {
		for _, t := range words {
			x.pos = t.to
			x.emit(t.from, t)
		}
		return
	}
	x.pos = x.run(from)
	x.emit(from, token{kind: tUnknown, name: x.typed(from)})
}

// run is the end of the letters, digits and underscores that begin at i.
func (x *lexer) run(i int) int {
	for i < len(x.runes) && (isLetter(x.runes[i]) || isDigit(x.runes[i]) || x.runes[i] == '_') {
		i++
	}
	return i
}

// cut cuts the letters from i on into words, the token before them being of
// kind before. tried holds the places that are known to fail.
func (x *lexer) cut(i int, before kind, tried map[int]bool) ([]token, bool) {
	if i >= len(x.runes) || !isLetter(x.runes[i]) {
		return nil, true
	}
	if tried[i] {
		return nil, false
	}
	for end := min(x.run(i), i+x.words.most); end > i; end-- {
		if end < len(x.runes) && isDigit(x.runes[end]) && isDigit(x.runes[end-1]) || x.runes[end-1] == '_' {
			continue
		}
		t, ok := x.words.find(strings.ReplaceAll(string(x.runes[i:end]), "_", ""))
		if !ok || t.kind == tUnit && (before != tEnd || end < x.run(i) && !x.previous(tNumber, tClose, tSuper, tPi)) {
			continue // a unit stands behind a number, or alone
		}
		if (t.kind == tFunc || t.kind == tInverse) && x.words.multiplies(x.runes[i:end]) && !(x.angle && x.begins()) {
			continue // 2ARcos 45, of forces A and R
		}
		if t.kind == tName && end < len(x.runes) && isDigit(x.runes[end]) {
			continue // F1 is not F times 1
		}
		t.span = span{i, end}
		if rest, ok := x.cut(end, t.kind, tried); ok {
			return append([]token{t}, rest...), true
		}
	}
	tried[i] = true
	return nil, false
}

// begins reports whether a value begins here: a phone may have made its first letter
// a capital.
func (x *lexer) begins() bool {
	return len(x.tokens) == 0 || x.tokens[len(x.tokens)-1].is('=')
}

// multiplies reports whether w, which reads as an inverse key, is also capital
// letters that are names, with a key behind them or none: ARcos, AR, Acos.
func (v *Vocabulary) multiplies(w []rune) bool {
	for n := 1; n <= len(w) && unicode.IsUpper(w[0]); n++ {
		if _, ok := v.exact[string(w[:n])]; !ok {
			continue
		}
		if _, key := functions[string(w[n:])]; key || n == len(w) || v.multiplies(w[n:]) {
			return true
		}
	}
	return false
}

// timesLetter reports whether the letter at hand is an x for ×: 2x340, 340xcos25,
// T x cos 40.
func (x *lexer) timesLetter() bool {
	apart := isSpace(x.at(-1)) && isSpace(x.at(1))
	if foldWord(string(x.at(0))) != "x" || !x.previous(tNumber, tClose, tSuper, tUnit) && !(apart && x.previous(tName)) {
		return false
	}
	i := 1
	for isSpace(x.at(i)) {
		i++
	}
	if x.at(i) == '-' && isSpace(x.at(-1)) && (isDigit(x.at(i+1)) || x.at(i+1) == '.') { // 6.5 x -0.8
		return true
	}
	r := x.at(i)
	return isDigit(r) || r == '.' || r == '(' || r == '√' || x.functionAt(x.pos+i)
}

// functionAt reports whether the word at i begins with a function.
func (x *lexer) functionAt(i int) bool {
	word := foldWord(string(x.runes[i:x.letters(i)]))
	for f := range functions {
		if strings.HasPrefix(word, f) {
			return true
		}
	}
	return false
}
