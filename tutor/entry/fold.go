package entry

import "strings"

// Phones, word processors and keyboards of other scripts write one thing with
// many characters. fold turns each rune into the one the lexer knows, rune for
// rune, so that a column in the folded text is a column in what was typed.
//
// What it leaves apart: the lone plain space, and the spaces that do not break
// (which group digits, NIST SP 811 (2008), 10.5.3) as noBreak.

const (
	noBreak = '\u00a0'
	prime   = '′'
	seconds = '″'
)

// alike lists, for a rune of the lexer, the runes read as it.
var alike = map[rune]string{
	' ':     "\t\n\r\v\f\u0085\u1680\u2002\u2003\u2004\u2005\u2006\u2028\u2029\u205f\u3000\\\u00ad\u200b\u200c\u200d\u200e\u200f\u2060\u2061\u2062\u2063\ufe0e\ufe0f\ufeff\u20d7\u20d1",
	noBreak: "\u2007\u2008\u2009\u200a\u202f",
	'-':     "−–—‐‑‒―﹣⁃➖˗",
	'+':     "➕﹢",
	'*':     "×·⋅∙•✕✖∗⨯╳٭・",
	'/':     "÷∕⁄➗",
	'=':     "≈≃≅≡~∼﹦→⇒⟹➔➡",
	'∠':     "∡⦟",
	'.':     "٫。",
	',':     "٬،、‚",
	'°':     "º˚∘",
	prime:   "'’‘ʹ´`‛ʼ",
	seconds: "\"”“ʺ‟˝",
	'(':     "[{⟮❨",
	')':     "]}⟯❩",
	'|':     "∣ǀ│‖∥",
	'^':     "ˆ",
	'√':     "✓",
	'π':     "ϖ∏",
	'θ':     "ϑϴΘѲѳ",
	'φ':     "ϕɸΦ∅Øø",
	'γ':     "ɣ",
	'β':     "ßϐ",
	'α':     "ɑ∝",
	'μ':     "µ",
	'Σ':     "∑Ʃ",
	// Cyrillic and Greek letters drawn as Latin ones.
	'A': "АΑ", 'B': "ВΒ", 'C': "С", 'E': "ЕΕᴇ", 'H': "НΗ", 'K': "КΚ", 'M': "МΜ", 'N': "Ν", 'P': "РΡ", 'T': "ТΤ", 'X': "ХΧ",
	'a': "а", 'c': "с", 'e': "е", 'o': "оο", 'p': "р", 'x': "х", 'y': "у", 'i': "і", 's': "ѕ",
}

// subscripts are read as the plain characters, in order.
const (
	subscripts      = "₀₁₂₃₄₅₆₇₈₉ₐₑₒₓₕₖₗₘₙₚₛₜᵢᵣᵤᵥ"
	subscriptsPlain = "0123456789aeoxhklmnpstiruv"
)

var folded = indexAlike()

func indexAlike() map[rune]rune {
	m := map[rune]rune{}
	for to, from := range alike {
		for _, r := range from {
			m[r] = to
		}
	}
	plain := []rune(subscriptsPlain)
	for i, r := range []rune(subscripts) {
		m[r] = plain[i]
	}
	return m
}

// fold returns the rune the lexer knows for r.
func fold(r rune) rune {
	switch {
	case r < 0x80 && !strings.ContainsRune("\t\n\r\v\f'\"`~[]{}\\", r):
		return r
	case r >= 0xff01 && r <= 0xff5e: // full-width ASCII
		return fold(r - 0xff01 + '!')
	}
	if plain := foldMath(r); plain != r {
		return fold(plain)
	}
	if d, ok := digit(r); ok {
		return d
	}
	if to, ok := folded[r]; ok {
		return to
	}
	return r
}

// decimalDigits holds the zero of each script whose ten digits follow one
// another and are found on phones: Arabic-Indic and its eastern form,
// Devanagari, Bengali, Gurmukhi, Gujarati, Tamil, Thai.
var decimalDigits = [...]rune{0x0660, 0x06f0, 0x0966, 0x09e6, 0x0a66, 0x0ae6, 0x0be6, 0x0e50}

func digit(r rune) (rune, bool) {
	for _, zero := range decimalDigits {
		if r >= zero && r <= zero+9 {
			return r - zero + '0', true
		}
	}
	return r, false
}

// foldMath returns the plain letter or digit of a mathematical alphanumeric
// symbol (Unicode block U+1D400–U+1D7FF: bold, italic and other alphabets laid
// end to end).
func foldMath(r rune) rune {
	const (
		latin, greek, digits = 0x1d400, 0x1d6a8, 0x1d7ce
		greekLen             = 58
	)
	switch {
	case r < latin || r > digits+49:
	case r >= digits:
		return '0' + (r-digits)%10
	case r >= greek && r < greek+5*greekLen:
		// Α…Ρ ϴ Σ…Ω ∇ α…ω, then six variants.
		const variants = "∂ϵθκφρπ"
		switch i := (r - greek) % greekLen; {
		case i < 25:
			return 'Α' + i
		case i >= 26 && i < 51:
			return 'α' + i - 26
		case i >= 51:
			return []rune(variants)[i-51]
		}
	case r < latin+13*52:
		if i := (r - latin) % 52; i < 26 {
			return 'A' + i
		} else {
			return 'a' + i - 26
		}
	}
	return r
}

// foldAll returns the folded runes of s. Bytes that are no UTF-8 become
// U+FFFD, one a byte, and are refused later like any strange character.
func foldAll(s string) []rune {
	runes := []rune(s)
	for i, r := range runes {
		runes[i] = fold(r)
	}
	return runes
}
