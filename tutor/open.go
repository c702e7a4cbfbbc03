package tutor

import (
	"errors"
	"slices"

	"closingside/tutor/text"
)

// Open builds the lesson of p. An error is a sentence for whoever wrote the
// problem: why it can't be worked, or what would do.
func Open(p *Problem) (*Lesson, error) {
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
