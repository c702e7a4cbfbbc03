package text

// What the components of one force have of their own.
func init() {
	add(map[string]string{
		"components.title":     "Components of a force",
		"components.about":     "Take a force apart along x and y, and put it together again from its parts: by an angle, a slope or a bearing.",
		"components.practises": "sine or cosine, the sign of each part, the quadrant of a direction",
		"components.own":       "Give the force a name, and either its magnitude and direction (25 deg, 30 deg below -x, 3:4 up left, N 30 E) or its two components with their signs.",
		"components.asked":     "Find the components {Fx} and {Fy}, with their signs.",
		"components.asked.F":   "Find the magnitude {F} and the direction {theta}.",

		"components.given.force.name.x.y": "{name}: x component {x}, y component {y}",
		"components.item.force":           "The force",
		"components.field.x":              "Component along x",
		"components.field.y":              "Component along y",

		"components.refuse.givens": "Give {name} either by its magnitude and direction, or by its components x and y; not by a part of each.",
		"components.refuse.zero":   "Both components of {name} are zero, so it has no direction. Change one of them.",

		"components.F.what":     "the magnitude of the force {F}",
		"components.F.look":     "The two components are the short sides of a right triangle, and the force is its long side. Which rule ties the three together?",
		"components.theta.what": "the direction of {F}",
		"components.theta.look": "In which quadrant does the arrow lie? Begin at +x and turn counter-clockwise to it: which parts of that turn do you know?",
		"components.alpha.what": "the acute angle between {F} and the x axis",
		"components.alpha.look": "Look at the right triangle between the force and the x axis. How far is the force from the nearer end of that axis?",
		"components.Fx.what":    "the x component of {F}",
		"components.Fx.look":    "Drop a line from the head of {F} to the x axis. Which side of that right triangle lies along x, and which way does it point?",
		"components.Fy.what":    "the y component of {F}",
		"components.Fy.look":    "Drop a line from the head of {F} to the x axis. Which side of that right triangle lies along y, and which way does it point?",
	})
}
