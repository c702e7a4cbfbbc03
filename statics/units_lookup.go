package statics

import "strings"

// aliases lists, for a unit's symbol, the other ways it is written.
var aliases = map[string]string{
	"deg":    "° º degree degrees degs",
	"′":      "arcmin arcminute arcminutes",
	"″":      "arcsec arcsecond arcseconds",
	"rad":    "radian radians rads",
	"gon":    "grad grads grade grades gradian gradians gons",
	"N":      "newton newtons",
	"mN":     "millinewton millinewtons",
	"daN":    "decanewton decanewtons",
	"kN":     "kilonewton kilonewtons",
	"MN":     "meganewton meganewtons",
	"lb":     "lbs pound pounds #",
	"lbf":    "lbsf",
	"kip":    "kips klb klbf",
	"kgf":    "kp",
	"m":      "metre metres meter meters",
	"mm":     "millimetre millimetres millimeter millimeters",
	"cm":     "centimetre centimetres centimeter centimeters",
	"km":     "kilometre kilometres kilometer kilometers",
	"ft":     "foot feet",
	"in":     "inch inches",
	"yd":     "yard yards",
	"mi":     "mile miles",
	"N·m":    "Nm m·N",
	"N·mm":   "Nmm mm·N",
	"kN·m":   "kNm m·kN",
	"MN·m":   "MNm m·MN",
	"lb·ft":  "ft·lb lbf·ft ft·lbf lbft ftlb",
	"lb·in":  "in·lb lbf·in in·lbf lbin inlb",
	"kip·ft": "ft·kip kips·ft ft·kips",
	"kip·in": "in·kip kips·in in·kips",
	"kg":     "kilogram kilograms kgs",
	"g":      "gram grams",
	"t":      "tonne tonnes",
	"slug":   "slugs",
	"lb/ft":  "lbf/ft",
	"lb/in":  "lbf/in",
	"m/s²":   "m/s2 m/s^2",
	"ft/s²":  "ft/s2 ft/s^2",
}

// bySymbol finds a unit by its exact spelling, byFolded by its spelling in
// lower case where only one unit has it ("kn" is kN, but "mn" may be mN or MN).
var bySymbol, byFolded = indexUnits()

func indexUnits() (exact, folded map[string]Unit) {
	exact = make(map[string]Unit)
	for _, u := range units {
		exact[u.Symbol] = u
		for _, alias := range strings.Fields(aliases[u.Symbol]) {
			exact[alias] = u
		}
	}
	folded = make(map[string]Unit)
	ambiguous := make(map[string]bool)
	for spelling, u := range exact {
		key := strings.ToLower(spelling)
		if other, ok := folded[key]; ok && other != u {
			ambiguous[key] = true
		}
		folded[key] = u
	}
	for key := range ambiguous {
		delete(folded, key)
	}
	return exact, folded
}

// isProduct tells whether r may stand between the factors of a unit: "lb·ft",
// "lb-ft", "lb ft", "lb.ft"; and so also the final period of "in.".
func isProduct(r rune) bool { return strings.ContainsRune("·⋅∙*×-‑. \u00a0", r) }

// UnitBySymbol finds a unit by its symbol, name or a common variant: "lbf",
// "pounds", "ft-lb", "KN". Upper and lower case matter only where they tell two
// units apart (mN, MN). The pound, "lb", is the pound-force; the pound of mass
// is "lbm". The empty symbol is the unit 1 of ratios.
func UnitBySymbol(s string) (Unit, bool) {
	s = strings.Join(strings.FieldsFunc(s, isProduct), "·")
	if u, ok := bySymbol[s]; ok {
		return u, true
	}
	u, ok := byFolded[strings.ToLower(s)]
	return u, ok
}
