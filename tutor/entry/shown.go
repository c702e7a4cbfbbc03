package entry

import (
	"strings"

	"closingside/statics"
	"closingside/statics/expr"
)

// Shown is a plain number or a direction as it was read: "682.6 N", "30° below
// −x". A number is shown in unit, which must be the one it was read for
// (Scope.Unit); one converted to it has a few digits more than were typed, not
// all that the conversion gives. Other forms are shown by their trees.
func (r Reading) Shown(unit statics.Unit) string {
	switch {
	case r.Form == Direction && r.From != "":
		return r.toldFrom()
	case r.Form == Direction:
		return r.Heading.String()
	}
	return unit.After(expr.FormatNumber(r.Value, min(10, max(6, r.Digits+2))))
}

// toldFrom is a direction told from a thing given: "20° clockwise from P".
func (r Reading) toldFrom() string {
	return strings.Replace(r.Heading.String(), "+x", r.From, 1)
}
