package lesson

import (
	"hash/fnv"
	"math/rand/v2"
	"strconv"
)

// Draw draws the numbers of a problem. All draws are of integers from a PCG
// generator (O'Neill 2014, as math/rand/v2 fixes it), so a seed gives the same
// problem on every machine.
type Draw struct {
	src    *rand.PCG
	Within [4]bool // the quadrants that Direction draws from
}

// NewDraw starts a sequence of draws, from all quadrants. Sequences of one seed and
// different streams have nothing to do with each other.
func NewDraw(seed, stream uint64) *Draw {
	return &Draw{src: rand.NewPCG(seed, stream), Within: [4]bool{true, true, true, true}}
}

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

// Step draws one of lo, lo+step, … up to hi; hi is at least lo, step positive.
func (d *Draw) Step(lo, hi, step int) int { return lo + step*d.Below((hi-lo)/step+1) }

// Direction draws a whole direction from −180 to 179 degrees, a multiple of
// step (a divisor of 90), in a quadrant where directions are wanted. Each
// quadrant holds the axis it begins with.
func (d *Draw) Direction(step int) int {
	deg := 90*d.Quadrant() + d.Step(0, 90-step, step)
	if deg >= 180 {
		deg -= 360
	}
	return deg
}

// Quadrant draws one of the quadrants where directions are wanted, from 0 to 3.
func (d *Draw) Quadrant() int {
	var open []int
	for q, on := range d.Within {
		if on {
			open = append(open, q)
		}
	}
	if len(open) == 0 { // nothing is wanted; what is drawn will not be kept
		open = []int{0}
	}
	return open[d.Below(len(open))]
}

// Heading draws a direction in one of the ways books give it: in degrees, by a
// slope, by a bearing, or from the nearer end of the x axis.
func (d *Draw) Heading() string {
	form := d.Below(4)
	if form == 0 {
		return strconv.Itoa(d.Direction(1)) + " deg"
	}
	q := d.Quadrant()
	side, level := "right", "+x"
	east, north, up, above := " E", "N ", " up ", " deg above "
	if q == 1 || q == 2 {
		side, level, east = "left", "-x", " W"
	}
	if q > 1 {
		north, up, above = "S ", " down ", " deg below "
	}
	turn := strconv.Itoa(d.Step(13, 77, 1))
	switch form {
	case 1:
		slopes := []string{"3:4", "4:3", "5:12", "12:5", "8:15", "15:8", "1:2", "2:1", "2:3"}
		return slopes[d.Below(len(slopes))] + up + side
	case 2:
		return north + turn + east
	}
	return turn + above + level
}

// Hash is the 64-bit FNV-1a hash of the parts, each followed by a line end.
func Hash(parts ...string) uint64 {
	h := fnv.New64a()
	for _, p := range parts {
		_, _ = h.Write([]byte(p + "\n")) // never fails
	}
	return h.Sum64()
}

// Letters is a hash in n letters and digits that are not mistaken for each other
// (base 30, the lowest first).
func Letters(h uint64, n int) string {
	const alphabet = "23456789abcdefghjkmnpqrstuvwxyz"
	b := make([]byte, n)
	for i := range b {
		b[i] = alphabet[h%uint64(len(alphabet))]
		h /= uint64(len(alphabet))
	}
	return string(b)
}
