package text

// figure holds the sentences that put a figure into words: what a person who
// does not see it needs to work from it.
var figure = map[string]string{
	"figure.title.given":         "The forces at their common point",
	"figure.title.parallelogram": "The parallelogram of forces",
	"figure.title.triangle":      "The force triangle, head to tail",
	"figure.title.components":    "The force and its rectangular components",
	"figure.title.polygon":       "The force polygon, head to tail",
	"figure.title.freebody":      "The free-body diagram",
	"figure.title.space":         "The particle and what holds it",

	"figure.given":    "{count} forces act at one point.",
	"figure.given.1":  "One force acts at a point.",
	"figure.count.2":  "Two",
	"figure.count.3":  "Three",
	"figure.count.4":  "Four",
	"figure.count.5":  "Five",
	"figure.count.6":  "Six",
	"figure.force":    "{force} points {direction}.",
	"figure.force.on": "{force} pushes on the point, {direction}.",
	"figure.unknown":  "The direction of {force} is not known yet.",

	"figure.parallelogram":          "Both forces start at one point. Lines through their heads, parallel to the other force, complete a parallelogram.",
	"figure.parallelogram.diagonal": "{resultant}, the resultant, is the diagonal from that point to the far corner. It points {way}.",
	"figure.next":                   "{force} starts at the head of {before} and points {direction}.",
	"figure.next.unknown":           "{force} starts at the head of {before}.",
	"figure.closing":                "{resultant}, the resultant, runs from the tail of {first} to the head of {last}. It points {way}.",
	"figure.closed":                 "The head of {last} meets the tail of {first}: the polygon closes.",
	"figure.components":             "The component {x} lies along the x axis and points {wayx}. The component {y} lies along the y axis and points {wayy}. Dashed lines join their heads to the head of {force}.",
	"figure.component.none":         "nowhere: it is zero",

	"figure.angle.between": "{angle} is the angle between {a} and {b}, tails together.",
	"figure.angle.corner":  "{angle} is the angle of the triangle between {a} and {b}.",
	"figure.angle.from-x":  "{angle} is the angle from the positive x axis to {a}.",
	"figure.angle.through": "A level line runs through the head of {first}. Its angle with {first} is {alternate}; its angle with {second} is {beside}.",

	"figure.freebody":     "A free-body diagram. {count} forces act on the particle.",
	"figure.freebody.1":   "A free-body diagram. One force acts on the particle.",
	"figure.space":        "A particle is held by the following parts.",
	"figure.space.force":  "{label}: a force that acts {direction} on the particle.",
	"figure.space.cable":  "{label}: a cable that runs {direction} from the particle to a support.",
	"figure.space.strut":  "{label}: a strut that runs {direction} from the particle to a support.",
	"figure.space.spring": "{label}: a spring that runs {direction} from the particle to a support.",
	"figure.space.weight": "{label}: a weight that hangs straight down from the particle.",
	"figure.space.over":   "{label}: a cable that runs {direction} from the particle, over a frictionless pulley, to the weight {hangs}.",

	"figure.degrees": "{n} degrees",
	"figure.degree":  "{n} degree",
	"figure.slope":   "along a slope that goes {run} across for every {rise} of height, {way}",

	"figure.along.0": "along the positive x axis",
	"figure.along.1": "along the positive y axis",
	"figure.along.2": "along the negative x axis",
	"figure.along.3": "along the negative y axis",

	// A turn of less than a right angle from an axis. Left and right would depend
	// on whether one looks along the axis or at the page.
	"figure.turn.0.ccw": "{angle} above the positive x axis",
	"figure.turn.0.cw":  "{angle} below the positive x axis",
	"figure.turn.1.ccw": "{angle} from the positive y axis, towards the negative x axis",
	"figure.turn.1.cw":  "{angle} from the positive y axis, towards the positive x axis",
	"figure.turn.2.ccw": "{angle} below the negative x axis",
	"figure.turn.2.cw":  "{angle} above the negative x axis",
	"figure.turn.3.ccw": "{angle} from the negative y axis, towards the positive x axis",
	"figure.turn.3.cw":  "{angle} from the negative y axis, towards the negative x axis",

	"figure.far.ccw":  "{angle} counter-clockwise from {axis}, {way}",
	"figure.far.cw":   "{angle} clockwise from {axis}, {way}",
	"figure.axis.0":   "the positive x axis",
	"figure.axis.1":   "the positive y axis",
	"figure.axis.2":   "the negative x axis",
	"figure.axis.3":   "the negative y axis",
	"figure.axis.any": "the direction {angle} counter-clockwise of the positive x axis",

	"figure.way.0": "to the right",
	"figure.way.1": "up and to the right",
	"figure.way.2": "straight up",
	"figure.way.3": "up and to the left",
	"figure.way.4": "to the left",
	"figure.way.5": "down and to the left",
	"figure.way.6": "straight down",
	"figure.way.7": "down and to the right",
}
