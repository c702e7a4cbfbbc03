package lesson

import (
	"errors"
	"strings"

	"closingside/tutor/entry"
)

// Use makes s the settings of p. An error, a *SourceError without a place, says
// which thing s speaks of that p does not give.
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

// checkSettings refuses settings that speak of what p does not give.
func (p *Problem) checkSettings(src Source) error {
	err := p.Use(p.Settings)
	for _, kid := range src.Kids {
		if fault := (*SourceError)(nil); kid.Key == CheckKey && errors.As(err, &fault) {
			fault.Line, fault.Col = kid.Line, kid.Col
			for _, o := range kid.Kids {
				if o.Key == direction.key {
					fault.Line, fault.Col = o.Line, o.Col
				}
			}
		}
	}
	return err
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
