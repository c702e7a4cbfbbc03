package entry

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// String is the token's column, kind and content.
func (t token) String() string {
	s := strconv.Itoa(t.from+1) + " " + t.kind.String()
	switch t.kind {
	case tNumber:
		s += " " + number6(t.num.value)
	case tUnit:
		s += " " + t.unit.Symbol
	case tName, tUnknown:
		s += " " + t.name
	case tFunc:
		s += " " + t.fn.name
	case tOp:
		s += " " + string(t.op)
	case tSuper:
		s += " " + number6(t.num.value)
	}
	return s
}

// TestLex: column, kind and content of each token.
func TestLex(t *testing.T) {
	seen := map[kind]bool{}
	for _, row := range []struct{ text, want string }{
		{"F1*2", "1 name F1, 3 op *, 4 number 2, 5 end"},
		{"2F1F2cosγ", "1 number 2, 2 name F1, 4 name F2, 6 func cos, 9 name gamma, 10 end"},
		{"2·P − 3", "1 number 2, 2 op *, 3 name F1, 5 op -, 7 number 3, 8 end"},
		{"340 N", "1 number 340, 5 unit N, 6 end"},
		{"12 lb-ft", "1 number 12, 4 unit lb·ft, 9 end"},
		{"12 kN / m", "1 number 12, 4 unit kN/m, 10 end"},
		{"12 N/2", "1 number 12, 4 unit N, 5 op /, 6 number 2, 7 end"},
		{"52° 30′ 15″", "1 number 52.5042, 1 unit deg, 12 end"},
		{"52°30′+1°", "1 number 52.5, 1 unit deg, 7 op +, 8 number 1, 9 unit deg, 10 end"},
		{"√2²", "1 func √, 2 number 2, 3 super 2, 4 end"},
		{"sin⁻¹(.5)", "1 func sin, 4 super -1, 6 open, 7 number 0.5, 9 close, 10 end"},
		{"arc sin x", "1 inverse, 5 func sin, 9 unknown x, 10 end"},
		{"2x3 X (4)", "1 number 2, 2 op *, 3 number 3, 5 op *, 7 open, 8 number 4, 9 close, 10 end"},
		{"|π|=2pi", "1 op |, 2 pi, 3 op |, 4 op =, 5 number 2, 6 pi, 8 end"},
		{"3 or 4, 5", "1 number 3, 3 between, 6 number 4, 7 between, 9 number 5, 10 end"},
		{"2**3:=4", "1 number 2, 2 op ^, 4 number 3, 5 op =, 7 number 4, 8 end"},
		{"87⁰", "1 number 87, 3 unit deg, 4 end"},
		{"1.2e3", "1 number 1200, 6 end"},
		{"2e", "1 number 2, 2 unknown e, 3 end"},
		{"F12", "1 unknown F12, 4 end"},
		{"F_1x", "1 name F1x, 5 end"},
		{"340Ncos25", "1 number 340, 4 unit N, 5 func cos, 8 number 25, 10 end"},
		{"𝐹₁ ＋ １", "1 name F1, 4 op +, 6 number 1, 7 end"},
		{"3…", "1 number 3, 2 end"},
		{`\frac{1}{2}`, "2 frac, 6 open, 7 number 1, 8 close, 9 open, 10 number 2, 11 close, 12 end"},
		{"", "1 end"},
	} {
		t.Run(row.text, func(t *testing.T) {
			var got []string
			for _, tok := range lex(row.text, NewVocabulary(testNames), false) {
				seen[tok.kind] = true
				got = append(got, strings.TrimSpace(tok.String()))
			}
			assert.Equal(t, row.want, strings.Join(got, ", "), "lex(%q)", row.text)
		})
	}
	for k := range nKinds {
		assert.True(t, seen[k], "no row with a token of kind %v", k)
	}
}

// TestFoldKeepsColumns: one rune in, one rune out, and what is plain already
// stays.
func TestFoldKeepsColumns(t *testing.T) {
	for r := rune(0); r < 0x20000; r++ {
		f := fold(r)
		require.Equal(t, f, fold(f), "fold(%U) = %U is not settled", r, f)
	}
	const plain = "abcxyzABCXYZ0123456789+-*/^=|().,;:#$%&<>!?@ _"
	assert.Equal(t, plain, string(foldAll(plain)))
	for to, from := range alike {
		for _, r := range from {
			assert.Equal(t, string(to), string(fold(r)), "fold(%U)", r)
		}
	}
	// The block's first and last letters and digits, by the Unicode chart; a
	// capital alpha is drawn, and read, as A.
	assert.Equal(t, "AzAzAωπ09", string(foldAll("𝐀𝐳𝘼𝙯𝚨𝛚𝛡𝟎𝟿")))
}

func TestReserved(t *testing.T) {
	for word, want := range map[string]bool{
		"N": true, "kN": true, "m": true, "sin": true, "Cos": true, "pi": true, "deg": true, "in": true, "inv": true, "or": true, "sqrt": true, "min": false,
		"P": false, "Q": false, "T": false, "T1": false, "F": false, "W": false, "A": false, "tug": false, "": false,
	} {
		assert.Equal(t, want, Reserved(word), "Reserved(%q)", word)
	}
}
