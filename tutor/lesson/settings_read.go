package lesson

import (
	"slices"
	"strconv"
	"strings"

	"closingside/tutor/entry"
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
	choice("entries", "e", []string{"any", "numbers"}, func(s *Settings) *bool { return &s.NumbersOnly }),
	choice("units", "u", []string{"optional", "required"}, func(s *Settings) *bool { return &s.UnitsRequired }),
	direction,
	method,
	choice("hints", "h", []string{"on", "delayed", "off"}, func(s *Settings) *Help { return &s.Hints }),
	choice("solution", "s", []string{"on", "delayed", "off"}, func(s *Settings) *Help { return &s.Solution }),
	choice("sketch", "k", []string{"off", "on"}, func(s *Settings) *bool { return &s.Sketch }),
}

// Method is the setting of the way a problem is to be worked.
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
func choice[T ~uint8 | ~bool](key, short string, words []string, of func(*Settings) *T) setting {
	values := make([]T, len(words))
	for i := range values {
		switch p := any(&values[i]).(type) {
		case *bool:
			*p = i == 1
		case *Method:
			*p = Method(i)
		case *Help:
			*p = Help(i)
		}
	}
	return setting{key: key, short: short, words: words,
		get: func(s *Settings) string { return words[slices.Index(values, *of(s))] },
		set: func(s *Settings, v string) { *of(s) = values[slices.Index(words, v)] },
	}
}

// ReadSettings understands the mapping under "check:"; every key is optional.
// An error is a *SourceError.
func ReadSettings(src Source) (Settings, error) { return DefaultSettings().With(src) }

// With is s with what src sets changed. An error is a *SourceError.
func (s Settings) With(src Source) (Settings, error) {
	if src.Kids == nil && strings.TrimSpace(src.Text) == "" {
		return s, nil // "check:" with nothing behind it
	}
	if src.Kids == nil || src.Kids[0].Key == "" {
		return s, src.Fault("settings.form")
	}
	seen := map[string]Source{}
	for _, kid := range src.Kids {
		if _, twice := seen[kid.Key]; twice {
			return s, kid.Fault("problem.twice", "key", kid.Key)
		}
		seen[kid.Key] = kid
		i := slices.IndexFunc(settings, func(o setting) bool { return o.key == kid.Key })
		if i < 0 {
			return s, kid.Fault("problem.key.unknown", "key", kid.Key, "keys", strings.Join(SettingKeys(), ", "))
		}
		v, err := settings[i].take(kid)
		if err != nil {
			return s, err
		}
		settings[i].set(&s, v)
	}
	if err := finer("digits", &s.Work.Magnitude, s.Answer.Magnitude, seen); err != nil {
		return s, err
	}
	return s, finer("places", &s.Work.Angle, s.Answer.Angle, seen)
}

// finer sees to it that what is kept on the way is no coarser than what is
// asked. Where only the answers' digits are set, one more is kept.
func finer(key string, work *int, asked int, seen map[string]Source) error {
	at, set := seen["working-"+key]
	switch {
	case !set:
		if _, raised := seen[key]; raised {
			*work = max(*work, asked+1)
		}
	case *work < asked:
		return at.Fault("settings.coarser", "key", "working-"+key, "asked", key, "n", strconv.Itoa(asked))
	}
	return nil
}

// take is the value of src in the setting's own spelling.
func (o *setting) take(src Source) (string, error) {
	v := strings.Join(strings.Fields(src.Text), " ")
	if src.Kids != nil || v == "" {
		return "", src.Fault("settings.value", "key", o.key, "values", o.values())
	}
	low := strings.ToLower(v)
	if alias, ok := aliases[low]; ok && (slices.Contains(o.words, alias)) {
		low = alias
	}
	switch {
	case slices.Contains(o.words, low):
		return low, nil
	case o.key == direction.key && strings.HasPrefix(low, "from ") && !strings.Contains(v[len("from "):], " "):
		return "from " + v[len("from "):], nil
	case o.words == nil:
		if n, err := strconv.Atoi(v); err == nil && n >= o.lo && n <= o.hi {
			return strconv.Itoa(n), nil
		}
	}
	return "", src.Fault("settings.value.bad", "key", o.key, "got", v, "values", o.values())
}

// aliases are other ways of writing a word.
var aliases = map[string]string{
	"true": "on", "yes": "on", "false": "off", "no": "off",
	"from x": "from +x", "+x": "from +x", "from vertical": "from the vertical", "vertical": "from the vertical",
	"either": "any",
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

// SettingKeys lists the keys that may stand under "check:".
func SettingKeys() []string {
	var keys []string
	for _, o := range settings {
		keys = append(keys, o.key)
	}
	return keys
}

// Word is what s is under key, as a file writes it; "" for an unknown key.
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
// them; for a whole number, every one of its values.
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
// differs from the default; "" where none does.
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

// Use makes s the settings of p. An error says which thing it speaks of that p
// does not give.
func (p *Problem) Use(s Settings) error {
	if s.Direction.As == FromThing && p.Thing(s.Direction.Thing) == nil {
		var names []string
		for _, it := range p.Items {
			if it.directed() {
				names = append(names, it.Field("name").Written)
			}
		}
		return Source{}.Fault("settings.thing", "got", s.Direction.Thing, "names", strings.Join(names, ", "))
	}
	p.Settings = s
	return nil
}

// Thing is the thing given under a name that has a direction, or nil.
func (p *Problem) Thing(name string) *Item {
	for i := range p.Items {
		if it := &p.Items[i]; it.directed() && it.Field("name").Written == name {
			return it
		}
	}
	return nil
}

// Things lists the directions of what p gives, in degrees from +x, by name.
func (p *Problem) Things() entry.Things {
	all := entry.Things{}
	for _, it := range p.Items {
		if name := it.Field("name").Written; name != "" && it.directed() {
			all[name] = it.Field("direction").Value
		}
	}
	return all
}

// directed tells whether it has a direction.
func (it *Item) directed() bool { return it.Field("direction").Written != "" }
