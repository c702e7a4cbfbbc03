package tutor

import (
	"math/rand/v2"

	"closingside/statics"
)

// Draw draws the numbers of a problem. All draws are of integers from a PCG
// generator (O'Neill 2014, as math/rand/v2 fixes it), so a seed gives the same
// problem on every machine.
type Draw struct{ src *rand.PCG }

// NewDraw starts a sequence of draws. The stream tells kinds apart.
func NewDraw(seed, stream uint64) *Draw { return &Draw{rand.NewPCG(seed, stream)} }

// Below draws a whole number from 0 to n−1; n must be positive. Draws from the
// uneven end of the range are rejected, so every number is equally likely.
func (d *Draw) Below(n int) int {
	bound := uint64(n)
	limit := -bound % bound // 2⁶⁴ mod n
	for {
		if v := d.src.Uint64(); v >= limit {
			return int(v % bound)
		}
	}
}

// Step draws one of lo, lo+step, … up to hi.
func (d *Draw) Step(lo, hi, step int) int { return lo + step*d.Below((hi-lo)/step+1) }

// Generate draws a fair problem of kind k by seed. Only the first so many
// draws are tried; a kind whose draws are so rarely fair is a bug.
func Generate(k *Kind, seed uint64) *Problem {
	var stream uint64
	for _, r := range k.Name {
		stream = stream*31 + uint64(r)
	}
	d := NewDraw(seed, stream)
	for range 10_000 {
		p, err := ReadProblem(k.Draw(d))
		if err != nil {
			continue
		}
		if l, err := Open(p); err == nil && l.fair() {
			return p
		}
	}
	panic("tutor: no fair problem of kind " + k.Name)
}

// fair tells whether a lesson is fit to be set: no angle of the figure near 0°
// or 180°, none that is nearly or exactly a right angle.
func (l *Lesson) fair() bool {
	for _, q := range l.Quantities {
		if q.Given || q.Turns || q.Dim != statics.DimAngle {
			continue
		}
		if q.True < 12 || q.True > 168 || q.True > 86 && q.True < 94 {
			return false
		}
	}
	return true
}
