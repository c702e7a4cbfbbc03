package site

import (
	"flag"
	"math/rand/v2"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"

	"github.com/stretchr/testify/require"
)

var hostile = flag.Int("hostile", 3000, "requests that TestHostileSessions makes")

// naughty are the pieces that names, stories and entries are thrown together
// from: markup, bytes, and what the readers know.
var naughty = strings.Split("<xyz> </main> \"><xyz &lt; & ' \" ` = ; : ! ~ _ % %00 + # \x00 \x7f \xff \u202e \u200b \ufeff 😀 ́ {R} {F1} {} P Q F1 R θ gamma "+
	"340 N|610 N|25 deg|118 deg|N 30 E|3:4 up left|87°|682.6 N|sqrt(340^2|sin⁻¹(|118° − θ|= = 0|1e308|-1|0|1,234|½|kip|63.2° from P|cos(1.518)|((((|√√√|ba<xyz>nana|select|javascript:alert(1)|"+
	"\n|\r\n|\t|do=enter|&do=clear", "|")

func init() {
	var all []string
	for _, p := range naughty {
		all = append(all, strings.Split(p, " ")...)
		all = append(all, p)
	}
	naughty = append(all, " ", " ", " ")
}

// hostileSession makes up requests of one learner who means no good.
type hostileSession struct {
	*rand.Rand
	codes []string
}

func (h *hostileSession) pick(from ...string) string { return from[h.IntN(len(from))] }

// text is a few pieces one after the other.
func (h *hostileSession) text() string {
	var b strings.Builder
	for range h.IntN(6) {
		b.WriteString(naughty[h.IntN(len(naughty))])
	}
	return b.String()
}

// or is one of the good values three times out of four, otherwise anything.
func (h *hostileSession) or(good ...string) string {
	if h.IntN(4) == 0 {
		return h.text()
	}
	return h.pick(good...)
}

// request is one line as the page would send it, or nearly.
func (h *hostileSession) request() Form {
	k := kinds.All[h.IntN(len(kinds.All))]
	problem := h.or(h.codes...)
	f := Form{{"do", h.or("enter", "enter", "enter", "read", "hint", "solution", "undo", "stand", "withdraw", "again", "open", "home", "draw", "own", "own", "sketch", "personal")},
		{"problem", problem}, {"kind", h.or(k.Name)}, {"at", h.or("1764000000000", "7")}}
	l, err := openCode(problem)
	quantity := h.text()
	if err == nil && h.IntN(8) > 0 {
		quantity = l.Quantities[h.IntN(len(l.Quantities))].Name
	}
	f = append(f, Field{"quantity", quantity}, Field{"reason", h.text()}, Field{"like", problem}, Field{"act", h.or("put", "close", "skip", "undo", "estimate", "again")})
	entry := h.text()
	if err == nil && h.IntN(2) == 0 {
		if q := l.Quantity(quantity); q != nil && !q.Given {
			entry = l.Show(q, q.True*h.factor(), lesson.Digits{Magnitude: 4, Angle: 2})
		}
	}
	f = append(f, Field{"entry", entry})
	if f.Get("do") == "open" && h.IntN(2) == 0 {
		f = append(f, Field{"hash", problem})
	}
	if f.Get("do") == "own" {
		f = append(f, h.own(k)...)
	}
	return f
}

func (h *hostileSession) factor() float64 { return []float64{1, 1, 1, -1, 2, 0.5, 1.01}[h.IntN(7)] }

// own is a problem of one's own: some fields right, some not.
func (h *hostileSession) own(k *lesson.Kind) Form {
	f := Form{{"story", h.text()}}
	for _, g := range k.Groups {
		for i := range g.Max {
			for _, spec := range g.Fields {
				if good := spec.Example; h.IntN(5) > 0 {
					if spec.Is == lesson.NameField {
						good = h.pick("P", "Q", "F1", "F2", "Ж", "W", "a1") + h.pick("", "", "2")
					}
					f = append(f, Field{fieldName(g.Key, i, spec.Key), h.or(good, good, good)})
				}
			}
		}
	}
	for _, key := range lesson.SettingKeys() {
		if h.IntN(6) == 0 {
			f = append(f, Field{checkPrefix + key, h.or(lesson.SettingWords(key)...)})
		}
	}
	return append(f, Field{checkThing, h.or("P", "Q")})
}

var tagAt = regexp.MustCompile(`^</?[a-z][a-z0-9]*[ >]`)

// wellFormed: what is sent back is UTF-8, and every < in it begins an element
// of ours: no text of the learner's is taken for markup.
func wellFormed(t *testing.T, reply string) {
	if !utf8.ValidString(reply) {
		t.Fatalf("not UTF-8: %q", reply)
	}
	if strings.Contains(reply, "<xyz") || strings.ContainsRune(reply, 0) {
		t.Fatalf("markup of the learner's: %.2000q", reply)
	}
	for at := 0; ; at++ {
		next := strings.IndexByte(reply[at:], '<')
		if next < 0 {
			return
		}
		if at += next; !tagAt.MatchString(reply[at:min(len(reply), at+40)]) {
			t.Fatalf("no tag: %.80q", reply[at:])
		}
	}
}

// TestHostileSessions works many sessions of hostile requests: none brings the
// engine down, no text becomes markup, and the log brings each session back to
// the letter.
func TestHostileSessions(t *testing.T) {
	const seed, length = 11, 25
	made := 0
	for session := uint64(0); made < *hostile; session++ {
		h := &hostileSession{Rand: rand.New(rand.NewPCG(seed, session)), codes: []string{barge()}}
		for _, k := range kinds.All {
			ps := k.BankProblems()
			h.codes = append(h.codes, ps[h.IntN(len(ps))].Code())
		}
		var log []string
		Handle([]byte("do=start&at=1"))
		for range 1 + h.IntN(length) {
			f := h.request()
			line := f.Line()
			made++
			if f.Get("do") == "read" { // is not logged; the page asks of the problem on the screen
				line = strings.Replace(line, "problem=", "problem="+Form{{"", here.current}}.Line()[1:]+"&was=", 1)
				wellFormed(t, string(Handle([]byte(line))))
				continue
			}
			wellFormed(t, string(Handle([]byte(line))))
			log = append(log, line)
			if here.current != "" {
				h.codes = append(h.codes, here.current)
			}
		}
		live, _, _ := strings.Cut(ask("do", "as it stands"), `<p id="say"`)
		wellFormed(t, string(Handle([]byte("do=start&at=2\n"+strings.Join(log, "\n")))))
		back, _, _ := strings.Cut(ask("do", "as it stands"), `<p id="say"`)
		made += 3
		if live != back {
			require.Equal(t, live, back, "session %d of seed %d:\n%s", session, seed, strings.Join(log, "\n"))
		}
	}
	t.Logf("%d requests", made)
}
