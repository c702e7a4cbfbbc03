package tutor

import (
	"math"
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"
	"testing"

	"closingside/tutor/entry"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"

	"github.com/stretchr/testify/assert"
)

// misplaced tells whether an entry is taken for one with its point misplaced,
// as a direction beyond a turn may be.
func misplaced(r Reply) bool {
	return r.Verdict == verdict.SlipFound && slices.ContainsFunc(r.Slips[0].IDs, func(id string) bool { return strings.HasSuffix(id, "decimal-place") })
}

// An angle of one or two decimals gets the same verdict written another way: a
// turn more or less, in radians, in minutes and seconds.
func TestEqualAnglesGetTheSameVerdict(t *testing.T) {
	eachAngle(t, 6, func(seed string, w *Work, q *lesson.Quantity, v float64) {
		digits := 1 + int(math.Abs(v))%2
		tenths := math.Round(v * 10)
		if digits == 2 && math.Remainder(tenths, 10) == 0 {
			tenths++ // a zero at the end is not seen in radians
		}
		v = tenths / math.Pow10(digits)
		want := w.judge(q, strconv.FormatFloat(v, 'f', digits, 64)).Verdict
		ways := []string{strconv.FormatFloat(v*math.Pi/180, 'f', 6, 64) + " rad", strconv.FormatFloat(v*math.Pi/180, 'f', 9, 64) + " rad", minutes(v)}
		if q.Turns || v >= 0 {
			ways = append(ways, strconv.FormatFloat(v+360, 'f', digits, 64), strconv.FormatFloat(v-360, 'f', digits, 64))
		}
		for _, text := range ways {
			if got := w.judge(q, text); !misplaced(got) {
				assert.Equal(t, want, got.Verdict, "%s: %s = %v written %s: %v", seed, q.Name, v, text, got.Slips)
			}
		}
	})
}

// eachAngle calls do for right angles, angles next to them, and wrong ones.
func eachAngle(t *testing.T, seed uint64, do func(seed string, w *Work, q *lesson.Quantity, v float64)) {
	rng := rand.New(rand.NewPCG(seed, 1))
	for n := range problems() / 40 {
		l := randomLesson(t, rng)
		w := NewWork(l, lesson.DefaultSettings())
		for _, name := range []string{"theta", "gamma", "beta"} {
			q := l.Quantity(name)
			for _, v := range []float64{q.True, q.True + 0.15, q.True + 7, 180 - q.True, -q.True} {
				do("seed "+strconv.Itoa(int(seed))+", problem "+strconv.Itoa(n), w, q, v)
			}
		}
	}
}

// Where the other writing is finer or coarser than the first, as seconds and
// radians of an angle of four decimals are, right or wrong doesn't depend on it;
// which mistake is seen may.
func TestFinerWritingLeavesRightRight(t *testing.T) {
	compared, differ := 0, 0
	eachAngle(t, 6, func(seed string, w *Work, q *lesson.Quantity, v float64) {
		v = math.Round(v*3600) / 3600
		right := func(v float64) bool {
			return w.right(q, entry.Reading{Value: v, Form: entry.Number, Halves: []float64{5e-5}})
		}
		if right(v-1e-4) != right(v+1e-4) { // on the very edge: what is cut off decides
			return
		}
		want := w.judge(q, strconv.FormatFloat(v, 'f', 4, 64)).Verdict
		for _, text := range []string{strconv.FormatFloat(v*math.Pi/180, 'f', 6, 64) + " rad", minutes(v)} {
			got := w.judge(q, text)
			compared++
			assert.Equal(t, want == verdict.Correct, got.Verdict == verdict.Correct, "%s: %s = %v written %s: %s for %s", seed, q.Name, v, text, got.Verdict, want)
			if want != got.Verdict {
				differ++
			}
		}
	})
	t.Logf("%d compared, %d differ", compared, differ)
	assert.LessOrEqual(t, differ, compared/40)
}

// minutes writes an angle of whole seconds in degrees, minutes and seconds.
func minutes(deg float64) string {
	s := int(math.Round(math.Abs(deg) * 3600))
	text := strconv.Itoa(s/3600) + "°" + strconv.Itoa(s/60%60) + "′" + strconv.Itoa(s%60) + "″"
	if deg < 0 {
		return "-" + text
	}
	return text
}
