package tutor

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"closingside/tutor/lesson"
	"closingside/tutor/sketch"
	"closingside/tutor/verdict"
)

func closed(t testing.TB, l *Lesson) *Work {
	w := NewWork(l, lesson.DefaultSettings())
	w.Sketch().Put(sketch.End{Arrow: 1}, sketch.End{Arrow: 0, Head: true})
	w.Sketch().Close(sketch.End{Arrow: 0}, sketch.End{Arrow: 1, Head: true})
	require.Equal(t, sketch.Estimating, w.Sketch().Stage())
	return w
}

func TestEstimates(t *testing.T) {
	rows := []struct {
		r, theta string
		kept     []bool
	}{
		{"700", "90", []bool{true, true}},
		{"0.7 kN", "1.5 rad", []bool{true, true}},
		{"560 N", "75°", []bool{true, true}},
		{"500", "60", []bool{false, false}},
		{"1200", "-90", []bool{false, false}},
		{"", "seventy", []bool{false, false}},
		{"300", "100", []bool{false, true}},
	}
	for _, row := range rows {
		t.Run(row.r+" "+row.theta, func(t *testing.T) {
			w := closed(t, barge(t))
			got := w.Sketch().Estimate(map[string]string{"R": row.r, "theta": row.theta})
			require.Len(t, got, 2)
			for i, r := range got {
				_, kept := w.Sketch().Estimated(r.Quantity)
				assert.Equal(t, row.kept[i], kept, "%s: %s", r.Quantity, r.Feedback)
				assert.Equal(t, kept, r.Verdict == verdict.Correct)
				assert.NotEmpty(t, r.Feedback)
			}
			assert.Equal(t, row.kept[0] && row.kept[1], w.Sketch().Stage() == sketch.Finished)
		})
	}
}

// A wrong value far from the learner's own estimate is compared with it; one
// that goes with it is not, nor is a right one.
func TestWrongValuesAreComparedWithTheEstimate(t *testing.T) {
	rows := []struct {
		quantity, entry string
		compared        bool
	}{
		{"R", "466000 N", true}, {"R", "270 N", true}, {"R", "713.7 N", false}, {"R", "682.6 N", false},
		{"theta", "30°", true}, {"theta", "86°", false}, {"theta", "88.2", false}, {"gamma", "93", false},
	}
	for _, row := range rows {
		t.Run(row.quantity+" "+row.entry, func(t *testing.T) {
			w := closed(t, barge(t))
			plain := w.Enter(row.quantity, row.entry).Feedback
			w = closed(t, barge(t))
			w.Sketch().Estimate(map[string]string{"R": "700", "theta": "90"})
			got := w.Enter(row.quantity, row.entry).Feedback
			if !row.compared {
				assert.Equal(t, plain, got)
				return
			}
			assert.Contains(t, got, plain)
			assert.Contains(t, got, map[string]string{"R": "700 N", "theta": "90°"}[row.quantity])
		})
	}
}

// An estimate that is kept lies near what is drawn, whatever the problem; the
// value itself is always kept.
func TestEstimatesGoWithTheSketch(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		m, turn := rapid.IntRange(20, 1000), rapid.IntRange(7, 173)
		n, d := strconv.Itoa, rapid.IntRange(-180, 180).Draw(rt, "d1")
		l := pair(t, n(m.Draw(rt, "m1"))+" N", n(d)+" deg", n(m.Draw(rt, "m2"))+" N", n(d+turn.Draw(rt, "turn"))+" deg")
		w := closed(t, l)
		r, theta := l.Quantity("R"), l.Quantity("theta")
		w.Sketch().Estimate(map[string]string{"R": strconv.FormatFloat(r.True, 'f', 3, 64), "theta": strconv.FormatFloat(theta.True, 'f', 3, 64)})
		require.Equal(rt, sketch.Finished, w.Sketch().Stage())
		w = closed(t, l)
		v := rapid.Float64Range(0.1, 3).Draw(rt, "share") * r.True
		w.Sketch().Estimate(map[string]string{"R": strconv.FormatFloat(v, 'f', 3, 64)})
		if kept, ok := w.Sketch().Estimated("R"); ok {
			require.InDelta(rt, r.True, kept, max(0.2*r.True, 0.12*(l.Truth("F1")+l.Truth("F2")))+0.001)
		}
	})
}

func TestSketchMayBeOff(t *testing.T) {
	s := lesson.DefaultSettings()
	s.Sketch = false
	w := NewWork(barge(t), s)
	assert.Nil(t, w.Sketch())
	assert.False(t, w.Sketch().IsOpen())
	assert.NotEmpty(t, w.Enter("R", "1 N").Feedback)
}
