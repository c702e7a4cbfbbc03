package text

// reader holds what is said when an entry cannot be read: one sentence each,
// what is wrong and what would do.
var reader = map[string]string{
	"entry.empty":     "Nothing is written yet: type a value, such as 12.3, or the working that leads to it.",
	"entry.too-long":  "This is longer than {limit} characters: enter the steps one by one.",
	"entry.too-deep":  "More than {limit} brackets and signs stand inside one another here: enter an inner part as a step of its own.",
	"entry.character": "“{what}” can't be read here: use digits, letters, + − × / ^ and brackets.",

	"entry.comma":       "Is {typed} the whole number {thousands}, or {decimal} with a decimal comma? Please write it one of these two ways.",
	"entry.space":       "Is {typed} one number? Then write it as {joined}; if it is two, enter one of them.",
	"entry.number":      "The points and commas of {typed} don't go together: write one decimal point and no other marks.",
	"entry.too-large":   "{typed} is far beyond any value used here: check its exponent.",
	"entry.superscript": "{typed} can't be read as a power: raise to a whole number such as ², or write ^ and the power.",
	"entry.two-values":  "A second value begins here: enter one value, or put + − × or / between the two.",

	"entry.minutes":          "Are these {typed} minutes of arc? Then put ′ behind them, as in 52°30′; otherwise write the angle with decimals.",
	"entry.minutes-range":    "{typed} is too many: minutes and seconds of arc stay below 60, so carry the rest over.",
	"entry.minutes-decimals": "Only the last part of an angle in degrees, minutes and seconds can have decimals: write 52°30′ or 52.5°.",

	"entry.unknown-name":      "“{name}” is not a name in this problem: use the letters of the sketch, or numbers.",
	"entry.unknown-name-near": "“{name}” is not a name in this problem: is {near} meant?",
	"entry.not-found-yet":     "{name} has no value yet: find it first, or write this with what you already have.",
	"entry.own":               "{name} is what is asked here, so it can't be part of its own value: write it with other quantities.",
	"entry.other-quantity":    "This says what {name} is, and something else is asked here: enter it in the box for {name}.",

	"entry.wrong-dimension":  "This is {is}, and {wanted} is asked here: give a value in {unit}.",
	"entry.angle-misplaced":  "This is an angle, and {wanted} is asked here: give a value in {unit}, or enter the angle in its own box.",
	"entry.ratio-asked":      "This is {is}, and a plain ratio is asked here: give a number without a unit.",
	"entry.mixed":            "{right} can't be added to {left} or taken from it: check the units of the two.",
	"entry.trig-of":          "This is {is}, and {function} is taken of an angle: put the angle there.",
	"entry.inverse-of":       "This is {is}, and {function} is taken of a ratio: divide by another value of the same kind first.",
	"entry.radians":          "Angles are in degrees here, and this looks like radians: write degrees (with ° if so small an angle is meant), or put rad behind it.",
	"entry.dimension.ratio":  "a ratio",
	"entry.dimension.angle":  "an angle",
	"entry.dimension.force":  "a force",
	"entry.dimension.length": "a length",
	"entry.dimension.moment": "a moment",
	"entry.dimension.mass":   "a mass",

	"entry.dimension.stiffness":    "a stiffness",
	"entry.dimension.acceleration": "an acceleration",
	"entry.degrees":                "degrees",

	"entry.unit-alone":    "A number is missing before {unit}: write it in front of the unit.",
	"entry.unit-place":    "{unit} can't stand here: write a unit right behind a number or a closing bracket.",
	"entry.unit-names":    "{name} has its unit already: leave {unit} out here.",
	"entry.unit-required": "The unit is missing: write it behind the number, for example {unit}.",
	"entry.numbers-only":  "A single number is asked here: work this out and enter the result.",

	"entry.unfinished":     "The entry stops behind this: a number or a name should follow.",
	"entry.missing-before": "A number or a name is missing before this: put it in, or take this away.",
	"entry.bracket-open":   "This bracket is never closed: put ) where it should end.",
	"entry.bracket-close":  "No bracket is open that this one could close: take it away, or put ( where it should begin.",
	"entry.bracket-empty":  "There is nothing between these brackets: write what belongs there.",
	"entry.bar-open":       "This bar is never closed: put a second | where it should end.",
	"entry.equals":         "One = is enough: write a single value, or one side = the other.",

	"entry.function-alone": "{function} needs something to be taken of: write it behind, in brackets.",
	"entry.function-power": "Behind {function} only a power 1, 2, 3, … or −1 (the inverse) can be read: put brackets around the whole to raise it otherwise.",
	"entry.inverse-alone":  "This asks for the inverse of a function, and none follows: write sin, cos or tan behind it.",

	"entry.root-negative":  "The value under this root is below zero, so it has no root: check the signs and squares under it.",
	"entry.inverse-range":  "{function} is taken of {value} here, and no angle gives a value beyond 1 or −1: is the fraction the right way up?",
	"entry.inverse-beyond": "{function} is taken of a value beyond 1 or −1 here, and no angle gives that: is the fraction the right way up?",
	"entry.divide-zero":    "This divides by zero: check what stands below the fraction line.",
	"entry.undefined":      "This has no value: check each function and power in it.",
	"entry.not-linear":     "With {name} unknown, it may only be added to or taken from numbers, or multiplied and divided by them: write it like 118° − {name}.",
	"entry.two-unknowns":   "{name} and {other} are both unknown here: write this with one of them.",

	"entry.equation-asked": "An equation is asked here: write the sum with its unknowns in it, such as T1 cos 40 − T2 cos 30 = 0.",

	"entry.measure":           "A number with its unit is needed: write it like 340 N or 25 deg.",
	"entry.measure-unit":      "The unit of {is} is missing: write it behind the number.",
	"entry.measure-dimension": "This is {is}, and {wanted} is needed: check the unit.",
	"entry.unknown-unit":      "“{name}” is not a unit that can be read here: use one such as N, kN, lb, kip, m, ft or deg.",

	"entry.heading":            "This part of the direction can't be read: write it like 25°, 30° below −x, 20° clockwise from +y, N 30° E or 3:4 up left.",
	"entry.heading-unfinished": "The direction stops too early: write it like 30° below −x, 20° clockwise from +y, N 30° E or 3:4 up left.",
	"entry.heading-word":       "“{name}” can't be read in a direction: use words such as from, above, below, left of, clockwise, up, down, N, E, S, W.",
	"entry.heading-unit":       "“{unit}” is no unit of angle: write degrees, or rad behind the number.",
	"entry.heading-range":      "There is no such direction: beside an axis or a compass point the angle runs from 0° to 90°, towards one of its two neighbours.",
	"entry.heading-slope":      "A slope is two plain lengths, rise and run: write it like 3:4 up left.",
	"entry.heading-ways":       "Which way does the slope go? Write it behind, as in 3:4 up left.",
}
