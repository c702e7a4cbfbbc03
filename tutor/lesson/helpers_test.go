package lesson_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
)

// What many tests of lessons begin with.

// built is the lesson of a problem as written.
func built(t testing.TB, src lesson.Source) *lesson.Lesson {
	t.Helper()
	p, err := kinds.All.Read(src)
	require.NoError(t, err)
	l, err := p.Build()
	require.NoError(t, err)
	return l
}

// pair is the two-forces problem of two magnitudes and directions as written.
func pair(t testing.TB, m1, d1, m2, d2 string) *lesson.Lesson {
	t.Helper()
	return built(t, kinds.TwoForcesSource("Two tugs hold a barge.", kinds.ForceSource("P", m1, d1), kinds.ForceSource("Q", m2, d2)))
}

// opened is the lesson of a code.
func opened(code string) (*lesson.Lesson, error) {
	p, err := kinds.All.Decode(code)
	if err != nil {
		return nil, err
	}
	return p.Build()
}

// drawn is the first problem that a kind draws and that can be worked.
func drawn(t testing.TB, k *lesson.Kind) *lesson.Problem {
	t.Helper()
	d := lesson.NewDraw(3, 0)
	for range 100 {
		p, err := k.Read(k.Draw(d))
		require.NoError(t, err)
		if _, err = p.Build(); err == nil {
			return p
		}
	}
	t.Fatalf("%s draws nothing that can be worked", k.Name)
	return nil
}
