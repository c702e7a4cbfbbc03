package text

import (
	"strconv"
	"strings"
)

const atRest = "particle-equilibrium."

// What a particle at rest has of its own.
func init() {
	add(map[string]string{
		atRest + "title":     "A particle at rest",
		atRest + "about":     "A particle hangs or is held still. Draw it free of what holds it, and find the unknown forces from what balances.",
		atRest + "practises": "the free-body diagram, writing the two sums and solving them, the triangle of forces",
		atRest + "asked":     "The particle is at rest. {senses} Find {answers}.",
		atRest + "senses":    "Each direction leads from the particle along the part: {list}.",

		atRest + "senses.cable":        "a cable pulls that way",
		atRest + "senses.spring":       "a stretched spring pulls that way",
		atRest + "senses.cable.spring": "a cable or a stretched spring pulls that way",
		atRest + "senses.push.strut":   "a strut pushes the other way",
		atRest + "senses.push.spring":  "a compressed spring pushes the other way",
		atRest + "senses.push.both":    "a strut or a compressed spring pushes the other way",
		atRest + "senses.force":        "a force acts as its direction says",

		atRest + "arrow.cable":  "a cable pulls away from the particle",
		atRest + "arrow.strut":  "a strut pushes towards the particle",
		atRest + "arrow.spring": "a stretched spring pulls, a compressed spring pushes",
		atRest + "arrow.force":  "a force acts as its direction says",
		atRest + "arrow.weight": "a weight pulls down",
		atRest + "arrow.open":   "the one whose direction is asked balances the others",

		atRest + "item.parts":      "Part {n}",
		atRest + "item.gravity":    "Gravity",
		atRest + "field.is":        "What it is",
		atRest + "field.second":    "Second direction, of a cable round the particle",
		atRest + "field.force":     "Its force",
		atRest + "field.mass":      "Its mass",
		atRest + "field.stiffness": "Stiffness of a spring",
		atRest + "field.stretch":   "Stretch of a spring",
		atRest + "field.find":      "Wanted besides its force",
		atRest + "none.find":       "nothing more",
		atRest + "field.g":         "Acceleration of gravity",

		atRest + "field.compression": "Compression of a spring",

		atRest + "gravity":    "Gravity: g = {g}.",
		atRest + "compressed": "The spring {name} turns out to be compressed: it pushes.",

		atRest + "given.parts.name.is.direction":                       "{name}: {is}, {direction}; its force is not known",
		atRest + "given.parts.name.is.direction.second":                "{name}: one {is} round the particle, which is a frictionless pulley: it leads off {direction} and {second}; its force is not known",
		atRest + "given.parts.name.is.direction.second.force":          "{name} = {force}: one {is} round the particle, which is a frictionless pulley: it leads off {direction} and {second}",
		atRest + "given.parts.name.is.direction.force":                 "{name} = {force}: {is}, {direction}",
		atRest + "given.parts.name.is.direction.mass":                  "{name}: a cable, {direction}, over a frictionless {is} to a hanging mass of {mass}",
		atRest + "given.parts.name.is.direction.find":                  "{name}: a cable, {direction}, over a frictionless {is} to a hanging mass that is not known",
		atRest + "given.parts.name.is.direction.stiffness":             "{name}: {is} of stiffness {stiffness}, {direction}; how far it is stretched or compressed is not known",
		atRest + "given.parts.name.is.direction.stretch":               "{name}: {is}, {direction}, stretched by {stretch}; its stiffness is not known",
		atRest + "given.parts.name.is.direction.stiffness.stretch":     "{name}: {is} of stiffness {stiffness}, {direction}, stretched by {stretch}",
		atRest + "given.parts.name.is.direction.compression":           "{name}: {is}, {direction}, compressed by {compression}; its stiffness is not known",
		atRest + "given.parts.name.is.direction.stiffness.compression": "{name}: {is} of stiffness {stiffness}, {direction}, compressed by {compression}",
		atRest + "given.parts.cable.name.is.force":                     "{name} = {force}: {is}; its direction is not known",
		atRest + "given.parts.strut.name.is.force":                     "{name} = {force}: {is}; its direction is not known",
		atRest + "given.parts.spring.name.is.force":                    "{name} = {force}: {is}; its direction is not known",
		atRest + "given.parts.spring.name.is.stiffness.stretch":        "{name}: {is} of stiffness {stiffness}, stretched by {stretch}; its direction is not known",
		atRest + "given.parts.pulley.name.is.force":                    "{name} = {force}: a cable over a frictionless {is}; its direction is not known",
		atRest + "given.parts.pulley.name.is.mass":                     "{name}: a cable over a frictionless {is} to a hanging mass of {mass}; its direction is not known",
		atRest + "given.parts.force.name.is.force":                     "{name} = {force}: {is}; its direction is not known",
		atRest + "given.parts.name.is":                                 "{name}: {is}; its force and its direction are not known",
		atRest + "given.parts.weight.name.is":                          "{name}: {is}, hanging from the particle; how large is not known",
		atRest + "given.parts.name.is.force":                           "{name} = {force}: {is}, hanging from the particle",
		atRest + "given.parts.name.is.mass":                            "{name}: {is} of a mass of {mass}, hanging from the particle",
		atRest + "given.parts.name.is.find":                            "{name}: {is}, hanging from the particle; its mass is not known",
		atRest + "given.gravity.g":                                     "g = {g}",

		atRest + "refuse.weight-direction":  "A weight always pulls straight down: leave out the direction of {name}, or make it a force.",
		atRest + "refuse.only-direction":    "All that is left open is the direction of {name}. Equilibrium settles two values: leave open the size of {name} too, or the force of another part.",
		atRest + "refuse.directions":        "The directions of {name} and {other} are both open. One open direction beside one unknown force can be worked here: give one of the two.",
		atRest + "refuse.round-direction":   "{other} runs round the particle while the direction of {name} is open: that is not worked here. Give the direction of {name}.",
		atRest + "refuse.two-forces":        "Only {name} and {other} act here, so they lie on one line and are equal. Add a load.",
		atRest + "refuse.one-line":          "The loads act along the line of {other}, so {name} can only act along it too, and its direction is no question. Turn {other}.",
		atRest + "refuse.short":             "{name} is too small to hold against what acts across the line of {other}, or only just large enough. Make it larger.",
		atRest + "refuse.idle":              "For equilibrium {name} has nothing to carry: its force is zero. Leave it out, or change a direction.",
		atRest + "refuse.spring":            "A spring is given by its stiffness, its stretch or compression, or its force, and only a spring has the first three: check {name}.",
		atRest + "refuse.mass":              "A mass belongs to a weight, or to what hangs over a pulley, and stands alone: give {name} a mass or a force, or ask for its mass, not two of them.",
		atRest + "refuse.lbm":               "A mass in pounds weighs as many pounds: give {name} as a force in lb, or as a mass in slugs.",
		atRest + "refuse.second":            "A second direction is for a cable that runs round the particle: make {name} a cable and give both directions.",
		atRest + "refuse.nothing":           "Every force is given, so there is nothing to find. Leave out one force or two.",
		atRest + "refuse.many":              "There are more unknowns here ({names}) than equilibrium settles: a particle has two equations, so two values can be found. Give one more force or direction.",
		atRest + "refuse.line":              "{names} act along one line, so equilibrium tells only what they come to together, not each. Turn one of them, or give its force.",
		atRest + "refuse.mechanism":         "{names} can't hold this particle: what is given pushes it across their line, and nothing balances that. It would move.",
		atRest + "refuse.inconsistent":      "What is given does not balance, so the particle would not stay at rest. Check the forces and directions, or leave one open.",
		atRest + "refuse.flat":              "{names} act along nearly one line, so the answer would be lost in rounding. Turn one of them.",
		atRest + "refuse.balanced":          "What is given balances by itself, so {name} is zero and has no direction.",
		atRest + "refuse.slack":             "For equilibrium {name} would have to push, and a cable can only pull: it would go slack. Check its direction, or make it a strut.",
		atRest + "refuse.strut-turned":      "For equilibrium {name} would have to pull, and a strut is taken to push here. Check its direction, or make it a cable.",
		atRest + "refuse.spring-turned":     "For equilibrium the spring {name} would have to push, and it is given as stretched. Check its direction, or give its compression.",
		atRest + "refuse.compressed-turned": "For equilibrium the spring {name} would have to pull, and it is given as compressed. Check its direction, or give its stretch.",
		atRest + "refuse.weight-turned":     "For equilibrium the weight {name} would have to lift, and a weight only pulls down. Check the directions.",
		atRest + "refuse.force-turned":      "For equilibrium {name} would have to act the other way. Turn its direction round.",

		atRest + "sumx.what": "the sum of the forces on the particle along x, which is zero",
		atRest + "sumx.look": "Look at the free-body diagram, and go round it: which forces have a part along x, and to which side does each point?",
		atRest + "sumy.what": "the sum of the forces on the particle along y, which is zero",
		atRest + "sumy.look": "Look at the free-body diagram, and go round it: which forces have a part along y, and which of them point down?",
		atRest + "g.what":    "the acceleration of gravity",
		atRest + "g.look":    "It is stated.",

		"principle.equilibrium-sum":    "A particle at rest: the forces on it add up to zero, along x and along y. Each force takes its part along the axis, with the sign the free-body diagram shows.",
		"principle.eliminate":          "Two equations, two unknowns: express one unknown by the other from one equation and put that into the other.",
		"principle.from-sum-x":         "Solve the sum along x for it.",
		"principle.from-sum-y":         "Solve the sum along y for it.",
		atRest + "look.weight-of-mass": "What does gravity make of a mass?",
		atRest + "look.spring-force":   "How do stretch and force of a spring go together?",

		"principle.weight-of-mass":       "A mass is not a force: its weight is the mass times the acceleration of gravity. A cable over a frictionless pulley pulls with the weight at its end.",
		"principle.mass-of-weight":       "The mass is the weight over the acceleration of gravity.",
		"principle.spring-force":         "A spring pulls with its stiffness times its stretch, or pushes with its stiffness times its compression.",
		"principle.along-across":         "Take one axis along this force and one across it. Across it, the force of open direction balances the known ones alone; the right-angle theorem gives what it has along the line; then sum along it.",
		"principle.component-over-force": "The component over the force is the sine or cosine of the direction. Two directions have that value: the sketch tells which is meant.",
		"principle.laid-from-force":      "Turn from the direction in which the other force acts by the angle between the two.",
		"principle.spring-law":           "A spring's force is its stiffness times its stretch or compression; solve for the one you want.",
		"principle.slope-angle":          "In the slope triangle the tangent of the angle is the rise over the run.",
		"principle.angle-between-forces": "The angle between two forces, tails together, is how far you turn from one to the other, the short way round.",
		"principle.full-turn":            "Three forces that balance share a full turn: the angles between them add up to 360°.",
		"principle.triangle-corner":      "The angle at which two forces meet head to tail, and the angle between them tails together, add up to 180°.",
		"principle.sine-law-forces":      "Three forces that balance close a triangle. In it each force divided by the sine of the angle opposite gives the same value.",
		"principle.lami":                 "Three forces that balance: each divided by the sine of the angle between the two others gives the same value (Lamy's theorem).",

		"feedback.equation.correct":     "Your equation holds.",
		"note.equation.digit-more":      "Keep one digit more in its numbers.",
		"feedback.equation.form":        "This can't be sorted by the unknowns. Write it as a sum of forces, each times a sine or a cosine, that equals zero.",
		"feedback.equation.nothing":     "This holds whatever the unknowns are, so it tells nothing. Which forces have a part along this axis?",
		"feedback.equation.repeated":    "This is true, but it says the same as your equation for {other}. Which direction has not been summed yet?",
		"feedback.equation.rounded":     "The sum is made rightly, as far as its numbers tell, but {what} looks rounded to {kept}. What is it with {keep}?",
		"feedback.equation.unexplained": "The forces on the particle do not balance this way yet. Go round the free-body diagram: which part of each force belongs in {symbol}, and with which sign?",

		"slip.mass-for-weight.title": "mass used where the weight belongs, or the reverse",
		"slip.mass-for-weight.ask":   "Is what you used {where} a mass or a force? What turns the one into the other?",
		"slip.gravity-twice.title":   "g applied to what is a weight already",
		"slip.gravity-twice.ask":     "Look at the unit of the load {where}: is it a mass that still needs g, or a force already?",
		"slip.gravity-other.title":   "another value of g than the one given",
		"slip.gravity-other.ask":     "Which value of g is given, and for which units of mass and force? Is it the one you used {where}?",

		"slip.gravity-inverted.title":   "divided by g instead of multiplied, or the reverse",
		"slip.gravity-inverted.ask":     "Which is the larger number for the same thing, its mass or its weight? So do you multiply by g {where}, or divide?",
		"slip.tension-doubled.title":    "the tension of a cable doubled at a pulley",
		"slip.tension-doubled.ask":      "A frictionless pulley only turns a cable. What is the tension on one side of it, when you know it on the other?",
		"slip.tension-halved.title":     "the tension of a cable halved at a pulley",
		"slip.tension-halved.ask":       "Does a cable share its tension between the two sides of a frictionless pulley, or is it the same on both?",
		"slip.spring-multiplied.title":  "multiplied where the spring's law divides",
		"slip.spring-multiplied.ask":    "A spring's force is its stiffness times its stretch. Put your {at} into that: does the force come out?",
		"slip.sense-reversed.title":     "a force drawn against its sense",
		"slip.sense-reversed.ask":       "Check the arrow of each force {where}: {arrows}. Do all of yours?",
		"slip.shared-equally.title":     "the load shared equally between the supports",
		"slip.shared-equally.ask":       "When do two supports carry the same? Do yours stand at the same angle?",
		"slip.force-in-other-sum.title": "a force put into the sum along an axis on which it has no part",
		"slip.force-in-other-sum.ask":   "Along which of the two axes does each force {where} act, and along which has it no part at all?",
		"slip.load-resolved.title":      "the load resolved along one support, the other left out",
		"slip.load-resolved.ask":        "Does {at} alone carry the load, or does another force act along its line too?",
	})
	add(ofParts())
}

// ofParts is what is said of the quantities of each part.
func ofParts() map[string]string {
	parts := map[string]string{}
	put := func(name, what, look string) {
		parts[atRest+name+".what"], parts[atRest+name+".look"] = what, look
	}
	for i := 1; i <= 6; i++ {
		n := strconv.Itoa(i)
		f := "{F" + n + "}"
		put("F"+n, "the force "+f+" on the particle", "Which sums hold "+f+", and what else is unknown in them? Or which side of the force triangle is it?")
		put("F"+n+"x", "the x component of "+f, "What must "+f+" do along x so that all balances?")
		put("F"+n+"y", "the y component of "+f, "What must "+f+" do along y so that all balances?")
		put("theta"+n, "the angle of "+f, "Which right triangle shows this angle, and which two sides of it are known?")
		put("psi"+n, "the second angle of "+f, "Which right triangle shows this angle, and which two sides of it are known?")
		for key, say := range map[string]string{"larger": "{name} has the larger of its two values", "smaller": "{name} has the smaller of its two values",
			"pulls": "{name} pulls", "pushes": "{name} pushes"} {
			parts[atRest+"case."+key+".F"+n] = strings.ReplaceAll(say, "{name}", f)
		}
		put("m"+n, "the mass behind "+f, "What does gravity make of a mass?")
		put("k"+n, "the stiffness of the spring "+f, "How do stretch and force of a spring go together?")
		put("s"+n, "how far the spring "+f+" is stretched or compressed", "How do stretch and force of a spring go together?")
	}
	for i, c := range [3][3]string{{"alpha", "{F2}", "{F3}"}, {"beta", "{F3}", "{F1}"}, {"gamma", "{F1}", "{F2}"}} {
		put("phi"+strconv.Itoa(i+1), "the angle between the forces "+c[1]+" and "+c[2]+", drawn tail to tail", "Draw both forces from one point, the way each acts on the particle. How far do you turn from one arrow to the other, the short way round?")
		put(c[0], "the angle of the force triangle between its sides "+c[1]+" and "+c[2], "Draw the three forces head to tail: they close. Find the corner where "+c[1]+" and "+c[2]+" meet; which force does it face?")
	}
	return parts
}
