package text

// What the resultant of two forces has of its own.
func init() {
	add(map[string]string{
		"two-forces.title":     "Resultant of two forces",
		"two-forces.about":     "Two forces pull at one point. Find the single force that does the same: its magnitude and its direction.",
		"two-forces.practises": "the force triangle, the laws of sines and cosines, which angle is which",
		"two-forces.asked":     "Find the magnitude {R} and the direction {theta} of the resultant of {F1} and {F2}.",

		"two-forces.refuse.parallel": "{P} and {Q} point the same way, so head to tail they make a line and no triangle: their resultant is the sum of the magnitudes, in that direction. Give two directions that differ.",
		"two-forces.refuse.opposite": "{P} and {Q} point opposite ways, so head to tail they make a line and no triangle: their resultant is the difference of the magnitudes, along the larger. Give two directions that are not opposite.",
		"two-forces.refuse.balanced": "{P} and {Q} are equal and opposite: their resultant is zero and has no direction. Change a magnitude or a direction.",
		"two-forces.refuse.ratio":    "One of {P} and {Q} is more than 1000 times the other, so the smaller would vanish in rounding. Give magnitudes closer together.",

		"two-forces.phi.what":   "the angle between the forces {F1} and {F2}, drawn tail to tail",
		"two-forces.phi.look":   "Draw both forces from one point. How far do you turn from one arrow to the other, the short way round?",
		"two-forces.gamma.what": "the angle of the force triangle between its sides {F1} and {F2}",
		"two-forces.gamma.look": "Move {F2} so that its tail sits at the head of {F1}. Look at the corner where the two sides meet: it faces the closing side {R}. How does it go with the angle between the forces?",
		"two-forces.R.what":     "the magnitude of the resultant",
		"two-forces.R.look":     "The resultant is the side that closes the triangle, from the first tail to the last head. Which two sides and which angle of that triangle do you have? Or which two components of {R}?",
		"two-forces.alpha.what": "the angle of the force triangle opposite {F1}, between {F2} and {R}",
		"two-forces.alpha.look": "Find the corner where {F2} meets {R}. Which side faces it, and which side and angle opposite each other are already known?",
		"two-forces.beta.what":  "the angle of the force triangle opposite {F2}, between {F1} and {R}",
		"two-forces.beta.look":  "Find the corner where {F1} meets {R}. Which side faces it, and which side and angle opposite each other are already known?",
		"two-forces.theta.what": "the direction of the resultant",
		"two-forces.theta.look": "Start from the direction of a force you know. On which side of it does {R} lie, and by which angle of the triangle? Or use the two components of {R}, and look at their signs.",
		"two-forces.F1x.what":   "the x component of {F1}",
		"two-forces.F1x.look":   "Drop a line from the head of {F1} to the x axis. Which side of that right triangle lies along x, and which way does it point?",
		"two-forces.F1y.what":   "the y component of {F1}",
		"two-forces.F1y.look":   "Drop a line from the head of {F1} to the x axis. Which side of that right triangle lies along y, and which way does it point?",
		"two-forces.F2x.what":   "the x component of {F2}",
		"two-forces.F2x.look":   "Drop a line from the head of {F2} to the x axis. Which side of that right triangle lies along x, and which way does it point?",
		"two-forces.F2y.what":   "the y component of {F2}",
		"two-forces.F2y.look":   "Drop a line from the head of {F2} to the x axis. Which side of that right triangle lies along y, and which way does it point?",
		"two-forces.Rx.what":    "the x component of the resultant",
		"two-forces.Rx.look":    "What do the two forces do along x, taken together with their signs?",
		"two-forces.Ry.what":    "the y component of the resultant",
		"two-forces.Ry.look":    "What do the two forces do along y, taken together with their signs?",
	})
}
