package tutor

import (
	"flag"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
)

// What many tests begin with: lessons, work on them, and how much is drawn.

// Generate draws a fair problem of kind k by seed: draw.Generate, which rests on
// this package (see drawn_test.go).
var Generate func(k *lesson.Kind, seed uint64) *lesson.Problem

var update = flag.Bool("update", false, "write the golden files anew")

// solvedBy is the lesson of a problem as written.
func solvedBy(t testing.TB, src lesson.Source) *Lesson {
	t.Helper()
	p, err := kinds.All.Read(src)
	require.NoError(t, err)
	l, err := Open(p)
	require.NoError(t, err)
	return l
}

// enterAll is the reply to the last of the entries "Fx 41.16; Fy 588.6", made in turn
// on a fresh sheet of l.
func enterAll(l *Lesson, entries, between string) Reply {
	w := NewWork(l, lesson.DefaultSettings())
	var r Reply
	for _, e := range strings.Split(entries, between) {
		name, value, _ := strings.Cut(e, " ")
		r = w.Enter(name, value)
	}
	return r
}

// bankLesson is the i-th lesson of a kind's bank.
func bankLesson(t testing.TB, k *lesson.Kind, i int) *Lesson {
	t.Helper()
	l, err := Open(k.BankProblems()[i])
	require.NoError(t, err)
	return l
}

// pair is the two-forces problem of two magnitudes and directions as written.
func pair(t testing.TB, m1, d1, m2, d2 string) *Lesson {
	t.Helper()
	return solvedBy(t, kinds.TwoForcesSource("Two tugs hold a barge.", kinds.ForceSource("P", m1, d1), kinds.ForceSource("Q", m2, d2)))
}

// barge is the lesson most tests stand on: γ = 87°, F₂ the larger.
func barge(t testing.TB) *Lesson { return pair(t, "340 N", "25 deg", "610 N", "118 deg") }

// crate is the bank's first problem: T1 40° above −x, T2 30° above +x, 120 kg.
func crate(t testing.TB) *Work {
	return NewWork(bankLesson(t, &kinds.ParticleEquilibrium, 0), lesson.DefaultSettings())
}

// asking is work on a pair of forces with settings given as "key: value" lines.
func asking(t *testing.T, l *Lesson, lines ...string) *Work {
	t.Helper()
	check := lesson.Branch(lesson.CheckKey)
	for _, line := range lines {
		key, value, _ := strings.Cut(line, ": ")
		check.Kids = append(check.Kids, lesson.Leaf(key, value))
	}
	s, err := lesson.ReadSettings(check)
	require.NoError(t, err)
	require.NoError(t, l.Problem.Use(s))
	l, err = Open(l.Problem)
	require.NoError(t, err)
	return NewWork(l, s)
}

// full is the number of random problems of the band's property tests; the
// default keeps the package's tests quick.
var full = flag.Int("problems", 1000, "random problems of the band tests")

// problems is that number, less in a short run.
func problems() int {
	if testing.Short() {
		return min(*full, 300)
	}
	return *full
}

// draws is the number of random lessons the recall tests use.
func draws() uint64 { return uint64(max(20, problems()/40)) }

// pulledDown is a problem at rest under a gravity of its own.
func pulledDown(g string, parts ...lesson.Source) lesson.Source {
	src := kinds.EquilibriumSource("", parts...)
	src.Kids = append(src.Kids, lesson.Leaf("gravity", g))
	return src
}
