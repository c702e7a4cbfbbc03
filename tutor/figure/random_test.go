package figure

import (
	"math/rand/v2"
	"strconv"

	"closingside/statics"

	"gonum.org/v1/gonum/spatial/r2"
)

// randomForce has a magnitude of 20 to 400, so ratios reach 20:1, and a whole
// direction, or a number of 6° steps: right angles and opposite forces occur.
func randomForce(r *rand.Rand, letter, sub string) Force {
	m, d := float64(20+r.IntN(381)), float64(r.IntN(360))
	if r.IntN(3) == 0 {
		d = float64(6 * r.IntN(60))
	}
	if r.IntN(4) == 0 {
		d -= 360
	}
	return forceAt(letter, sub, m, d)
}

func forceAt(letter, sub string, m, d float64) Force {
	written := strconv.FormatFloat(d, 'g', 6, 64) + "°"
	return Force{
		Vec: statics.Polar(m, deg(d)), Name: letter + sub,
		Label: Symbol(letter, sub).Is(strconv.FormatFloat(m, 'g', 6, 64) + " N"),
		Turn:  deg(d), Angle: Plain(written),
	}
}

// randomPair is a problem of two forces; one in four is nearly parallel or
// nearly opposite. Labels show values in some problems and symbols in others,
// as a figure does at the start and at the end of the work.
func randomPair(r *rand.Rand) Pair {
	p := Pair{First: randomForce(r, "F", "1"), Second: randomForce(r, "F", "2"),
		Resultant: Symbol("R", ""), Direction: Symbol("θ", ""), Between: Symbol("φ", ""),
		AtTail: Symbol("β", ""), AtJoint: Symbol("γ", ""), AtHead: Symbol("α", "")}
	if r.IntN(4) == 0 {
		d := p.First.Turn.Degrees() + float64(r.IntN(13)-6) + 180*float64(r.IntN(2))
		p.Second = forceAt("F", "2", float64(20+r.IntN(381)), d)
	}
	switch r.IntN(3) {
	case 0:
		p.AtJoint = p.AtJoint.Is("87°")
	case 1:
		p.AtJoint, p.AtTail, p.AtHead = p.AtJoint.Is("87.00°"), p.AtTail.Is("63.17°"), p.AtHead.Is("29.83°")
		p.Resultant, p.Direction = p.Resultant.Is("682.6 N"), p.Direction.Is("88.2°")
	}
	return p
}

func (p Pair) swapped() Pair {
	p.First, p.Second = p.Second, p.First
	p.AtTail, p.AtHead = p.AtHead, p.AtTail
	return p
}

// bare leaves out the angles the forces are given by.
func (p Pair) bare() Pair {
	p.First.Angle, p.Second.Angle = Label{}, Label{}
	return p
}

func randomForces(r *rand.Rand, n int) []Force {
	all := make([]Force, n)
	for i := range all {
		all[i] = randomForce(r, "F", strconv.Itoa(i+1))
	}
	return all
}

// randomSize is the room on a phone or a desk, one in eight with letters half
// as large again.
func randomSize(r *rand.Rand) Size {
	s := Size{Width: float64(320 + 10*r.IntN(30)), Height: float64(260 + 10*r.IntN(16))}
	if r.IntN(8) == 0 {
		s.Text = 1.5 * defaultText
	}
	return s
}

// randomScenes are the figures of one random problem.
func randomScenes(r *rand.Rand) map[string]Scene {
	p := randomPair(r)
	f := p.First
	all := map[string]Scene{
		"given":       Given(p.First, p.Second),
		"triangle":    HeadToTail(p.bare()),
		"other order": HeadToTail(p.bare().swapped()),
		"components":  Rectangular(f, Symbol("F", "1x").Is("308.1 N"), Symbol("F", "1y").Is("143.7 N")),
	}
	par := p.bare()
	par.AtTail, par.AtHead = Label{}, Label{}
	all["parallelogram"] = Parallelogram(par)
	through := p.bare()
	through.AtTail, through.AtHead, through.Direction = Label{}, Label{}, Label{}
	through.Through = [2]Label{Plain("25°"), Plain("62°")}
	all["through"] = HeadToTail(through)
	all["polygon"] = ForcePolygon(randomForces(r, 3+r.IntN(4)), Symbol("R", ""))
	all["free body"] = FreeBody(randomForces(r, 3+r.IntN(2))...)
	all["space"] = Space(randomParts(r)...)
	all["board"] = randomBoard(r, []Force{p.First, p.Second})
	all["large board"] = randomBoard(r, randomForces(r, 3+r.IntN(4)))
	return all
}

// randomBoard is a sketch in one of the states a learner brings it to: tails
// together, head to tail in part or in whole, the closing side drawn or not.
func randomBoard(r *rand.Rand, forces []Force) Scene {
	var laid []Laid
	var lo, hi, tail r2.Vec
	joined := r.IntN(len(forces) + 1)
	for i, f := range forces {
		lo.X, hi.X = lo.X+min(f.Vec.X, 0), hi.X+max(f.Vec.X, 0)
		lo.Y, hi.Y = lo.Y+min(f.Vec.Y, 0), hi.Y+max(f.Vec.Y, 0)
		l := Laid{Force: f}
		if i < joined {
			l.Tail = tail
			tail = l.Head()
		}
		laid = append(laid, l)
	}
	var side *Arrow
	switch {
	case joined == len(forces) && r.IntN(2) == 0:
		side = &Arrow{To: tail, Class: ClassResultant, Label: Symbol("R", ""), Name: "R"}
	case r.IntN(3) == 0:
		side = &Arrow{From: laid[0].Head(), To: laid[1].Head(), Class: ClassLearner}
	}
	return Board(laid, side, []r2.Vec{lo, hi})
}

// randomParts hold a weight by two parts of random kinds.
func randomParts(r *rand.Rand) []Part {
	kinds := []MemberKind{Cable, Strut, Spring, Pulley}
	a, b := float64(10+r.IntN(71)), float64(10+r.IntN(71))
	written := func(v float64) Label { return Plain(strconv.FormatFloat(v, 'f', -1, 64) + "°") }
	return []Part{
		{Kind: kinds[r.IntN(3)], Direction: deg(a), Length: 1 + 2*r.Float64(), Label: Symbol("T", "1"),
			Turn: deg(a), Angle: written(a)},
		{Kind: kinds[r.IntN(4)], Direction: deg(180 - b), Length: 1 + 2*r.Float64(), Label: Symbol("T", "2"),
			Ref: deg(180), Turn: deg(-b), Angle: written(b), Hangs: Plain("20 kg")},
		{Kind: Weight, Length: 0.8, Label: Symbol("m", "").Is("80 kg")},
	}
}
