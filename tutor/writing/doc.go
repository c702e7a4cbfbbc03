// Package writing is how a value comes to stand on paper: rounded or cut off,
// worked with all digits or with few, its sign left out, its zeros meant or not.
//
//	h := writing.HabitFor(q, v, half) // who writes it so
//	p := h.Chance(q, v, half, x, blur) // how likely x is typed as v ± half
//
// A [Drift] gathers what rounding on the way does to a value, a [Spread] is what
// is then not known of it, a [Habit] a mix of those who keep all digits, four and
// three. The shares are judgement, each beside its constant. The package knows a
// quantity and an entry; which value was meant is for package tutor.
package writing
