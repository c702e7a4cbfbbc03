package text

// What the resultant of several forces has of its own.
func init() {
	area := map[string]string{
		"concurrent-forces.title":       "Resultant of several forces",
		"concurrent-forces.about":       "Two to six forces pull at one point. Add their parts along x and along y, then put the sums together.",
		"concurrent-forces.practises":   "keeping a table of components, signs in a sum, the force polygon",
		"concurrent-forces.asked":       "Find the magnitude {R} and the direction {theta} of the resultant of all the forces.",
		"concurrent-forces.more.forces": "More forces (up to six)",

		"concurrent-forces.refuse.ratio":    "One force is more than 1000 times another, so the smaller would vanish in rounding. Give magnitudes closer together.",
		"concurrent-forces.refuse.balanced": "These forces all but balance: their resultant is zero, or so small that it is lost in rounding, and has no clear direction. Change a magnitude or a direction.",

		"concurrent-forces.R.what":     "the magnitude of the resultant",
		"concurrent-forces.R.look":     "The resultant's two components are the short sides of a right triangle. What is its long side?",
		"concurrent-forces.theta.what": "the direction of the resultant",
		"concurrent-forces.theta.look": "Look at the signs of the resultant's two components: in which quadrant does it lie? Which angle has their ratio as its tangent?",
		"concurrent-forces.Rx.what":    "the x component of the resultant",
		"concurrent-forces.Rx.look":    "Write the x components of all the forces under each other, each with its sign. What do they come to together?",
		"concurrent-forces.Ry.what":    "the y component of the resultant",
		"concurrent-forces.Ry.look":    "Write the y components of all the forces under each other, each with its sign. What do they come to together?",
	}
	for _, n := range []string{"1", "2", "3", "4", "5", "6"} {
		for _, axis := range []string{"x", "y"} {
			key := "concurrent-forces.F" + n + axis
			area[key+".what"] = "the " + axis + " component of {F" + n + "}"
			area[key+".look"] = "Drop a line from the head of {F" + n + "} to the x axis. Which side of that right triangle lies along " + axis + ", and which way does it point?"
		}
	}
	add(area)
}
