package kinds

import (
	"math"

	"gonum.org/v1/gonum/spatial/r2"

	"closingside/statics"
)

// question says which values of the missing force and of the resultant are
// given.
type question uint8

// The questions.
const (
	wholeResultant question = iota // R and θ given
	bothDirections                 // θ₂ and θ
	sizeAndTurn                    // F₂ and θ: up to two solutions
	turnAndSize                    // θ₂ and R: up to two solutions
	smallestForce                  // θ, and F₂ the smallest
)

// close finds the sides that are not given. Where there are two ways to, far
// chooses the one that makes the unknown side longer: α is acute there. It
// returns the key of the reason where there is no such triangle.
func (t *triangle) close(far bool) string {
	f := t.first.vec
	unitAt := func(p pull) r2.Vec { return statics.Polar(1, p.heading.Angle()) }
	switch t.ask {
	case wholeResultant:
		t.second.vec = r2.Sub(t.result.vec, f)
	case bothDirections:
		u, v := unitAt(t.second), unitAt(t.result)
		across := r2.Cross(u, v)
		if math.Abs(across) < 1e-9 {
			return "parallel"
		}
		size := -r2.Cross(f, v) / across
		if size <= 0 || -r2.Cross(f, u)/across <= 0 {
			return "sense"
		}
		t.second.vec = r2.Scale(size, u)
	case smallestForce:
		v := unitAt(t.result)
		if r2.Dot(f, v) <= 0 {
			return "backwards"
		}
		t.second.vec = r2.Sub(r2.Scale(r2.Dot(f, v), v), f)
	case sizeAndTurn:
		v := unitAt(t.result)
		reach, ok := leg(t.second.size, r2.Cross(v, f), far)
		if !ok {
			return "short"
		}
		t.second.vec = r2.Sub(r2.Scale(r2.Dot(f, v)+reach, v), f)
		if r2.Dot(f, v)+reach <= 0 {
			return "backwards"
		}
	case turnAndSize:
		u := unitAt(t.second)
		reach, ok := leg(t.result.size, r2.Cross(u, f), far)
		if !ok {
			return "short"
		}
		if reach-r2.Dot(f, u) <= 0 {
			return "sense"
		}
		t.second.vec = r2.Scale(reach-r2.Dot(f, u), u)
	}
	return t.measure()
}

// leg is the part of a side of the given size along a line that it reaches
// over a distance across; forwards where it is to be far. ok is false where the
// side is too short, or only just reaches, so that two triangles run together.
func leg(size, across float64, far bool) (_ float64, ok bool) {
	const just = 1e-3 // of the side, squared: an angle within 2° of 90°
	along := size*size - across*across
	if along < just*size*size {
		return 0, false
	}
	if far {
		return math.Sqrt(along), true
	}
	return -math.Sqrt(along), true
}

// measure fills in what follows from the vectors; it returns the key of the
// reason where they make no triangle worth drawing.
func (t *triangle) measure() string {
	t.result.vec = r2.Add(t.first.vec, t.second.vec)
	t.second.complete(t.ask == bothDirections || t.ask == turnAndSize)
	t.result.complete(t.ask != turnAndSize)
	t.alpha = statics.Between(t.second.vec, t.result.vec).Degrees()
	t.beta = statics.Between(t.first.vec, t.result.vec).Degrees()
	t.gamma = statics.Between(r2.Scale(-1, t.first.vec), t.second.vec).Degrees()
	t.ccw = r2.Cross(t.first.vec, t.second.vec) > 0
	least := min(t.first.size, t.second.size, t.result.size)
	most := max(t.first.size, t.second.size, t.result.size)
	switch {
	case min(t.alpha, t.beta, t.gamma) < minInterior || max(t.alpha, t.beta, t.gamma) > 180-minInterior:
		return "parallel"
	case most > maxRatio*least:
		return "ratio"
	}
	return ""
}
