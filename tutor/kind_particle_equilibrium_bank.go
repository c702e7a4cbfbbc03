package tutor

import "strings"

// equilibriumBank are problems of the harbour, in teaching order.
var equilibriumBank = []Source{
	atRest("A crate hangs from two cables under the quay's gantry.",
		heldBy("T1 cable", "direction: 40 deg above -x"), heldBy("T2 cable", "direction: 30 deg above +x"), heldBy("W weight", "mass: 120 kg")),
	atRest("The derrick's boom and its topping lift hold a load at the boom's head.",
		heldBy("T cable", "direction: 20 deg above -x"), heldBy("B strut", "direction: 48 deg below -x"), heldBy("W weight", "force: 8.5 kN")),
	atRest("A fender is held off the pile by a level line while it hangs from a rope.",
		heldBy("T cable", "direction: 25 deg right of +y"), heldBy("H cable", "direction: 180 deg"), heldBy("W weight", "force: 260 lb")),
	atRest("Two hawsers pull on a mooring buoy. Its chain holds it.",
		heldBy("P force", "direction: 20 deg", "force: 2.5 kN"), heldBy("Q force", "direction: 75 deg", "force: 1.8 kN"), heldBy("C cable")),
	atRest("A lamp hangs from a ring between a cable and a spring.",
		heldBy("T cable", "direction: 35 deg above -x"), heldBy("S spring", "direction: 50 deg above +x", "stiffness: 4 kN/m"), heldBy("W weight", "force: 900 N")),
	atRest("A boat's anchor hangs from a ring, held by a line and by a cable that runs over a pulley to a counterweight.",
		heldBy("T cable", "direction: 3:4 up left"), heldBy("C pulley", "direction: 55 deg above +x", "mass: 45 kg"), heldBy("W weight", "find: mass")),
	atRest("A snatch block carries a buoy on a rope that comes in from one side and leaves to the other.",
		heldBy("T cable", "direction: 62 deg above -x", "second: 62 deg above +x"), heldBy("W weight", "force: 1.2 kip")),
	atRest("A sinker of the harbour's survey hangs from two lines.",
		heldBy("A cable", "direction: 5:12 up left"), heldBy("B cable", "direction: 58 deg above +x"), heldBy("W weight", "mass: 14 slug")),
}

// atRest is the Source of a problem of this kind.
func atRest(story string, parts ...Source) Source {
	return branch("", leaf("kind", "particle-equilibrium"), leaf("story", story), branch("parts", parts...))
}

// heldBy is the Source of a part: its name and what it is, and fields.
func heldBy(named string, fields ...string) Source {
	name, is, _ := strings.Cut(named, " ")
	src := branch("", leaf("name", name), leaf("is", is))
	for _, f := range fields {
		key, value, _ := strings.Cut(f, ": ")
		src.Kids = append(src.Kids, leaf(key, value))
	}
	return src
}

// drawEquilibrium draws a particle held in one of the ways of the bank. Where
// directions are wanted in some quadrants alone, cable and strut share one, or
// the buoy's hawsers lie there.
func drawEquilibrium(d *Draw) Source {
	turn := func(lo, hi int, where string) string {
		return "direction: " + itoa(d.Step(lo, hi, 1)) + " deg " + where
	}
	force := func(unit string) string { return "force: " + itoa(d.Step(150, 950, 10)) + unit }
	ways := 6
	if d.within != [4]bool{true, true, true, true} {
		ways = 2
	}
	switch d.Below(ways) {
	case 0:
		return d.bracket()
	case 1:
		unit := []string{" N", " lb"}[d.Below(2)]
		return atRest("Two hawsers pull on a buoy. Its chain holds it.",
			heldBy("P force", "direction: "+itoa(d.Direction(1))+" deg", force(unit)),
			heldBy("Q force", "direction: "+itoa(d.Direction(1))+" deg", force(unit)), heldBy("C cable"))
	case 2:
		return atRest("A load hangs from two cables.", heldBy("T1 cable", turn(20, 70, "above -x")), heldBy("T2 cable", turn(20, 70, "above +x")), d.weight())
	case 3:
		return atRest("A derrick's boom and its topping lift hold a load.", heldBy("T cable", turn(12, 40, "above -x")), heldBy("B strut", turn(30, 70, "below -x")), d.weight())
	case 4:
		return atRest("A ring hangs between a cable and a spring and carries a load.", heldBy("T cable", turn(20, 70, "above -x")),
			heldBy("S spring", turn(20, 70, "above +x"), "stiffness: "+itoa(d.Step(2, 9, 1))+" kN/m"), heldBy("W weight", force(" N")))
	}
	return atRest("A line and a counterweight over a pulley hold a load.", heldBy("T cable", turn(20, 65, "above -x")),
		heldBy("C pulley", turn(20, 65, "above +x"), "mass: "+itoa(d.Step(15, 90, 5))+" kg"), heldBy("W weight", "find: mass"))
}

// bracket draws a cable and a strut on one side of the load.
func (d *Draw) bracket() Source {
	q := d.quadrant()
	where := []string{"above +x", "above -x", "below -x", "below +x"}[q]
	steep, flat := itoa(d.Step(46, 78, 1)), itoa(d.Step(13, 44, 1))
	cable, strut := steep, flat
	if q > 1 { // from below the strut carries
		cable, strut = flat, steep
	}
	return atRest("A bracket of a cable and a strut on the quay wall carries a load.",
		heldBy("T cable", "direction: "+cable+" deg "+where), heldBy("B strut", "direction: "+strut+" deg "+where), d.weight())
}

// weight draws a load, as a force or as a mass.
func (d *Draw) weight() Source {
	switch d.Below(4) {
	case 0:
		return heldBy("W weight", "force: "+itoa(d.Step(150, 950, 10))+" N")
	case 1:
		return heldBy("W weight", "force: "+itoa(d.Step(120, 900, 10))+" lb")
	case 2:
		return heldBy("W weight", "mass: "+itoa(d.Step(2, 30, 1))+" slug")
	}
	return heldBy("W weight", "mass: "+itoa(d.Step(20, 400, 5))+" kg")
}
