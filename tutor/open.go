package tutor

import (
	"sync"

	"closingside/tutor/entry"
	"closingside/tutor/lesson"
)

// Lesson is a lesson with what judging needs of it.
type Lesson struct {
	*lesson.Lesson
	Other *Lesson // the other solution, where the statement allows two

	index map[string]int // see Places
	whole set            // see wholes
	once  sync.Once
	prep  *prepared // see ready
	words func() *entry.Vocabulary
}

// Open builds the lesson of p. An error is a sentence for whoever wrote the
// problem: why it can't be worked, or what would do.
func Open(p *lesson.Problem) (*Lesson, error) {
	built, err := p.Build()
	if err != nil {
		return nil, err
	}
	l := open(built)
	if built.Other != nil {
		l.Other = open(built.Other)
		l.Other.Other = l
	}
	return l, nil
}

func open(built *lesson.Lesson) *Lesson {
	l := &Lesson{Lesson: built, index: built.Places()}
	l.whole = l.wholes()
	l.words = sync.OnceValue(func() *entry.Vocabulary { return entry.NewVocabulary(l.Names()) })
	return l
}
