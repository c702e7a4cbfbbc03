package lesson

import (
	"slices"
	"strconv"
	"strings"
)

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
