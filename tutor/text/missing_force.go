package text

// What the missing force has of its own.
func init() {
	area := map[string]string{
		"missing-force.title":     "The missing force",
		"missing-force.about":     "One force is there and the resultant is required. Find the force that has to be added: two answers may fit, and sometimes the smallest one is wanted.",
		"missing-force.practises": "taking vectors away, the sine law both ways, two solutions, the shortest distance to a line",
		"missing-force.own":       "Give the known force, and of the missing force and the resultant two values in all: a magnitude or a direction each. For the smallest force that will do, give the resultant’s direction alone and choose “smallest”.",

		"missing-force.asked.force":    "Find the magnitude {F2} and the direction {theta2} of the force that together with {F1} makes the resultant {R}.",
		"missing-force.asked.sizes":    "Find the magnitude {F2} that brings the resultant into the required direction, and the magnitude {R} of the resultant.",
		"missing-force.asked.turn":     "Find the direction {theta2} of {F2} that brings the resultant into the required direction, and the magnitude {R} of the resultant. If two triangles fit, work out either.",
		"missing-force.asked.size":     "Find the magnitude {F2} that gives the resultant its magnitude {R}, and the direction {theta} of the resultant. If two triangles fit, work out either.",
		"missing-force.asked.smallest": "Find the smallest force that brings the resultant into the required direction: its magnitude {F2} and its direction {theta2}.",

		"missing-force.item.known":     "The force that is there",
		"missing-force.item.missing":   "The missing force",
		"missing-force.item.resultant": "The resultant",
		"missing-force.item.find":      "What is wanted",
		"missing-force.more.find":      "The smallest force that will do",
		"missing-force.field.force":    "Which force",
		"missing-force.none.force":     "the one that fits",

		"missing-force.given.missing.name":                  "{name}: the missing force",
		"missing-force.given.missing.name.magnitude":        "{name} = {magnitude}, direction to be found",
		"missing-force.given.missing.name.direction":        "{name}: direction {direction}, magnitude to be found",
		"missing-force.given.resultant.magnitude.direction": "Resultant R = {magnitude}, direction {direction}",
		"missing-force.given.resultant.magnitude":           "Resultant R = {magnitude}, direction to be found",
		"missing-force.given.resultant.direction":           "Resultant R: direction {direction}",
		"missing-force.given.find.force":                    "Wanted: the {force} such force",
		"missing-force.case.acute":                          "the angle {alpha} between {F2} and {R} is acute",
		"missing-force.case.obtuse":                         "the angle {alpha} between {F2} and {R} is obtuse",
		"missing-force.refuse.givens":                       "Of the missing force {Q} and the resultant, two values have to be given (a magnitude or a direction each), and not both of {Q}: its own two would make it known. For the smallest force, give the resultant’s direction alone and “find: smallest”.",
		"missing-force.refuse.parallel":                     "Here {P}, {Q} and the resultant lie along one line, or nearly, so they make no triangle. Change a direction.",
		"missing-force.refuse.sense":                        "Pulling that way, no force {Q} brings the resultant there: it would have to push. Turn a direction round, or change it.",
		"missing-force.refuse.backwards":                    "The required direction points away from {P}, so the resultant would have to point backwards along it. Change a direction.",
		"missing-force.refuse.short":                        "{Q} is too small to reach the required line, or only just reaches it. Make it larger, or bring the directions closer together.",
		"missing-force.refuse.ratio":                        "One side of this triangle is more than 1000 times another, so the smaller would vanish in rounding. Give values closer together.",

		"missing-force.F2.what":     "the magnitude of the missing force {F2}",
		"missing-force.F2.look":     "Draw {F1} and, from its tail, the line of the resultant. The missing force runs from the head of {F1} to the head of {R}. Which sides and angles of that triangle do you have?",
		"missing-force.theta2.what": "the direction of the missing force {F2}",
		"missing-force.theta2.look": "Start from the direction of the resultant. On which side of it does {F2} lie, and by which angle of the triangle? Or use the components of {F2} with their signs.",
		"missing-force.R.what":      "the magnitude of the resultant",
		"missing-force.R.look":      "The resultant is the side from the tail of {F1} to the head of {F2}. Which angle faces it, and which side and angle opposite each other are already known?",
		"missing-force.theta.what":  "the direction of the resultant",
		"missing-force.theta.look":  "Start from the direction of {F1}. On which side of it does the resultant lie, and by which angle of the triangle?",
		"missing-force.alpha.what":  "the angle of the force triangle opposite {F1}, between {F2} and {R}",
		"missing-force.alpha.look":  "Find the corner where the head of {F2} meets the head of {R}. Which side faces it? Does the sine decide between an acute and an obtuse angle?",
		"missing-force.beta.what":   "the angle of the force triangle opposite {F2}, between {F1} and {R}",
		"missing-force.beta.look":   "Find the corner where {F1} and {R} begin. Are both of their directions known?",
		"missing-force.gamma.what":  "the angle of the force triangle between its sides {F1} and {F2}",
		"missing-force.gamma.look":  "Look at the corner where the head of {F1} meets the tail of {F2}. What do you know of the other two angles, or of the angle between the forces?",
		"missing-force.phi.what":    "the angle between {F1} and {F2}, drawn tail to tail",
		"missing-force.phi.look":    "Draw both forces from one point. How far do you turn from one arrow to the other, the short way round?",

		"principle.sine-law-either":          "Sine law: in a triangle each side divided by the sine of the opposite angle gives the same value. Put the sines on top when an angle is wanted. An acute and an obtuse angle have the same sine, so let the sketch decide between them.",
		"principle.sine-law-side":            "Sine law: in a triangle each side divided by the sine of the opposite angle gives the same value. For a side, put the sides on top.",
		"principle.difference-of-components": "The resultant is the sum of both forces, so a component of the missing one is the resultant’s less the known one’s, with their signs.",
		"principle.nothing-across":           "Across the line of the resultant the two forces cancel: what one has across it, the other takes away.",
		"principle.sum-along":                "Along its own direction the resultant is the sum of what each force has along that line.",
		"principle.smallest":                 "From the head of the given force, the shortest way to the line of the resultant is at right angles to that line: the triangle has its right angle there.",
	}
	for _, axis := range []string{"x", "y"} {
		area["missing-force.F1"+axis+".what"] = "the " + axis + " component of {F1}"
		area["missing-force.F1"+axis+".look"] = "Drop a line from the head of {F1} to the x axis. Which side of that right triangle lies along " + axis + ", and which way does it point?"
		area["missing-force.F2"+axis+".what"] = "the " + axis + " component of the missing force {F2}"
		area["missing-force.F2"+axis+".look"] = "Along " + axis + ", what is the resultant to have, and what does {F1} bring already? What is still missing?"
		area["missing-force.R"+axis+".what"] = "the " + axis + " component of the resultant"
		area["missing-force.R"+axis+".look"] = "Which side of the resultant’s right triangle lies along " + axis + ", and which way does it point?"
	}
	add(area)
}
