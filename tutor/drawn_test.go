package tutor_test

import (
	"closingside/tutor"
	"closingside/tutor/draw"
)

// Tests inside the package can't import what rests on it.
func init() { tutor.Generate = draw.Generate }
