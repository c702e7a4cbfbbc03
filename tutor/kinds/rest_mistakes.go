package kinds

import (
	"math"

	"closingside/statics"
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// Wrong ways to write a sum of forces that no rewrite of it at one place gives.

// sumMistakes are the sums along an axis in which one force stands with another's
// angle, or two with each other's, the signs still those of the sketch; those by
// a full direction from +x with sine and cosine exchanged, where the sign is what the
// calculator gives; and what exchanges them, or takes leg over leg, in every part.
func (s *rest) sumMistakes(c coordinate) []lesson.Mistake {
	var all []lesson.Mistake
	add := func(slip string, put map[*holder]expr.Term) {
		all = append(all, mistakeAside(slip, s.sumWith(c, put)))
	}
	full, acute, legs := map[*holder]expr.Term{}, map[*holder]expr.Term{}, map[*holder]expr.Term{}
	for i, h := range s.parts {
		if !h.slants() {
			continue
		}
		full[h] = expr.Term{Node: c.across().key(h.leads[0].direction())}
		acute[h] = expr.Term{Minus: c.of(h.pullsAt()) < 0, Node: c.across().key(h.acute())}
		add("sine-cosine-swapped", map[*holder]expr.Term{h: full[h]})
		if h.leads[0].heading.Form == statics.Slope {
			legs[h] = expr.Term{Minus: acute[h].Minus, Node: expr.Tan(h.acute())}
		}
		for j, o := range s.parts {
			if j == i || !o.slants() {
				continue
			}
			add("other-force", map[*holder]expr.Term{h: h.turnedLike(o, c)})
			if j > i {
				add("other-force", map[*holder]expr.Term{h: h.turnedLike(o, c), o: o.turnedLike(h, c)})
			}
		}
	}
	add("sine-cosine-swapped", full)
	add("sine-cosine-swapped", acute)
	if len(legs) > 0 {
		add("tangent-taken", legs)
	}
	return all
}

// slants tells whether a part acts in one known direction, along neither axis.
func (h *holder) slants() bool {
	return !h.wandered && len(h.leads) == 1 && h.leads[0].angle != ""
}

// turnedLike is the part of a unit force along an axis by the acute angle of
// another force, with its own sign.
func (h *holder) turnedLike(o *holder, c coordinate) expr.Term {
	return expr.Term{Minus: c.of(h.pullsAt()) < 0, Node: c.key(o.acute())}
}

// acute is the acute angle between a slanting part and the x axis.
func (h *holder) acute() expr.Node {
	l := h.leads[0]
	if axis := l.heading.Axis; axis == statics.PlusY || axis == statics.MinusY || l.heading.Turn > 90*statics.Degree {
		return expr.Deg(lesson.Degrees(statics.Angle(math.Abs(math.Remainder(h.at(), 180))) * statics.Degree))
	}
	return expr.S(l.angle)
}

// key is the cosine of an angle from the x axis along x, its sine along y.
func (c coordinate) key(angle expr.Node) expr.Node {
	if c == alongX {
		return expr.Cos(angle)
	}
	return expr.Sin(angle)
}
