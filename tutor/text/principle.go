package text

// principles says what each route rests on, in a sentence.
var principles = map[string]string{
	"principle.difference-of-directions": "The angle between two directions is their difference; where that exceeds 180°, it is what is left of 360°.",
	"principle.adjacent-angles":          "Adjacent angles of a parallelogram add up to 180°.",
	"principle.four-angles":              "The four angles of a parallelogram add up to 360°, and opposite ones are equal: take away the two you know and share the rest between the other two.",
	"principle.alternate-angles":         "Draw a line along x through the head of the first force. The first force makes the same angle with it as with the x axis (alternate angles); put that together with the second force's angle to it, as the sketch shows.",
	"principle.cosine-law":               "Cosine law: the square of a side is the sum of the squares of the other two, less twice their product times the cosine of the angle between them.",
	"principle.parallelogram-diagonal":   "The cosine law with the angle between the forces: its cosine is the opposite of the interior angle's, so the cross term is added.",
	"principle.right-angle-theorem":      "The two components are at right angles, so the square of the magnitude is the sum of their squares.",
	"principle.sine-law":                 "Sine law: in a triangle each side divided by the sine of the opposite angle gives the same value. Put the sines on top when an angle is wanted, and find the angle opposite the smaller side first: it is acute.",
	"principle.cosine-law-angle":         "Cosine law, solved for an angle: its cosine is the sum of the squares of the two sides beside it, less the square of the side facing it, over twice the product of the two beside it.",
	"principle.triangle-sum":             "The three angles of a triangle add up to 180°.",
	"principle.angle-from-direction":     "An angle of the triangle is the difference of the directions of the two sides that meet there.",
	"principle.laid-off":                 "Lay the triangle's angle off from the direction of the force beside it, on the side where the resultant lies.",
	"principle.arctangent":               "The tangent of a direction is the y component over the x component. The inverse tangent answers only to the right of the y axis: look at the signs of both components for the quadrant.",
	"principle.resolve":                  "A force times the cosine of its direction from +x is its x component; times the sine, its y component. The signs come out by themselves.",
	"principle.from-axis":                "The angle is measured from an axis: the part of the force along that axis takes its cosine, the part across it its sine. The sketch gives the signs.",
	"principle.slope":                    "In a slope triangle the force runs along the long side: its x part is to the force as the run is to that side, its y part as the rise. The sketch gives the signs.",
	"principle.acute-from-direction":     "The acute angle to the x axis is how far the direction lies from the nearer end of that axis, which lies at 0°, 180° or 360°.",
	"principle.acute-from-components":    "In the right triangle of the components, the tangent of the angle to the x axis is the y side over the x side, both without their signs.",
	"principle.heading":                  "A direction counter-clockwise from +x: begin at the axis the angle is given from, and turn the way it is given.",
	"principle.leg-over-cosine":          "The x side of the right triangle is the force times the cosine of the angle to the x axis, the y side the force times its sine; solve for the force.",
	"principle.quadrant":                 "Look at the signs of the components for the quadrant, and lay the acute angle off from the nearer end of the x axis.",
	"principle.sum-of-components":        "A component of the resultant is the sum of the forces' components along that axis, with their signs.",
}
