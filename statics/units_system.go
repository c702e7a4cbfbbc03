package statics

import "strings"

// System is a system of units.
type System uint8

// The systems. Angles, ratios and units in use beside both (the nautical mile)
// belong to none.
const (
	NoSystem System = iota
	SI
	USCustomary
)

// System tells to which system of units u belongs: NIST SP 811 (2008), chapter
// 4 and table 6 for the SI and the units in use with it, appendix B for the
// rest.
func (u Unit) System() System {
	if u.Dim == DimRatio || u.Dim == DimAngle {
		return NoSystem
	}
	first, _, _ := strings.Cut(u.Symbol, "·")
	first, _, _ = strings.Cut(first, "/")
	switch first {
	case "lb", "lbf", "kip", "ft", "in", "yd", "mi", "lbm", "slug":
		return USCustomary
	case "kgf", "nmi":
		return NoSystem
	}
	return SI
}
