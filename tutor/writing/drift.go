package writing

import (
	"math"

	"closingside/statics"
	"closingside/tutor/lesson"
)

// Spread is what is not known of the value that a hypothesis predicts: how far
// students move it who keep 4 or 3 digits on the way, and what comes out for
// those who go on from what the calculator holds rather than from what they
// wrote. Standard deviations; shift is a difference.
type Spread struct {
	four, three float64
	shift       float64 // from entries as typed to the right values behind them
	held        float64 // of the digits that wrong entries don't show
	exact       bool    // see Exact
}

// Exact is what is not known of a value that no rounding moves, as a sum of whole
// degrees: nothing.
var Exact = Spread{exact: true}

// habits are the digits kept on the way that spread speaks of.
var habits = [2]lesson.Digits{{Magnitude: 4, Angle: 2}, {Magnitude: 3, Angle: 1}}

// Drift is how a value may be off: variances, and the shift.
type Drift struct{ Four, Three, Held, Shift float64 }

// Add adds what o does to a value that moves by slope of it; nothing where that is
// NaN.
func (d *Drift) Add(slope float64, o Drift) {
	if math.IsNaN(slope) {
		return
	}
	sq := slope * slope
	d.Four += sq * o.Four
	d.Three += sq * o.Three
	d.Held += sq * o.Held
	d.Shift += slope * o.Shift
}

// Weigh adds so much of o to a sum of drifts.
func (d *Drift) Weigh(by float64, o Drift) {
	d.Four += by * o.Four
	d.Three += by * o.Three
	d.Held += by * o.Held
	d.Shift += by * o.Shift
}

// Over is d divided by a sum of weights.
func (d Drift) Over(sum float64) Drift {
	return Drift{d.Four / sum, d.Three / sum, d.Held / sum, d.Shift / sum}
}

// Spread is a drift in standard deviations.
func (d Drift) Spread() Spread {
	return Spread{four: math.Sqrt(d.Four), three: math.Sqrt(d.Three), shift: d.Shift, held: math.Sqrt(d.Held)}
}

// Round adds what rounding v does, of which so much arrives. Who keeps three
// digits is off by ten times as much as who keeps four.
func (d *Drift) Round(slope, v float64, dim statics.Dimension) {
	if e := slope * habits[0].HalfUnit(dim, v); !math.IsNaN(e) {
		d.Four += e * e / 3
		d.Three += 100 * e * e / 3
	}
}
