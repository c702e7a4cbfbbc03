package site

import (
	"slices"
	"sort"
	"strings"
	"unicode"
	"unicode/utf8"

	"closingside/site/html"
	"closingside/statics/expr"
	"closingside/tutor/figure"
	"closingside/tutor/lesson"
)

// prose is a sentence on the desk's lesson.
func (d *desk) prose(s string) html.Node { return Prose(d.lesson.Lesson, s) }

// Prose is a sentence of the tutor's with its symbols set as in a formula.
func Prose(l *lesson.Lesson, s string) html.Node { return styled(Runs(l, s)) }

// styled is runs of text, each in its style.
func styled(runs []figure.Run) html.Node {
	var parts []html.Node
	for _, r := range runs {
		piece := html.Text(r.Text)
		if r.Italic {
			piece = html.El("i", piece)
		}
		if r.Sub {
			piece = html.El("sub", piece)
		}
		parts = append(parts, piece)
	}
	return html.Group(parts...)
}

// Runs cuts a sentence of the tutor's at its symbols: plain text has no subscript
// letters, so that a mass mW and an angle θT read badly. Letters by themselves
// belong to the text around them, and so does what may be a word.
func Runs(l *lesson.Lesson, s string) []figure.Run {
	symbols := map[string]expr.Symbol{}
	var names []string
	for i := range l.Quantities {
		symbol := l.Symbol(l.Quantities[i].Name)
		if plain := symbol.String(); lowered(symbol) && strings.Contains(s, plain) {
			names = append(names, plain)
			symbols[plain] = symbol
		}
	}
	sort.Slice(names, func(i, j int) bool { return len(names[i]) > len(names[j]) })
	var runs []figure.Run
	from := 0
	for at := 0; at < len(s); {
		name := ""
		if before, _ := utf8.DecodeLastRuneInString(s[:at]); !partOfWord(before) {
			name = symbolAt(s[at:], names)
		}
		if name != "" && beginsSentence(s, at, name) {
			name = ""
		}
		if name == "" {
			_, size := utf8.DecodeRuneInString(s[at:])
			at += size
			continue
		}
		runs = append(runs, figure.Run{Text: s[from:at]})
		runs = append(runs, figure.Symbol(symbols[name].Letter, symbols[name].Sub).Runs...)
		at += len(name)
		from = at
	}
	return append(runs, figure.Run{Text: s[from:]})
}

// lowered tells whether a symbol has letters below the line.
func lowered(s expr.Symbol) bool { return strings.ContainsFunc(s.Sub, unicode.IsLetter) }

// beginsSentence tells whether what looks like a symbol may be the first word of a
// sentence, as the component of a force A along an axis t can: a word stands
// first, and another follows it.
func beginsSentence(s string, at int, name string) bool {
	if !slices.Contains(words, name) {
		return false
	}
	before, _ := utf8.DecodeLastRuneInString(strings.TrimRightFunc(s[:at], unicode.IsSpace))
	first := before == utf8.RuneError || strings.ContainsRune(".?!:;(“", before)
	rest := strings.TrimLeftFunc(s[at+len(name):], unicode.IsSpace)
	after, _ := utf8.DecodeRuneInString(rest)
	return first && len(rest) < len(s)-at-len(name) && unicode.IsLetter(after)
}

// words are the words of two letters that begin a sentence.
var words = strings.Fields("Ah Am An As At Be By Do Go Ha He Hi Ho If In Is It Me My No Of Oh On Or Ox So To Up Us We")

// symbolAt is the name that s begins with, as a word of its own.
func symbolAt(s string, names []string) string {
	for _, n := range names {
		if after, _ := utf8.DecodeRuneInString(s[min(len(n), len(s)):]); strings.HasPrefix(s, n) && !partOfWord(after) {
			return n
		}
	}
	return ""
}

func partOfWord(r rune) bool {
	return r != utf8.RuneError && (unicode.IsLetter(r) || unicode.IsDigit(r) || r >= '₀' && r <= '₉')
}
