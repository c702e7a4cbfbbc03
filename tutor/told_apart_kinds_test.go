package tutor

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// Mistakes of the other kinds that were once not seen, or told as others. The
// values are worked by hand.
func TestMistakesOfOtherKindsToldApart(t *testing.T) {
	three := kinds.ConcurrentForcesSource("Three lines.", kinds.ForceSource("A", "400 N", "25 deg"), kinds.ForceSource("B", "520 N", "140 deg"), kinds.ForceSource("C", "450 N", "250 deg"))
	sloped := kinds.ConcurrentForcesSource("Three lines.", kinds.ForceSource("A", "400 N", "15:8 up right"), kinds.ForceSource("B", "520 N", "43 deg above -x"), kinds.ForceSource("C", "450 N", "8:15 up right"))
	held := kinds.EquilibriumSource("", kinds.PartSource("A force", "force: 80 lb", "direction: 3:4 up left"), kinds.PartSource("B force", "force: 60 lb", "direction: S 20 W"), kinds.PartSource("F force"))
	slopes := pulledDown("32.2 ft/s^2", kinds.PartSource("A cable", "direction: 3:4 up left"), kinds.PartSource("B cable", "direction: 5:12 up right"), kinds.PartSource("W weight", "mass: 3 slug"))
	halves := kinds.EquilibriumSource("", kinds.PartSource("A cable", "direction: 50 deg above -x"), kinds.PartSource("B cable", "direction: 35 deg above +x"), kinds.PartSource("W weight", "force: 400 N"))
	crossed := kinds.ObliqueComponentsSource("", kinds.ForceSource("F", "500 N", "30 deg"), kinds.AxisSource("u", "0 deg"), kinds.AxisSource("v", "110 deg"))
	leaning := kinds.ObliqueComponentsSource("", kinds.ForceSource("P", "560 N", "70 deg"), kinds.AxisSource("u", "25 deg"), kinds.AxisSource("v", "118 deg"))
	pulled := kinds.ConcurrentForcesSource("Three lines.", kinds.ForceSource("A", "240 lb", "144 deg"), kinds.ForceSource("B", "770 lb", "40 deg above -x"), kinds.ForceSource("C", "160 lb", "44 deg"))
	crate := pulledDown("9.81 m/s^2", kinds.PartSource("T1 cable", "direction: 40 deg above -x"), kinds.PartSource("T2 cable", "direction: 30 deg above +x"), kinds.PartSource("W weight", "mass: 120 kg"))
	load := kinds.EquilibriumSource("", kinds.PartSource("T1 cable", "direction: 40 deg above -x"), kinds.PartSource("T2 cable", "direction: 30 deg above +x"), kinds.PartSource("W weight", "force: 520 N"))
	wide := kinds.ConcurrentForcesSource("Three lines.", kinds.ForceSource("A", "760 N", "147 deg"), kinds.ForceSource("B", "500 N", "30 deg"), kinds.ForceSource("C", "350 N", "-62 deg"))
	mixed := kinds.ConcurrentForcesSource("Three lines.", kinds.ForceSource("A", "760 N", "155 deg"), kinds.ForceSource("B", "500 N", "30 deg"), kinds.ForceSource("C", "350 N", "3:4 down right"))
	back := kinds.ComponentsSource("", "F", "760 N", "-25 deg")
	high := kinds.ComponentsSource("", "F", "400 N", "25 deg above -x")
	southerly := kinds.ComponentsSource("", "F", "400 N", "S 20 E")
	flat := kinds.ComponentsSource("", "F", "400 N", "5:12 down left")
	steep := kinds.ObliqueComponentsSource("", kinds.ForceSource("F", "500 N", "90 deg"), kinds.AxisSource("u", "-20 deg"), kinds.AxisSource("v", "134 deg"))
	crossing := kinds.ObliqueComponentsSource("", kinds.ForceSource("F", "500 N", "65 deg"), kinds.AxisSource("u", "25 deg"), kinds.AxisSource("v", "118 deg"))
	lashed := kinds.EquilibriumSource("", kinds.PartSource("T1 cable", "direction: 40 deg above -x"), kinds.PartSource("T2 cable", "direction: 26 deg above +x"), kinds.PartSource("W weight", "force: 800 N"))
	leftward := kinds.ConcurrentForcesSource("Three lines.", kinds.ForceSource("A", "500 N", "30 deg above -x"), kinds.ForceSource("B", "300 N", "60 deg above +x"), kinds.ForceSource("C", "400 N", "20 deg below -x"))
	outside := kinds.ObliqueComponentsSource("", kinds.ForceSource("P", "470 N", "40 deg"), kinds.AxisSource("u", "4 deg"), kinds.AxisSource("v", "-63 deg"))
	level := kinds.FromComponentsSource("", "F", "600 N", "810 N")
	tallied := kinds.FromComponentsSource("", "F", "-310 N", "875 N")
	turned := kinds.MissingForceSource("", kinds.ForceSource("P", "250 N", "-150 deg"), kinds.MissingSource("Q", "magnitude", "690 N"), kinds.DirectedSource("-87 deg"))
	braced := kinds.EquilibriumSource("", kinds.PartSource("T cable", "direction: 56 deg above -x"), kinds.PartSource("B strut", "direction: 26 deg below -x"), kinds.PartSource("W weight", "force: 520 N"))
	hauled := kinds.EquilibriumSource("", kinds.PartSource("P force", "direction: 48 deg", "force: 190 N"), kinds.PartSource("Q force", "direction: 174 deg", "force: 550 N"), kinds.PartSource("C cable"))
	tied := kinds.EquilibriumSource("", kinds.PartSource("A cable", "direction: 40 deg above -x"), kinds.PartSource("B cable", "direction: 30 deg above +x"), kinds.PartSource("P force", "direction: -24 deg", "force: 200 N"), kinds.PartSource("W weight", "force: 750 N"))
	gripped := kinds.MissingForceSource("", kinds.ForceSource("P", "400 N", "30 deg"), kinds.MissingSource("Q", "direction", "140 deg"), kinds.DirectedSource("75 deg"))
	pitched := kinds.EquilibriumSource("", kinds.PartSource("T1 cable", "direction: 52 deg above -x"), kinds.PartSource("T2 cable", "direction: 3:4 up right"), kinds.PartSource("W weight", "force: 750 lb"))
	split := kinds.ObliqueComponentsSource("", kinds.ForceSource("P", "590 lb", "86 deg"), kinds.AxisSource("u", "50 deg"), kinds.AxisSource("v", "122 deg"))
	sprung := kinds.EquilibriumSource("", kinds.PartSource("T cable", "direction: 35 deg above -x"), kinds.PartSource("S spring", "direction: 50 deg above +x", "stiffness: 4 kN/m"), kinds.PartSource("W weight", "force: 900 N"))
	downhill := kinds.ComponentsSource("", "G", "6.5 kN", "3:4 down left")
	leaned := kinds.ObliqueComponentsSource("", kinds.ForceSource("M", "6.4 kN", "52 deg"), kinds.AxisSource("a", "0 deg"), kinds.AxisSource("b", "75 deg"))
	boomed := kinds.ObliqueComponentsSource("", kinds.ForceSource("P", "450 N", "70 deg"), kinds.AxisSource("u", "36 deg"), kinds.AxisSource("v", "112 deg"))
	beyond := kinds.ObliqueComponentsSource("", kinds.ForceSource("P", "470 N", "40 deg"), kinds.AxisSource("u", "10 deg"), kinds.AxisSource("v", "-70 deg"))
	needed := kinds.MissingForceSource("", kinds.ForceSource("P", "780 N", "153 deg"), kinds.MissingSource("Q"), kinds.ResultantSource("900 N", "-123 deg"))
	upheld := kinds.EquilibriumSource("", kinds.PartSource("T1 cable", "direction: 70 deg above -x"), kinds.PartSource("T2 cable", "direction: 32 deg above +x"), kinds.PartSource("W weight", "force: 700 N"))
	least := kinds.MissingForceSource("", kinds.ForceSource("P", "360 N", "140 deg"), kinds.MissingSource("Q"), kinds.DirectedSource("167 deg"), lesson.Leaf("find", "smallest"))
	shallow := kinds.FromComponentsSource("", "F", "560 N", "-210 N")
	clasped := kinds.MissingForceSource("", kinds.ForceSource("P", "430 N", "30 deg"), kinds.MissingSource("Q", "direction", "140 deg"), kinds.DirectedSource("75 deg"))
	astride := kinds.ObliqueComponentsSource("", kinds.ForceSource("P", "770 N", "80 deg"), kinds.AxisSource("u", "133 deg"), kinds.AxisSource("v", "63 deg"))
	lowered := kinds.ObliqueComponentsSource("", kinds.ForceSource("P", "450 lb", "-28 deg"), kinds.AxisSource("u", "-68 deg"), kinds.AxisSource("v", "-96 deg"))
	spread := kinds.ObliqueComponentsSource("", kinds.ForceSource("Q", "410 N", "-76 deg"), kinds.AxisSource("u", "-26 deg"), kinds.AxisSource("v", "-141 deg"))
	swung := kinds.MissingForceSource("", kinds.ForceSource("P", "340 N", "-152 deg"), kinds.MissingSource("Q"), kinds.DirectedSource("-112 deg"), lesson.Leaf("find", "smallest"))
	bridled := kinds.ObliqueComponentsSource("", kinds.ForceSource("P", "740 N", "-154 deg"), kinds.AxisSource("u", "-173 deg"), kinds.AxisSource("v", "130 deg"))
	opposed := kinds.MissingForceSource("", kinds.ForceSource("P", "680 lb", "83 deg"), kinds.MissingSource("Q", "direction", "-142 deg"), kinds.DirectedSource("166 deg"))
	nearly := kinds.ConcurrentForcesSource("Three lines.", kinds.ForceSource("A", "900 lb", "-96 deg"), kinds.ForceSource("B", "600 lb", "S 76 E"), kinds.ForceSource("C", "790 lb", "2:3 down left"))
	rows := []struct {
		name    string
		problem lesson.Source
		entries string
		verdict verdict.Verdict
		told    string // the ids of the first slip, where it is carried from, or what is rounded
	}{
		{"the bracket around two angles left out", leaning, "beta 45; gamma 87; alpha 222", verdict.SlipFound, "bracket-lost"},
		{"the same, for the other angle", leaning, "beta 45; gamma 87; alpha 138", verdict.SlipFound, "bracket-lost"},
		{"a stretch by its stiffness times the force", sprung, "F2 740.1; s2 2960400", verdict.SlipFound, "spring-multiplied"},
		{"a force left out, entered as the resultant", three, "R 504.6", verdict.SlipFound, "term-missing"},
		{"a force left out, entered as its direction", three, "theta -170.88", verdict.SlipFound, "term-missing"},
		{"a force left out of a sum, its components entered", pulled, "F1y 141.07; F2y 494.95; F3y 111.15; Ry 636.02", verdict.SlipFound, "term-missing"},
		{"a force left out of a sum, worked from what the calculator holds", pulled, "F1y 141.07; F2y 494.95; F3y 111.15; Ry 636.01", verdict.SlipFound, "term-missing"},
		// 760·sin 25°, and 350·(3/5), to the side of the sketch
		{"the acute angle taken from the other axis", mixed, "F1x -321.2", verdict.SlipFound, "other-axis sine-cosine-swapped"},
		{"a slope's angle taken from the other axis", mixed, "F3x 210", verdict.SlipFound, "other-axis sine-cosine-swapped slope-inverted"},
		{"the force over the cosine", back, "Fx 838.6", verdict.SlipFound, "ratio-inverted"},
		{"the force over the sine", back, "Fy -1798", verdict.SlipFound, "ratio-inverted"},
		{"the tangent of the angle", back, "Fy -354.4", verdict.SlipFound, "tangent-taken"},
		{"a negative component squared without brackets", tallied, "F sqrt(-310^2+875^2)", verdict.SlipFound, "minus-outside-square"},
		{"the angle by its sine from a wrong magnitude", tallied, "F 1185; alpha 47.6", verdict.Carried, "F"},
		{"the direction by its cosine from a wrong magnitude", tallied, "F 1185; theta 105.2", verdict.Carried, "F"},
		{"the acute angle from the other axis, gone on from", high, "alpha 65; theta 115", verdict.Carried, "alpha"},
		{"the acute angle from the other axis, in the head", high, "theta 115", verdict.SlipFound, "other-axis"},
		{"a bearing's angle from the other axis, gone on from", southerly, "alpha 20; theta -20", verdict.Carried, "alpha"},
		{"a slope's angle from the other axis, gone on from", flat, "alpha 67.38; theta -112.62", verdict.Carried, "alpha"},
		{"all sines of a step kept to two digits", steep, "alpha 44; gamma 26; Fu 784.1", verdict.EarlyRounding, "sin α, sin γ"},
		{"all sines of a step kept to two digits, one of two", lashed, "F1 791.2", verdict.EarlyRounding, "sin α, sin γ"},
		{"the cable's angle for the one to the weight", lashed, "phi1 26", verdict.SlipFound, "direction-for-angle"},
		{"the cable's angle for the one to the weight, of another", crate, "phi1 30", verdict.SlipFound, "direction-for-angle"},
		{"the slope's angle for the one to the weight", slopes, "phi2 36.87", verdict.SlipFound, "direction-for-angle"},
		{"all signs of a sum dropped", leftward, "F1x -433.0; F2x 150; F3x -375.9; Rx 958.9", verdict.SlipFound, "sign-lost"},
		{"a part along x in the sum along y", leftward, "F1y 250; F2y 259.8; F3y -136.8; F1x -433.0; Ry -310.0", verdict.SlipFound, "part-in-other-sum"},
		{"a side with an angle not opposite it", lashed, "F1 938.6", verdict.SlipFound, "other-force"},
		{"both sides with the other's angle or the third", lashed, "F1 954.0", verdict.SlipFound, "other-force"},
		{"a leg over the other leg, written out", downhill, "Fx -6.5*3/4", verdict.SlipFound, "tangent-taken"},
		{"the same, and the sign lost", downhill, "Fx 6.5*3/4", verdict.SlipFound, "tangent-taken"},
		{"legs exchanged, written out", downhill, "Fx -6.5*3/5", verdict.SlipFound, "slope-inverted"},
		{"both components by a right triangle", leaned, "Fu 3.94; Fv 5.04", verdict.SlipFound, "right-triangle-assumed"},
		{"all sines kept to one digit, one of them 1", boomed, "Fu 315.0", verdict.EarlyRounding, "sin α, sin γ"},
		{"a component with an angle not opposite it", crossing, "Fu 776.8", verdict.SlipFound, "other-force"},
		{"the parallelogram's other angles not halved", crossing, "phi 93; gamma 174", verdict.SlipFound, "angles-not-halved"},
		{"no angle is carried from itself", outside, "alpha 67; phi 247; gamma 161.57", verdict.Unexplained, ""},
		{"the cosine kept to one digit before its inverse", level, "F 1008; theta 53.13", verdict.EarlyRounding, "Fx/F"},
		{"the sine written down as the angle", tallied, "F 928.3; alpha 0.9426", verdict.SlipFound, "inverse-missing"},
		{"sizes not squared", tallied, "F 34.42", verdict.SlipFound, "squares-missing"},
		{"one size not squared", tallied, "F 875.2", verdict.SlipFound, "one-square-missing"},
		{"the axis's direction for the force's, and downwards", leaning, "Fy -236.7", verdict.SlipFound, "clockwise+other-force opposite-sense+other-force other-force+sign-lost"},
		{"the axis's direction for the force's, and its sine", leaning, "Fx 236.7", verdict.SlipFound, "other-axis+other-force other-force+sine-cosine-swapped"},
		{"two equations, a term left out", leaning, "Fx 191.5; Fy 526.2; Fv 596.0", verdict.SlipFound, "term-missing"},
		{"two equations, another left out", leaning, "Fx 191.5; Fy 526.2; Fu 2097.5", verdict.SlipFound, "term-missing"},
		{"two equations, a sine for a cosine", leaning, "Fx 191.5; Fy 526.2; Fu 540.1", verdict.SlipFound, "sine-cosine-swapped"},
		{"sine for cosine of the acute angle", wide, "F1x -413.9", verdict.SlipFound, "sine-cosine-swapped"},
		{"sine for cosine of the acute angle, below the axis", wide, "F3y -164.3", verdict.SlipFound, "sine-cosine-swapped"},
		{"the whole force with its sign", wide, "F1x -760", verdict.SlipFound, "magnitudes-for-components"},
		{"the acute angle in radians", wide, "F1y 759.9", verdict.SlipFound, "radian-mode"},
		{"the acute angle in gradians", wide, "F1x -660.2", verdict.SlipFound, "gradian-mode"},
		{"the force before taken", mixed, "F2x 658.2", verdict.SlipFound, "other-force"},
		{"the angle of the force before", mixed, "F2x -453.2", verdict.SlipFound, "other-force"},
		{"the weight in the sum along x", crate, "sumx T1 cos 40 + W = T2 cos 30", verdict.SlipFound, "force-in-other-sum"},
		{"the other cable's angle", crate, "sumy T1 sin 40 + T2 sin 40 = 1177.2", verdict.SlipFound, "other-force"},
		{"cosine for sine of an angle below the axis", tied, "sumy A sin 40 + B sin 30 - 200 cos 24 - 750 = 0", verdict.SlipFound, "sine-cosine-swapped"},
		{"the sine law upside down", leaning, "Fv 790.9", verdict.SlipFound, "ratio-inverted"},
		{"the sine law upside down, its angle found", leaning, "gamma 87; Fv 790.9", verdict.SlipFound, "ratio-inverted"},
		{"the sine law upside down, of three forces", load, "F1 564.2", verdict.SlipFound, "ratio-inverted"},
		{"one force from the other upside down", load, "F1 479.2; F2 541.7", verdict.SlipFound, "ratio-inverted"},
		{"cosines in the sine law", load, "F1 760.2", verdict.SlipFound, "sine-cosine-swapped"},
		{"angles in the sine law", load, "F1 445.7", verdict.SlipFound, "sine-missing"},
		{"a weight over g", load, "F1 48.85", verdict.SlipFound, "mass-for-weight"},
		{"the angle beside the other force", turned, "alpha 18.83; theta2 -131.17", verdict.SlipFound, "wrong-neighbour"},
		{"a right triangle assumed", turned, "R 653.1", verdict.SlipFound, "right-triangle-assumed"},
		{"the strut as it lies", braced, "phi3 82", verdict.SlipFound, "sense-reversed"},
		{"the long way round", load, "phi1 240", verdict.SlipFound, "reflex-angle"},
		{"an entry kept to one digit where it is used again", wide, "F1y 413.9; F2y 250.0; F3y -309.0; Ry 341.0", verdict.EarlyRounding, "Ay"},
		{"the two known forces added", hauled, "F3 740", verdict.SlipFound, "magnitudes-added"},
		{"the two known forces subtracted", hauled, "F3 360", verdict.SlipFound, "magnitudes-subtracted"},
		{"a slope upside down", sloped, "R 840.3", verdict.SlipFound, "slope-inverted"},
		{"an angle from −x taken from y", sloped, "R 972.8", verdict.SlipFound, "sine-cosine-swapped other-axis"},
		{"57 for S 75 E", kinds.ComponentsSource("", "F", "500 N", "S 75 E"), "Fx 419.3", verdict.SlipFound, "given-miscopied"},
		{"26 for 62 above −x", kinds.ComponentsSource("", "F", "500 N", "62 deg above -x"), "Fx -449.4", verdict.SlipFound, "given-miscopied"},
		{"from the sum along x miscopied", held, "sumx Fx - 70 - 60 sin 20 = 0; F3x 90.52", verdict.Carried, "sumx"},
		{"from that sum, by force and direction", held, "sumx F cos(θF) - 70 - 60 sin 20 = 0; F3x 90.52", verdict.Carried, "sumx"},
		{"whole forces in a sum", held, "sumx Fx - 80 - 60 = 0", verdict.SlipFound, "magnitudes-for-components"},
		{"a slope upside down in a sum", slopes, "sumx 3/5 A = 12/13 B", verdict.SlipFound, "slope-inverted"},
		{"a slope upside down", slopes, "theta1 53.13", verdict.SlipFound, "slope-inverted"},
		{"half the weight held up by each", halves, "F1 261.1", verdict.SlipFound, "shared-equally"},
		{"the two components exchanged", crossed, "Fu 266.0; Fv 524.0", verdict.SlipFound, "other-force"},
		{"what is left along x after a wrong one", leaning, "Fu 396.5; Fv 357.5", verdict.Carried, "Fu"},
		{"what is left along y after a wrong one", leaning, "Fu 396.5; Fv 406.2", verdict.Carried, "Fu"},
		{"the known force written for the resultant", turned, "R 250", verdict.SlipFound, "other-force"},
		{"a given angle misread, in what sums of it give", astride, "phi 74.00", verdict.SlipFound, "other-axis"},
		{"near that, where sums leave no rounding", astride, "phi 74.03", verdict.Unexplained, ""},
		{"an angle of the statement, by sines", lowered, "alpha 105.02", verdict.Unexplained, ""},
		{"the angle between the axes for one beside the force", spread, "beta 115.00", verdict.SlipFound, "other-force"},
		{"on from a component of the wrong sense, by its size", bridled, "Fu -545.7; Fv -183.1", verdict.Carried, "Fu"},
		{"on from a wrong angle, one step in the head", swung, "beta -264; R 35.54", verdict.Carried, "beta"},
		{"the tangent for the cosine, along the resultant", swung, "R 285.3", verdict.SlipFound, "tangent-taken"},
		{"the smallest force resolved for the given one", swung, "R 167.4", verdict.SlipFound, "other-force"},
		{"a sine law upside down", opposed, "F2 0.001168", verdict.SlipFound, "ratio-inverted"},
		{"a small sum from a wrong part, each kept to three digits", nearly, "F3x -499.0; Rx -11.50", verdict.Carried, "F3x"},
		{"the third angle below, for another", clasped, "F2 323.6", verdict.SlipFound, "other-force"},
		{"the resultant's angle over a wrong one", gripped, "R 531.6", verdict.SlipFound, "other-force"},
		{"a slope upside down in one sum alone", pitched, "F1 534.3", verdict.SlipFound, "slope-inverted"},
		{"the second component by squares, as at right angles", leaning, "Fu 416.7; Fv 374.1", verdict.SlipFound, "right-triangle-assumed"},
		{"the same, of a component that is negative", beyond, "Fu 448.5; Fv -140.5", verdict.SlipFound, "right-triangle-assumed"},
		{"the second component as what the first leaves of the force", leaning, "Fu 416.7; Fv 143.3", verdict.SlipFound, "magnitudes-subtracted"},
		{"the angle between the axes, a component against its axis", outside, "phi 67", verdict.SlipFound, "axes-for-components"},
		{"the smallest force and the known one taken for the legs", least, "F2 163.4; R 395.4", verdict.SlipFound, "perpendicular-to-given"},
		{"the smallest force and the known one added", least, "F2 163.4; R 523.4", verdict.SlipFound, "magnitudes-added"},
		{"the smallest force by dividing", least, "F2 793.0", verdict.SlipFound, "ratio-inverted"},
		{"the two cables' angles exchanged", crate, "sumx T1 cos 30 = T2 cos 40", verdict.SlipFound, "other-force"},
		{"the two cables' angles exchanged, solved", load, "F1 430.5", verdict.SlipFound, "other-force"},
		{"one cable from the other, its own angle left out", load, "F1 479.2; F2 367.1", verdict.SlipFound, "magnitudes-for-components"},
		{"the other force's acute angle, its own sign", hauled, "sumx 190 cos 48 - 550 cos 48 + Cx = 0", verdict.SlipFound, "other-force"},
		{"a sine for a cosine of a full direction", crate, "sumx T1 sin 140 + T2 cos 30 = 0", verdict.SlipFound, "sine-cosine-swapped"},
		{"sines for cosines of acute angles, throughout a sum", hauled, "sumx 190 sin 48 - 550 sin 6 + Cx = 0", verdict.SlipFound, "sine-cosine-swapped"},
		{"cosines for sines of full directions, throughout a sum", crate, "sumy T1 cos 140 + T2 cos 30 - W = 0", verdict.SlipFound, "sine-cosine-swapped"},
		{"the resultant's direction for the smallest force's", least, "theta2 167", verdict.SlipFound, "other-force"},
		{"a direction in the second quadrant, all in radians", tallied, "theta 1.91", verdict.SlipFound, "radians-unnamed"},
		{"the sine of the acute angle as leg over leg", shallow, "alpha 22.02", verdict.SlipFound, "tangent-missed"},
		{"the same, in the direction", shallow, "theta -22.02", verdict.SlipFound, "tangent-missed"},
		{"the cosine as leg over leg", shallow, "alpha 67.98", verdict.SlipFound, "tangent-missed"},
		{"solved from a wrong component of the known force", gripped, "F1x 346.4; F1y -200; F2 426.3", verdict.Carried, "F1y"},
		{"the resultant by the sum along y from a wrong force", gripped, "F1x 346.4; F1y 200; F2 350; R 440.0", verdict.Carried, "F2"},
		{"the resultant by the sum along x from a wrong force", gripped, "F2 350; R 302.5", verdict.Carried, "F2"},
		{"the force by the sum along y from a wrong resultant", gripped, "R 350; F2 214.8", verdict.Carried, "R"},
		{"leg over leg in every part of a sum", slopes, "sumx 3/4 A = 5/12 B", verdict.SlipFound, "tangent-taken"},
		{"leg over leg in every part of the other sum", slopes, "sumy 3/4 A + 5/12 B = W", verdict.SlipFound, "tangent-taken"},
		{"an angle between forces by the other axis", load, "phi1 150", verdict.SlipFound, "other-axis"},
		{"one of two angles from the other axis", load, "phi3 100", verdict.SlipFound, "other-axis"},
		{"the long way round from a force along a slope", slopes, "phi1 247.38", verdict.SlipFound, "reflex-angle"},
		{"another angle between forces", upheld, "phi1 78", verdict.SlipFound, "other-force"},
		{"another corner of the triangle", upheld, "gamma 20", verdict.SlipFound, "other-force"},
		{"the angle between the force and an axis for that of the axes", leaning, "phi 48", verdict.SlipFound, "other-force"},
		{"the long way from an axis to the force", leaning, "alpha 312", verdict.SlipFound, "reflex-angle"},
		{"the force taken from a larger component", crossed, "Fu 524.0; Fv 24.00", verdict.SlipFound, "magnitudes-subtracted"},
		{"the resultant for the known force in the sine law", needed, "beta 84; F2 1127.7; alpha 52.54", verdict.SlipFound, "other-force"},
		{"two equations by acute angles, in radians", split, "Fx 41.16; Fy 588.6; Fu 119.8", verdict.SlipFound, "radian-mode"},
	}
	for _, row := range rows {
		t.Run(row.name, func(t *testing.T) {
			r := enterAll(solvedBy(t, row.problem), row.entries, "; ")
			require.Equal(t, row.verdict, r.Verdict, "%s %v", r.Feedback, r.Slips)
			switch r.Verdict {
			case verdict.Carried:
				assert.Equal(t, row.told, r.From)
				return
			case verdict.EarlyRounding:
				assert.Equal(t, row.told, r.Rounded.What)
				return
			}
			for _, id := range strings.Fields(row.told) {
				assert.Contains(t, r.Slips[0].IDs, id)
			}
		})
	}
}

// An angle above or below an axis is asked about where the other end of it may
// be meant, and taken where it fits.
func TestAnAxisWithoutItsEnd(t *testing.T) {
	w := NewWork(solvedBy(t, kinds.ComponentsSource("", "T", "270.6 N", "62.5 deg below -x")), lesson.DefaultSettings())
	r := w.Enter("theta", "62.5° below the horizontal")
	assert.Equal(t, verdict.Unreadable, r.Verdict)
	assert.Contains(t, r.Feedback, "which end")
	assert.Equal(t, verdict.Correct, w.Enter("theta", "62.5° below −x").Verdict)
	w = NewWork(solvedBy(t, kinds.ComponentsSource("", "T", "270.6 N", "62.5 deg below +x")), lesson.DefaultSettings())
	assert.Equal(t, verdict.Correct, w.Enter("theta", "62.5° below the horizontal").Verdict)
}

// The one direction that is asked may be called θ.
func TestTheOneDirectionIsCalledTheta(t *testing.T) {
	l := solvedBy(t, kinds.EquilibriumSource("", kinds.PartSource("T cable", "direction: 65 deg above -x"), kinds.PartSource("F cable", "force: 455 N"), kinds.PartSource("W weight", "force: 350 N")))
	for _, entry := range []string{"455 cos θ = T cos 65", "F cos(theta) - T cos 65 = 0"} {
		r := NewWork(l, lesson.DefaultSettings()).Enter("sumx", entry)
		assert.Equal(t, verdict.Correct, r.Verdict, r.Feedback)
	}
}
