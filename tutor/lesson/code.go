package lesson

import (
	"errors"
	"hash/fnv"
	"strconv"
	"strings"

	"closingside/tutor/text"
)

// A code is a problem in the fragment of an address:
//
//	1!two-forces!Two_tugs_hold_a_barge.!forces:P;340_N;25_deg!forces:Q;610_N;118_deg!k3f
//
// version, kind, story, things given, and four letters against mistyping. Before
// those may stand what the settings change, such as "check:d4;mtriangle": the
// letter of each key, and its value. A code is untrusted input: what decode returns
// still has to be read.

const (
	codeVersion = "1"
	maxCode     = 2000 // bytes
)

// Code is p as a code, which Kinds.Decode reads.
func (p *Problem) Code() string {
	parts := []string{codeVersion, p.Kind.Name, EscapeCode(p.Story)}
	for _, it := range p.Items {
		var fields []string
		for _, f := range it.Fields {
			fields = append(fields, EscapeCode(f.Written))
		}
		parts = append(parts, it.Group+":"+strings.TrimRight(strings.Join(fields, ";"), ";"))
	}
	if check := p.Settings.Code(); check != "" {
		parts = append(parts, CheckKey+":"+check)
	}
	body := strings.Join(parts, "!")
	return body + "!" + Checksum(body)
}

// decode turns a code back into the source of a problem.
func (ks Kinds) decode(code string) (Source, error) {
	cut := strings.LastIndexByte(code, '!')
	if len(code) > maxCode || cut < 0 {
		return Source{}, errors.New(text.Say("code.broken"))
	}
	if version, _, _ := strings.Cut(code, "!"); version != codeVersion {
		return Source{}, errors.New(text.Say("code.version"))
	}
	body := code[:cut]
	parts := strings.Split(body, "!")
	if code[cut+1:] != Checksum(body) || len(parts) < 3 {
		return Source{}, errors.New(text.Say("code.broken"))
	}
	kind := ks.ByName(parts[1])
	if kind == nil {
		return Source{}, errors.New(text.Say("code.version"))
	}
	src := Branch("", Leaf("kind", kind.Name))
	if story := UnescapeCode(parts[2]); story != "" {
		src.Kids = append(src.Kids, Leaf("story", story))
	}
	for _, part := range parts[3:] {
		if check, ok := strings.CutPrefix(part, CheckKey+":"); ok {
			src.Kids = append(src.Kids, settingsSource(check))
		}
	}
	for _, g := range kind.Groups {
		list := Branch(g.Key)
		for _, part := range parts[3:] {
			if name, fields, ok := strings.Cut(part, ":"); ok && name == g.Key {
				list.Kids = append(list.Kids, g.decode(fields))
			}
		}
		if len(list.Kids) > 0 || g.Min > 0 {
			src.Kids = append(src.Kids, list)
		}
	}
	return src, nil
}

// decode turns the fields of one thing back into its source.
func (g Group) decode(fields string) Source {
	item := Branch("")
	for i, f := range strings.Split(fields, ";") {
		if i < len(g.Fields) && f != "" {
			item.Kids = append(item.Kids, Leaf(g.Fields[i].Key, UnescapeCode(f)))
		}
	}
	return item
}

// Decode reads the problem of a code. The error is a sentence for whoever
// followed the link.
func (ks Kinds) Decode(code string) (*Problem, error) {
	src, err := ks.decode(code)
	if err != nil {
		return nil, err
	}
	p, err := ks.Read(src)
	if err != nil { // the code is whole: a page that knows more made it, or one that knew less
		return nil, errors.New(text.Say("code.version"))
	}
	return p, nil
}

// EscapeCode is a text as it stands in a code: the separators, and what an address
// would change, as ~XX; a space as _.
func EscapeCode(s string) string {
	var b strings.Builder
	for _, c := range []byte(s) {
		switch {
		case c == ' ':
			b.WriteByte('_')
		case strings.IndexByte("!;_~#%&+|", c) >= 0 || c < ' ' || c == 0x7f:
			b.WriteByte('~')
			b.WriteString(strconv.FormatInt(int64(c)+0x100, 16)[1:])
		default:
			b.WriteByte(c)
		}
	}
	return b.String()
}

// UnescapeCode is the text that EscapeCode wrote; what it never writes is kept as
// it is, and bytes that are no UTF-8 become U+FFFD.
func UnescapeCode(s string) string {
	b := make([]byte, 0, len(s))
	for i := 0; i < len(s); i++ {
		c := s[i]
		if c == '_' {
			c = ' '
		} else if c == '~' && i+2 < len(s) {
			if v, err := strconv.ParseUint(s[i+1:i+3], 16, 8); err == nil {
				c = byte(v)
				i += 2
			}
		}
		b = append(b, c)
	}
	return strings.ToValidUTF8(string(b), "\uFFFD")
}

// Checksum is four letters and digits of body's FNV-1a hash, base 36, against a
// link cut short or mistyped.
func Checksum(body string) string {
	h := fnv.New32a()
	_, _ = h.Write([]byte(body)) // never fails
	s := strconv.FormatUint(uint64(h.Sum32()), 36)
	return ("0000" + s)[len(s):][:4]
}
