package lesson_test

import (
	"fmt"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
)

// Two tugs at a barge: the statement read, built and worked by the triangle.
func Example() {
	source := lesson.Branch("",
		lesson.Leaf("kind", "two-forces"),
		lesson.Branch("forces", kinds.ForceSource("P", "340 N", "25 deg"), kinds.ForceSource("Q", "610 N", "118 deg")))
	p, err := kinds.All.Read(source)
	if err != nil {
		fmt.Println(err)
		return
	}
	l, err := p.Build()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(l.Question())
	for _, step := range l.Solve(p.Settings)[0].Steps {
		fmt.Println(l.SymbolText(step.Quantity.Name), "=", l.Text(step.Route.Tree), "=", l.Text(step.Numbers), "=", step.Value)
	}
	// Output:
	// Find the magnitude R and the direction θ of the resultant of P and Q.
	// φ = θQ − θP = 118° − 25° = 93.00°
	// γ = 180° − φ = 180° − 93° = 87.00°
	// R = √(P² + Q² − 2·P·Q·cos γ) = √(340² + 610² − 2·340·610·cos 87°) = 682.6 N
	// α = sin⁻¹(P·sin(γ)/R) = sin⁻¹(340·sin(87°)/682.6) = 29.83°
	// θ = θQ − α = 118° − 29.83° = 88.17°
}

// What is wrong with a statement is said in a sentence, with what would do.
func ExampleSourceError() {
	_, err := kinds.All.Read(lesson.Branch("",
		lesson.Leaf("kind", "two-forces"),
		lesson.Branch("forces", kinds.ForceSource("P", "340 N", "25 deg"), kinds.ForceSource("Q", "610 kg", "118 deg"))))
	fmt.Println(err)
	// Output:
	// “magnitude: 610 kg” can't be used: This is a mass, and a force is needed: check the unit. Write it like “magnitude: 340 N”.
}
