package tutor

import (
	"testing"

	"github.com/stretchr/testify/require"

	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// The table of single slips is made anew after every entry.
func BenchmarkTable(b *testing.B) {
	l := barge(b)
	l.ready()
	for _, name := range []string{"R", "theta"} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			n := 0
			for b.Loop() {
				w := NewWork(l, lesson.DefaultSettings())
				n = len(w.now(l.Quantity(name)).outcomes(l.index[name]).cells)
			}
			require.Greater(b, n, 40)
			b.ReportMetric(float64(n), "values")
		})
	}
}

func BenchmarkEnterWrong(b *testing.B) {
	l := barge(b)
	l.ready()
	for b.Loop() {
		w := NewWork(l, lesson.DefaultSettings())
		require.Equal(b, verdict.SlipFound, w.Enter("R", "713.7 N").Verdict)
	}
}
