package entry

import "closingside/statics"

// quadrants gives the words for each quadrant of the plane; "quadrant" itself
// goes with a number.
var quadrants = map[string]int{
	"q": 0, "quadrant": 0, "quad": 0, "first": 1, "second": 2, "third": 3, "fourth": 4,
	"i": 1, "ii": 2, "iii": 3, "iv": 4, "qi": 1, "qii": 2, "qiii": 3, "qiv": 4,
}

func init() {
	for w := range quadrants {
		headingWords[w] = "quadrant"
	}
	for _, w := range ordinals {
		headingWords[w] = ""
	}
}

// ordinals stand behind the number of a quadrant: 1st.
var ordinals = []string{"st", "nd", "rd", "th"}

// inQuadrant reads an acute angle to the x-axis with its quadrant; false where
// no quadrant is told.
//
//	quadrant = [ "in" ] ( ordinal | roman ) [ "quadrant" ] | [ "in" ] "quadrant" ( roman | number ) | number "quadrant"
func (p *headingParser) inQuadrant() (statics.Heading, bool) {
	var numbers []*item
	which, told := 0, false
	for i := range p.items {
		switch it := &p.items[i]; it.word {
		case "quadrant":
			told = true
			if n := quadrants[foldWord(string(p.runes[it.from:it.to]))]; n > 0 {
				if which > 0 {
					return statics.Heading{}, false
				}
				which = n
			}
		case "":
			numbers = append(numbers, it)
		case ":": // in
		default:
			return statics.Heading{}, false
		}
	}
	if told && which == 0 && len(numbers) == 2 { // quadrant 3
		which, numbers = p.numbered(numbers)
	}
	if !told || which == 0 || len(numbers) != 1 {
		return statics.Heading{}, false
	}
	axis, side := statics.PlusX, statics.PlusY
	if which == 2 || which == 3 {
		axis = statics.MinusX
	}
	if which > 2 {
		side = statics.MinusY
	}
	p.turn, p.pos = numbers[0], len(p.items)
	return p.checked(statics.Toward(statics.Beside, axis, side, statics.Angle(p.turn.num.value)*statics.Degree)), true
}

// numbered takes the one of two numbers that numbers a quadrant: a whole one from 1
// to 4 that is not written as an angle. Where both may, it is the second, or the one
// beside the word. The rest is the other; which is 0 where neither does.
func (p *headingParser) numbered(two []*item) (which int, rest []*item) {
	for i, n := range two {
		other := two[1-i]
		if k := int(n.num.value); !n.angle && float64(k) == n.num.value && k >= 1 && k <= 4 && (other.angle || i == 1 || p.items[1].word == "quadrant") {
			return k, []*item{other}
		}
	}
	return 0, two
}
