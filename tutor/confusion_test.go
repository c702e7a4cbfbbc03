package tutor

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
	"closingside/tutor/verdict"
)

// examples are lessons on which every row of the catalogue has a wrong value
// of its own.
func examples(t testing.TB) []*Lesson {
	return []*Lesson{
		barge(t),
		pair(t, "420 N", "-35 deg", "290 N", "-128 deg"),
		pair(t, "730 N", "160 deg", "510 N", "-127 deg"),
		pair(t, "250 N", "12 deg", "870 N", "71 deg"),
		pair(t, "250 N", "12 deg", "870 N", "143 deg"), // β obtuse, θ in the second quadrant
		bankLesson(t, &kinds.Components, 1),            // given by a slope
		bankLesson(t, &kinds.MissingForce, 0),          // a difference of components
		bankLesson(t, &kinds.MissingForce, 2),          // the smallest force
		bankLesson(t, &kinds.ParticleEquilibrium, 0),
		bankLesson(t, &kinds.ParticleEquilibrium, 1),
		bankLesson(t, &kinds.ParticleEquilibrium, 3),
		bankLesson(t, &kinds.ParticleEquilibrium, 5),
		bankLesson(t, &kinds.ParticleEquilibrium, 6),
	}
}

// example is a wrong value that one row makes, where its verdict is that row.
type example struct {
	lesson   *Lesson
	quantity string
	entry    string
}

// wrongExample looks for a value that the row id makes and that is read as
// that row: the one shared with the fewest others.
func wrongExample(t testing.TB, id string, lessons []*Lesson) (best example, shared int) {
	for _, l := range lessons {
		for i := range l.Quantities {
			q := &l.Quantities[i]
			if q.Given {
				continue
			}
			for _, o := range NewWork(l, lesson.DefaultSettings()).now(q).slipsIn(i) {
				if !slices.Contains(o.ids, id) || shared > 0 && len(o.ids) >= shared {
					continue
				}
				entry := lesson.Digits{Magnitude: 4, Angle: 2}.Written(q.Dim, o.value)
				r := NewWork(l, lesson.DefaultSettings()).Enter(q.Name, entry)
				if r.Verdict == verdict.SlipFound && r.Slips[0].Probability >= sureEnough && slices.Contains(r.Slips[0].IDs, id) {
					best, shared = example{l, q.Name, entry}, len(o.ids)
				}
			}
		}
	}
	return best, shared
}

// bankLessons are the lessons of every kind's bank.
func bankLessons(t testing.TB) []*Lesson {
	var all []*Lesson
	for _, k := range kinds.All {
		for _, p := range k.BankProblems() {
			l, err := Open(p)
			require.NoError(t, err)
			all = append(all, l)
		}
	}
	return all
}

// Each row has a wrong example that triggers this row, named first, and the
// right value triggers none. The matrix is printed with -v.
func TestConfusionMatrix(t *testing.T) {
	lessons, alone := examples(t), 0
	for _, row := range slips.Catalogue() {
		if row.ID == slips.BranchesMixed { // needs an entry before: TestMixedSolutionsAreNamed
			alone++
			continue
		}
		t.Run(row.ID, func(t *testing.T) {
			e, shared := wrongExample(t, row.ID, lessons)
			if shared == 0 { // a row of one kind
				e, shared = wrongExample(t, row.ID, bankLessons(t))
			}
			require.Positive(t, shared, "no value names %s", row.ID)
			if shared == 1 {
				alone++
			}
			w := NewWork(e.lesson, lesson.DefaultSettings())
			r := w.Enter(e.quantity, e.entry)
			require.Equal(t, verdict.SlipFound, r.Verdict)
			t.Logf("%-26s %-6s %-9s %.2f %s", row.ID, e.quantity, e.entry, r.Slips[0].Probability, strings.Join(r.Slips[0].IDs, " "))
			assert.NotContains(t, r.Feedback, e.lesson.Show(e.lesson.Quantity(e.quantity), e.lesson.Truth(e.quantity), w.Settings.Answer))
			q := e.lesson.Quantity(e.quantity)
			right := w.Enter(e.quantity, strconv.FormatFloat(roundedEntry(q, q.True), 'f', -1, 64))
			assert.Equal(t, verdict.Correct, right.Verdict)
			assert.Empty(t, right.Slips)
		})
	}
	assert.GreaterOrEqual(t, alone, len(slips.Catalogue())-15, "rows with a value of their own")
}
