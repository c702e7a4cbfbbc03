package lesson

import (
	"cmp"
	"errors"
	"slices"
	"strconv"
	"strings"

	"closingside/statics"
	"closingside/tutor/text"
)

// Problem is a statement understood: its kind and what it gives.
type Problem struct {
	Kind  *Kind
	Story string
	Items []Item

	Settings Settings // how answers are checked
}

// Title is what a problem is called in a list: its story, or its kind's title
// where it has none.
func (p *Problem) Title() string { return cmp.Or(p.Story, p.Kind.Title()) }

// Item is one thing a statement gives, such as a force.
type Item struct {
	Group  string
	Fields []Field
	Line   int
}

// Field is one value of an Item. A name and a choice have Written alone.
type Field struct {
	Key     string
	Written string          // as the statement writes it; "" where it is not given
	Value   float64         // a quantity in Unit; a direction in degrees from +x
	Unit    statics.Unit    // of a quantity
	Heading statics.Heading // of a direction
}

// Field returns the field of it called key; a zero Field where there is none.
func (it *Item) Field(key string) Field {
	for _, f := range it.Fields {
		if f.Key == key {
			return f
		}
	}
	return Field{Key: key}
}

// Shown is the field as a sentence or a figure shows it: as written, with a
// minus for the hyphen of a keyboard.
func (f Field) Shown() string {
	if rest, negative := strings.CutPrefix(f.Written, "-"); negative {
		return "−" + rest
	}
	return f.Written
}

// Given tells whether the statement gives the field.
func (f Field) Given() bool { return f.Written != "" }

// Group returns the items of one group, in order; nil where none is given.
func (p *Problem) Group(key string) []Item {
	var items []Item
	for _, it := range p.Items {
		if it.Group == key {
			items = append(items, it)
		}
	}
	return items
}

const (
	maxStory = 400 // runes
	maxName  = 12

	maxMagnitude = 1e12 // in the unit written
)

// Read understands a Source as a problem of kind k. An error is a *SourceError.
func (k *Kind) Read(src Source) (*Problem, error) {
	p := &Problem{Kind: k, Settings: DefaultSettings()}
	seen := map[string]bool{}
	for _, kid := range src.Kids {
		if seen[kid.Key] {
			return nil, kid.Fault("problem.twice", "key", kid.Key)
		}
		seen[kid.Key] = true
		if err := p.readKey(kid); err != nil {
			return nil, err
		}
	}
	var inOrder []Item
	for _, g := range k.Groups {
		items := p.Group(g.Key)
		if n := len(items); n < g.Min || n > g.Max {
			at := src
			for _, kid := range src.Kids {
				if kid.Key == g.Key {
					at = kid
				}
			}
			return nil, g.miscounted(at, n)
		}
		inOrder = append(inOrder, items...)
	}
	p.Items = inOrder
	if err := p.checkNames(src); err != nil {
		return nil, err
	}
	return p, p.checkSettings(src)
}

func (p *Problem) readKey(kid Source) error {
	switch kid.Key {
	case "kind":
		return nil
	case "story":
		if kid.Kids != nil {
			return kid.Fault("problem.value", "key", kid.Key)
		}
		if len([]rune(kid.Text)) > maxStory {
			return kid.Fault("problem.story.long", "max", strconv.Itoa(maxStory))
		}
		p.Story = strings.TrimSpace(kid.Text)
		return nil
	case CheckKey:
		var err error
		p.Settings, err = ReadSettings(kid)
		return err
	}
	for _, g := range p.Kind.Groups {
		if g.Key == kid.Key {
			return p.readGroup(g, kid)
		}
	}
	return kid.Fault("problem.key.unknown", "key", kid.Key, "keys", strings.Join(p.Kind.keys(), ", "))
}

func (k *Kind) keys() []string {
	keys := []string{"kind", "story", CheckKey}
	for _, g := range k.Groups {
		keys = append(keys, g.Key)
	}
	return keys
}

// Build makes the lesson of p. An error is a sentence for whoever wrote the
// problem: why it can't be worked, or what would do.
func (p *Problem) Build() (*Lesson, error) {
	l, err := p.Kind.Build(p)
	if err != nil {
		return nil, err
	}
	l.Kind, l.Problem = p.Kind, p
	if m := p.Settings.Method; m != AnyMethod && !slices.ContainsFunc(l.Ways, func(w Way) bool { return w.Method == m }) {
		return nil, errors.New(text.Say("settings.method"))
	}
	if err := l.checkNames(); err != nil {
		return nil, err
	}
	l.seal()
	if o := l.Other; o != nil {
		o.Kind, o.Problem = p.Kind, p
		l.tie(o.seal())
	}
	return l, nil
}
