package statics

import "math"

// Triangle has a side and the angle opposite it under the same letter: A and
// Alpha, B and Beta, C and Gamma. Sides are positive, in one unit of the
// caller's choice; angles are more than 0° and less than 180°.
type Triangle struct {
	A, B, C            float64
	Alpha, Beta, Gamma Angle
}

// SAS solves a triangle from two sides and the angle between them. ok is false
// where a side is not positive or the angle not between 0° and 180°.
func SAS(a float64, gamma Angle, b float64) (_ Triangle, ok bool) {
	if !positive(a, b) || !isCorner(gamma) {
		return Triangle{}, false
	}
	// With h = sin²(γ/2), cos γ = 1 − 2h turns every difference of nearly equal
	// terms into one that is known exactly: b − a. The cosine law becomes
	// c² = (a − b)² + 4ab·h.
	half, _ := (gamma / 2).Sincos()
	sin, _ := gamma.Sincos()
	h := half * half
	t := Triangle{
		A: a, B: b, C: math.Hypot(a-b, 2*math.Sqrt(a)*math.Sqrt(b)*half),
		Alpha: Angle(math.Atan2(a*sin, (b-a)+2*a*h)),
		Beta:  Angle(math.Atan2(b*sin, (a-b)+2*b*h)),
		Gamma: gamma,
	}
	return t, true
}

// SSS solves a triangle from its sides. ok is false where a side is not
// positive, or not shorter than the other two together.
func SSS(a, b, c float64) (_ Triangle, ok bool) {
	if !positive(a, b, c) || !(a < b+c && b < c+a && c < a+b) {
		return Triangle{}, false
	}
	return Triangle{
		A: a, B: b, C: c,
		Alpha: cornerFromSides(b, c, a),
		Beta:  cornerFromSides(c, a, b),
		Gamma: cornerFromSides(a, b, c),
	}, true
}

// cornerFromSides returns the angle between sides p and q, opposite r. It is the
// half-angle formula with its differences grouped so that none loses digits,
// however thin the triangle: W. Kahan, "Miscalculating Area and Angles of a
// Needle-like Triangle" (2014). The parentheses matter.
func cornerFromSides(p, q, r float64) Angle {
	if p < q {
		p, q = q, p
	}
	var m float64
	if q >= r {
		m = r - (p - q)
	} else {
		m = q - (p - r)
	}
	return Angle(2 * math.Atan(math.Sqrt(((p-q)+r)*m/((p+(q+r))*((p-r)+q)))))
}

// ASA solves a triangle from two angles and the side between them. ok is false
// where the side is not positive or the angles leave nothing for the third.
func ASA(alpha Angle, c float64, beta Angle) (_ Triangle, ok bool) {
	gamma := math.Pi - (alpha + beta)
	return fromAngles(c, gamma, alpha, beta, gamma)
}

// AAS solves a triangle from two angles and the side opposite the first. ok is
// as for [ASA].
func AAS(alpha, beta Angle, a float64) (_ Triangle, ok bool) {
	return fromAngles(a, alpha, alpha, beta, math.Pi-(alpha+beta))
}

// fromAngles gives three angles their size from one side and the angle opposite
// it, by the sine law.
func fromAngles(side float64, opposite, alpha, beta, gamma Angle) (_ Triangle, ok bool) {
	if !positive(side) || !isCorner(alpha) || !isCorner(beta) || !isCorner(gamma) {
		return Triangle{}, false
	}
	sin := func(a Angle) float64 { s, _ := a.Sincos(); return s }
	diameter := side / sin(opposite) // of the circle through the corners
	t := Triangle{
		A: diameter * sin(alpha), B: diameter * sin(beta), C: diameter * sin(gamma),
		Alpha: alpha, Beta: beta, Gamma: gamma,
	}
	return t, true
}

// SSA solves a triangle from two sides and the angle opposite the first. There
// are no, one or two such triangles; of two, the one with the acute beta comes
// first. A side a that just reaches the third side, within the noise of the
// angle, makes one right triangle.
func SSA(a, b float64, alpha Angle) []Triangle {
	if !positive(a, b) || !isCorner(alpha) {
		return nil
	}
	sin, cos := alpha.Sincos()
	h := b * sin // distance of the far corner from the third side
	if a <= b && cos <= 0 {
		return nil // the known angle is the largest, so its side must be
	}
	if math.Abs(a-h) <= tangentRelTol*b && cos > 0 {
		return []Triangle{{A: a, B: b, C: b * cos, Alpha: alpha, Beta: math.Pi / 2, Gamma: math.Pi/2 - alpha}}
	}
	if a < h {
		return nil
	}
	// The third side c satisfies the quadratic c² − 2bc·cos α + b² − a² = 0. Its
	// roots are b·cos α ± d; the one that would subtract follows from their
	// product, b² − a².
	d := math.Sqrt((a - h) * (a + h))
	product := (b - a) * (b + a)
	third := func(c, d float64) Triangle {
		return Triangle{
			A: a, B: b, C: c,
			Alpha: alpha,
			Beta:  Angle(math.Atan2(h, d)),
			Gamma: Angle(math.Atan2(c*sin, b-c*cos)),
		}
	}
	switch {
	case cos <= 0:
		return []Triangle{third(product/(b*cos-d), d)}
	case a >= b:
		return []Triangle{third(b*cos+d, d)}
	default:
		return []Triangle{third(b*cos+d, d), third(product/(b*cos+d), -d)}
	}
}

// positive reports whether all sides are positive and finite.
func positive(sides ...float64) bool {
	for _, s := range sides {
		if !(s > 0) || math.IsInf(s, 1) {
			return false
		}
	}
	return true
}

// isCorner reports whether a is more than 0° and less than 180°, each by more
// than the noise of a sum of angles.
func isCorner(a Angle) bool { return a > angleAbsTol && a < math.Pi-angleAbsTol }
