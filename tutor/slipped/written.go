package slipped

import (
	"closingside/tutor/lesson"
	"closingside/tutor/slips"
)

// Value is a value written down wrongly.
type Value struct {
	Row   *slips.Slip
	Value float64
	Prior float64 // weight among slips: the row's, over its ways to write the value
}

// Values lists what every slip in writing a value down makes of v, a value of q.
func Values(l *lesson.Lesson, q *lesson.Quantity, v float64) []Value {
	var all []Value
	for _, row := range slips.Catalogue() {
		if row.Scope != slips.InAnswer {
			continue
		}
		written := row.Written(&slips.Context{Lesson: l, Quantity: q}, v)
		for _, x := range written {
			all = append(all, Value{row, x, row.Prior / float64(len(written))})
		}
	}
	return all
}
