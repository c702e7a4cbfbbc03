package kinds

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/spatial/r2"

	"closingside/tutor"
	"closingside/tutor/lesson"
)

// What many tests of kinds begin with.

// lessonOf is the lesson of a problem as written.
func lessonOf(t checker, src lesson.Source) *tutor.Lesson {
	t.Helper()
	p, err := All.Read(src)
	require.NoError(t, err)
	l, err := tutor.Open(p)
	require.NoError(t, err)
	return l
}

// refused checks that a statement reads, but is refused as a problem with a sentence
// that holds says.
func refused(t *testing.T, src lesson.Source, says string) {
	t.Helper()
	p, err := All.Read(src)
	require.NoError(t, err)
	_, err = tutor.Open(p)
	require.ErrorContains(t, err, says)
	assert.NotRegexp(t, `\d (N|kN|lb|kip)\b`, err, "what is sought stays to be found")
}

// banked is the i-th lesson of a kind's bank.
func banked(t testing.TB, k *lesson.Kind, i int) *tutor.Lesson {
	t.Helper()
	l, err := tutor.Open(k.BankProblems()[i])
	require.NoError(t, err)
	return l
}

// pulls is the two-forces problem of two magnitudes and directions as written.
func pulls(t testing.TB, m1, d1, m2, d2 string) *tutor.Lesson {
	t.Helper()
	return lessonOf(t, TwoForcesSource("Two tugs hold a barge.", ForceSource("P", m1, d1), ForceSource("Q", m2, d2)))
}

// decoded opens the problem of a code.
func decoded(code string) (*tutor.Lesson, error) {
	p, err := All.Decode(code)
	if err != nil {
		return nil, err
	}
	return tutor.Open(p)
}

// rightEntry is an entry for q that is right: the value to so many digits, or the
// equation.
func rightEntry(l *tutor.Lesson, q *lesson.Quantity, d lesson.Digits) string {
	if q.Equation {
		return l.Text(q.Routes[0].Tree) + " = 0"
	}
	return l.Show(q, q.True, d)
}

// balance is the sum of the forces on the particle of a lesson of this kind,
// which is zero, and of their sizes.
func balance(l *lesson.Lesson) (sum r2.Vec, size float64) {
	for _, h := range partsOf(l).parts {
		sum = r2.Add(sum, h.acts())
		size += h.size
	}
	return sum, size
}
