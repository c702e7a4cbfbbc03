package trial

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// BenchmarkCheck is the time of a check with a full diagnosis, on what
// simulated learners write. Aim: a median of at most 1 ms.
func BenchmarkCheck(b *testing.B) {
	var s Speed
	var err error
	for b.Loop() {
		s, err = Measure(bank(), Options{Seed: 1, Learners: 8}, 3)
	}
	require.NoError(b, err)
	require.Greater(b, s.Checks, 100)
	ms := func(d time.Duration) float64 { return float64(d) / float64(time.Millisecond) }
	b.ReportMetric(ms(s.Median), "median-ms")
	b.ReportMetric(ms(s.P99), "p99-ms")
	b.ReportMetric(ms(s.First), "first-median-ms")
	b.ReportMetric(ms(s.Worst), "first-p99-ms")
	b.ReportMetric(ms(s.Clean), "clean-median-ms")
	b.ReportMetric(ms(s.Ready), "ready-median-ms")
	b.ReportMetric(ms(s.ReadyWorst), "ready-p99-ms")
	b.ReportMetric(s.Allocs, "allocs/check")
	b.ReportMetric(0, "ns/op")
}
