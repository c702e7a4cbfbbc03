package text

// What components along oblique axes have of their own.
func init() {
	add(map[string]string{
		"oblique-components.title":     "Components along oblique axes",
		"oblique-components.about":     "Take a force apart along two lines that are not at right angles: a parallelogram with the force as its diagonal.",
		"oblique-components.practises": "the parallelogram read backwards, the sine law for a side, two equations for two unknowns",
		"oblique-components.own":       "Give the force and the directions of two axes. Where the force lies outside their angle, a component is negative.",
		"oblique-components.asked":     "Find the components {Fu} and {Fv} of {F} along the two axes.",

		"oblique-components.item.force": "The force",
		"oblique-components.item.axes":  "Axis {n}",

		"oblique-components.given.axes.name.direction": "Axis {name}: direction {direction}",
		"oblique-components.figure":                    "{force} Of these arrows two are axes: only their directions count.",

		"slip.axes-for-components.title": "the angle between the axes taken for the one between the components",
		"slip.axes-for-components.ask":   "Complete the parallelogram on the lines of the two axes. Does each component point along its axis or against it, and between which arrows does {at} lie?",

		"oblique-components.refuse.names":    "Here x and y stand for the rectangular axes. Call the oblique ones otherwise, such as u and v.",
		"oblique-components.refuse.parallel": "The axes {u} and {v} lie along one line, or nearly, so they make no parallelogram. Change a direction.",
		"oblique-components.refuse.along":    "{F} lies along one of the axes, or nearly, so that the other component is nothing. Change a direction.",

		"oblique-components.phi.what":   "the angle between the two components",
		"oblique-components.phi.look":   "Draw each component from the particle, against its axis where it is negative. How far do you turn from one to the other, the short way round?",
		"oblique-components.gamma.what": "the angle of the triangle opposite {F}, between the sides {Fu} and {Fv}",
		"oblique-components.gamma.look": "Draw one component from the head of the other. What do two neighbouring angles of a parallelogram come to together?",
		"oblique-components.alpha.what": "the angle between {F} and the line of {Fv}, opposite {Fu}",
		"oblique-components.alpha.look": "Both of these lines are given. Which turn takes you from the force to the component along that line?",
		"oblique-components.beta.what":  "the angle between {F} and the line of {Fu}, opposite {Fv}",
		"oblique-components.beta.look":  "Both of these lines are given. Which turn takes you from the force to the component along that line?",
		"oblique-components.Fx.what":    "the x component of {F}",
		"oblique-components.Fx.look":    "Drop a line from the head of {F} to the x axis. Which side of that right triangle lies along x, and which way does it point?",
		"oblique-components.Fy.what":    "the y component of {F}",
		"oblique-components.Fy.look":    "Drop a line from the head of {F} to the x axis. Which side of that right triangle lies along y, and which way does it point?",
		"oblique-components.Fu.what":    "the component of {F} along the axis {u}",
		"oblique-components.Fu.look":    "In the triangle of {F} and its two components, which angle faces this side, and which angle faces {F}? The triangle has no right angle.",
		"oblique-components.Fv.what":    "the component of {F} along the axis {v}",
		"oblique-components.Fv.look":    "In the triangle of {F} and its two components, which angle faces this side, and which angle faces {F}? The triangle has no right angle.",

		"principle.two-equations": "Along x and along y the two components together have what the force has. Take one unknown out of the two equations.",
	})
}
