package statics_test

import (
	"errors"
	"fmt"

	"closingside/statics"

	"gonum.org/v1/gonum/spatial/r2"
)

// Two tugs hold a barge off the quay.
func ExampleResultant() {
	p := statics.Polar(340, 25*statics.Degree)
	q := statics.Polar(610, 118*statics.Degree)
	r := statics.Resultant(p, q)
	direction, _ := statics.Direction(r)
	fmt.Printf("R = %.1f N at %.2f°\n", r2.Norm(r), direction.Degrees())
	// Output: R = 682.6 N at 88.17°
}

// A 120-kg buoy hangs from two chains.
func ExampleParticle_Solve() {
	left, _ := statics.FromSlope(3, 4, statics.PlusY, statics.MinusX)
	right, _ := statics.Toward(statics.Beside, statics.PlusX, statics.PlusY, 50*statics.Degree)
	buoy := statics.Particle{
		Known:   []r2.Vec{statics.Polar(120*9.81, -90*statics.Degree)},
		Unknown: []r2.Vec{statics.Polar(1, left.Angle()), statics.Polar(1, right.Angle())},
	}
	e, err := buoy.Solve()
	var c statics.Condition
	if errors.As(err, &c) {
		fmt.Println("few digits left:", c)
	}
	fmt.Printf("%v: %v %.1f N, %v %.1f N\n", e.Outcome, left, e.Values[0], right, e.Values[1])
	// Output: determinate: 3:4 up left 757.8 N, 50° above +x 943.2 N
}
