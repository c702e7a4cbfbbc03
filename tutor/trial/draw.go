package trial

import (
	"closingside/tutor/lesson"
)

// die draws what a learner does.
type die struct{ *lesson.Draw }

const fine = 1_000_000 // chances are counted in millionths

// chance is true in a share p of cases.
func (d die) chance(p float64) bool { return d.Below(fine) < int(p*fine+0.5) }

// unit draws a number from 0 up to, not with, 1.
func (d die) unit() float64 { return float64(d.Below(fine)) / fine }

// weighted draws an index by weight; −1 where all weights are 0.
func (d die) weighted(weights []float64) int {
	sum := 0.0
	for _, w := range weights {
		sum += w
	}
	x := d.unit() * sum
	for i, w := range weights {
		if x < w {
			return i
		}
		x -= w
	}
	return -1
}

// one draws one of all, each as likely as another.
func one[T any](d die, all []T) T { return all[d.Below(len(all))] }
