package lesson

import (
	"slices"
	"strconv"
	"strings"

	"closingside/tutor/text"
)

// CheckKey is the key under which a problem file or a set file keeps settings.
const CheckKey = "check"

// setting is one key of the settings.
type setting struct {
	key   string
	short string // in a code, one letter
	words []string
	lo    int // a whole number from lo to hi, where there are no words
	hi    int
	get   func(*Settings) string // as set takes it
	set   func(*Settings, string)
}

// settings lists the keys in the order a form offers them.
var settings = []setting{
	whole("digits", "d", 3, 8, func(s *Settings) *int { return &s.Answer.Magnitude }),
	whole("working-digits", "w", 3, 10, func(s *Settings) *int { return &s.Work.Magnitude }),
	whole("places", "p", 0, 6, func(s *Settings) *int { return &s.Answer.Angle }),
	whole("working-places", "q", 0, 8, func(s *Settings) *int { return &s.Work.Angle }),
	toggle("entries", "e", "any", "numbers", func(s *Settings) *bool { return &s.NumbersOnly }),
	toggle("units", "u", "optional", "required", func(s *Settings) *bool { return &s.UnitsRequired }),
	direction,
	method,
	choice("hints", "h", []string{"on", "delayed", "off"}, func(s *Settings) *Help { return &s.Hints }),
	choice("solution", "s", []string{"on", "delayed", "off"}, func(s *Settings) *Help { return &s.Solution }),
	toggle("sketch", "k", "off", "on", func(s *Settings) *bool { return &s.Sketch }),
}

// method is the setting of the way a problem is to be worked.
var method = choice("method", "m", []string{"any", "triangle", "components"}, func(s *Settings) *Method { return &s.Method })

// direction is the setting of how a direction is reported: one of the words,
// or "from" and the name of a thing given.
var direction = setting{
	key: "direction", short: "r",
	words: []string{"from +x", "from the vertical", "bearing", "acute"},
	get:   func(s *Settings) string { return s.Direction.String() },
	set:   func(s *Settings, v string) { s.Direction = reference(v) },
}

var references = map[string]ReportAs{"from +x": FromX, "from the vertical": FromVertical, "bearing": AsBearing, "acute": AsAcute}

func reference(v string) Reference {
	if as, ok := references[v]; ok {
		return Reference{As: as}
	}
	return Reference{FromThing, strings.TrimSpace(strings.TrimPrefix(v, "from "))}
}

// String is r as a file writes it.
func (r Reference) String() string {
	for v, as := range references {
		if as == r.As {
			return v
		}
	}
	return "from " + r.Thing
}

// whole is a setting that is a whole number.
func whole(key, short string, lo, hi int, of func(*Settings) *int) setting {
	return setting{key: key, short: short, lo: lo, hi: hi,
		get: func(s *Settings) string { return strconv.Itoa(*of(s)) },
		set: func(s *Settings, v string) { *of(s), _ = strconv.Atoi(v) }, // taken before
	}
}

// choice is a setting that is one of some words, in the order of its values.
func choice[T ~uint8](key, short string, words []string, of func(*Settings) *T) setting {
	return setting{key: key, short: short, words: words,
		get: func(s *Settings) string { return words[*of(s)] },
		set: func(s *Settings, v string) { *of(s) = T(slices.Index(words, v)) },
	}
}

// toggle is a setting that is one of two words, the first for false.
func toggle(key, short, off, on string, of func(*Settings) *bool) setting {
	return setting{key: key, short: short, words: []string{off, on},
		get: func(s *Settings) string {
			if *of(s) {
				return on
			}
			return off
		},
		set: func(s *Settings, v string) { *of(s) = v == on },
	}
}

// values says what a setting may be.
func (o *setting) values() string {
	if o.words == nil {
		return text.Say("settings.whole", "lo", strconv.Itoa(o.lo), "hi", strconv.Itoa(o.hi))
	}
	all := o.words
	if o.key == direction.key {
		all = append(slices.Clone(all), text.Say("settings.from.thing"))
	}
	return strings.Join(all, ", ")
}

// SettingKeys lists the keys that may stand under "check:", in the order a form
// offers them.
func SettingKeys() []string {
	var keys []string
	for _, o := range settings {
		keys = append(keys, o.key)
	}
	return keys
}

// Word is what s has under key, as a file writes it; "" for an unknown key.
func (s Settings) Word(key string) string {
	for _, o := range settings {
		if o.key == key {
			return o.get(&s)
		}
	}
	return ""
}

// SettingKeys lists the settings that make a difference to problems of kind k,
// judged by the first of its bank.
func (k *Kind) SettingKeys() []string {
	ps := k.BankProblems()
	if len(ps) == 0 {
		return SettingKeys()
	}
	l, err := ps[0].Build()
	if err != nil {
		panic("lesson: bank problem of kind " + k.Name + ": " + err.Error())
	}
	return slices.DeleteFunc(SettingKeys(), func(key string) bool {
		switch key {
		case direction.key:
			return !slices.ContainsFunc(l.Quantities, func(q Quantity) bool { return q.IsReported() })
		case method.key:
			return len(l.Ways) < 2
		}
		return false
	})
}

// SettingWords lists what the setting under key may be, its default among
// them; for a whole number, every one of its values. It is nil for an unknown key.
func SettingWords(key string) []string {
	for _, o := range settings {
		if o.key != key {
			continue
		}
		if o.words != nil {
			return o.words
		}
		var all []string
		for n := o.lo; n <= o.hi; n++ {
			all = append(all, strconv.Itoa(n))
		}
		return all
	}
	return nil
}
