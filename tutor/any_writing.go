package tutor

import (
	"math"
	"slices"

	"closingside/tutor/entry"
	"closingside/tutor/lesson"
)

// finestAngle is how closely an angle of a degree or more is compared with what
// slips give, in degrees: closer than that it depends on the unit it is written
// in. A smaller one, such as a sine written down as the angle, has its digits
// further behind the point. One with all digits of a calculator, in whichever unit,
// is compared to finestFull.
const (
	finestAngle = 5e-4
	finestFull  = 1e-6
)

// allDigits tells whether an angle, half a unit of which is written, has all digits of
// a calculator: so many were typed, and they are not those of a few with zeros or in
// another unit.
func allDigits(v, half float64) bool {
	return half < finestFull/10 && math.Abs(math.Remainder(v, finestAngle/5)) > finestFull/10
}

// finestRel is how closely any value can be compared, against its size: two
// formulas for it differ by that when worked with the calculator's last digits.
const finestRel = 1e-12

// anyWriting is an entry for q as it would be in any writing of the same value:
// a direction however many turns it is written with, an angle of the figure
// that is a turn too large or too small; in degrees, radians, or minutes and
// seconds; with more digits than a calculator works with.
func anyWriting(q *lesson.Quantity, r entry.Reading) entry.Reading {
	fine := finestRel * math.Abs(r.Value)
	switch {
	case q.Turns:
		r.Value = math.Round(lesson.Wrap(r.Value)*1e9) / 1e9
	case q.IsAngle() && r.Value >= 360 && r.Value < 540:
		r.Value -= 360
	case q.IsAngle() && r.Value < -180 && r.Value > -360:
		r.Value += 360
	}
	if q.IsAngle() && r.Form != entry.Expression {
		fine = finestAngle * min(1, math.Abs(r.Value))
		if allDigits(r.Value, r.Halves[0]) {
			fine = min(fine, finestFull)
		}
		if fine == finestAngle {
			r.Value = math.Round(r.Value/fine*5) * fine / 5
		}
	}
	r.Halves = slices.Clone(r.Halves)
	for i := range r.Halves {
		r.Halves[i] = max(r.Halves[i], fine)
	}
	return r
}
