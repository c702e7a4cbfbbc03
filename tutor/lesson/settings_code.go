package lesson

import "strings"

// Source is s as a problem file writes it: what differs from the default, or
// from what follows of the other keys.
func (s Settings) Source() Source {
	plain := DefaultSettings()
	implied := plain
	if s.Answer.Magnitude != plain.Answer.Magnitude {
		implied.Work.Magnitude = max(plain.Work.Magnitude, s.Answer.Magnitude+1)
	}
	if s.Answer.Angle != plain.Answer.Angle {
		implied.Work.Angle = max(plain.Work.Angle, s.Answer.Angle+1)
	}
	src := Branch(CheckKey)
	for _, o := range settings {
		if v := o.get(&s); v != o.get(&implied) {
			src.Kids = append(src.Kids, Leaf(o.key, v))
		}
	}
	return src
}

// Code is s as a part of a code: a letter and a value for each key that
// differs from the default; "" where none does. DecodeSettings reads it.
func (s Settings) Code() string {
	var parts []string
	for _, kid := range s.Source().Kids {
		for _, o := range settings {
			if o.key == kid.Key {
				parts = append(parts, o.short+EscapeCode(kid.Text))
			}
		}
	}
	return strings.Join(parts, ";")
}

// DecodeSettings reads what Code wrote, over the default settings. An error is a
// *SourceError.
func DecodeSettings(code string) (Settings, error) { return ReadSettings(settingsSource(code)) }

// settingsSource is the mapping that a code stands for; what is not known in it is
// kept, for ReadSettings to refuse.
func settingsSource(code string) Source {
	src := Branch(CheckKey)
	for part := range strings.SplitSeq(code, ";") {
		key, value := part, ""
		for _, o := range settings {
			if rest, ok := strings.CutPrefix(part, o.short); ok {
				key, value = o.key, UnescapeCode(rest)
			}
		}
		src.Kids = append(src.Kids, Leaf(key, value))
	}
	return src
}
