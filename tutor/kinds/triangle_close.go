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

// reach says which way along its line a side reaches from the foot of the distance
// that it has to span, where either way closes the triangle.
type reach float64

// Reaching far makes the unknown side longer: α is acute there.
const (
	reachFar  reach = 1
	reachNear reach = -1
)

// close finds the sides that are not given. Where there are two ways to, it takes
// the one that reaches as told. It returns the key of the reason where there is no
// such triangle.
func (t *triangle) close(way reach) string {
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
		along, ok := leg(t.second.size, r2.Cross(v, f))
		if !ok {
			return "short"
		}
		size := r2.Dot(f, v) + float64(way)*along
		t.second.vec = r2.Sub(r2.Scale(size, v), f)
		if size <= 0 {
			return "backwards"
		}
	case turnAndSize:
		u := unitAt(t.second)
		along, ok := leg(t.result.size, r2.Cross(u, f))
		if !ok {
			return "short"
		}
		size := float64(way)*along - r2.Dot(f, u)
		if size <= 0 {
			return "sense"
		}
		t.second.vec = r2.Scale(size, u)
	}
	return t.measure()
}

// leg is how far along a line a side of the given size reaches, over a distance
// across. ok is false where the side is too short, or only just reaches, so that
// two triangles run together.
func leg(size, across float64) (along float64, ok bool) {
	const just = 1e-3 // of the side, squared: an angle within 2° of 90°
	square := size*size - across*across
	if square < just*size*size {
		return 0, false
	}
	return math.Sqrt(square), true
}

// measure fills in what follows from the vectors; it returns the key of the
// reason where they make no triangle worth drawing.
func (t *triangle) measure() string {
	t.result.vec = r2.Add(t.first.vec, t.second.vec)
	t.second.size, t.result.size = r2.Norm(t.second.vec), r2.Norm(t.result.vec)
	if t.ask != bothDirections && t.ask != turnAndSize {
		t.second.aim()
	}
	if t.ask == turnAndSize {
		t.result.aim()
	}
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
