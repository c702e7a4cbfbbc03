package expr

import "math"

// Program is a tree prepared for being worked out many times: its nodes in
// post-order, the symbols already looked up. Its values are those of Eval.
//
// A Program is read-only once compiled; a Tape belongs to one goroutine.
type Program struct {
	steps []step
	nodes []Node
}

// step works out one node of the tree.
type step struct {
	kind  stepKind
	op    Op   // of a binStep
	key   Func // of a keyStep, with its mode
	mode  Mode
	angle bool    // whether its value is an angle
	a, b  int32   // the places of its operands; of a loadStep, a is the symbol's index
	value float64 // of a constStep
}

type stepKind uint8

const (
	loadStep stepKind = iota
	constStep
	negStep
	binStep
	keyStep
)

// Tape holds the values and slopes of one run of a Program.
type Tape struct{ Values, Slopes []float64 }

// Compile prepares n; index gives the place of a symbol among the values of a
// run, or −1 for one that has none (its value is NaN), and angle tells which
// symbols are angles.
func Compile(n Node, index func(name string) int, angle func(name string) bool) *Program {
	size := Size(n)
	p := &Program{make([]step, 0, size), make([]Node, 0, size)}
	p.compile(n, symbols{index, angle})
	return p
}

type symbols struct {
	index func(name string) int
	angle func(name string) bool
}

// compile appends n, and returns its place.
func (p *Program) compile(n Node, of symbols) int32 {
	var s step
	switch t := n.(type) {
	case Sym:
		s = step{kind: loadStep, a: int32(of.index(t.Name)), angle: of.angle(t.Name)}
	case Neg:
		s.kind = negStep
		s.a = p.compile(t.X, of)
		s.angle = p.steps[s.a].angle
	case Bin:
		s.kind, s.op = binStep, t.Op
		s.a = p.compile(t.L, of)
		s.b = p.compile(t.R, of)
		s.angle = angleOf(t.Op, p.steps[s.a].angle, p.steps[s.b].angle)
	case Fn:
		s.kind, s.key, s.mode = keyStep, t.Func, t.Mode
		s.a = p.compile(t.X, of)
		s.angle = t.Func.inverse() || t.Func == FnAbs && p.steps[s.a].angle
	default:
		_, angle := n.(Ang)
		s = step{kind: constStep, value: Eval(n, nil), angle: angle}
	}
	p.steps, p.nodes = append(p.steps, s), append(p.nodes, n)
	return int32(len(p.steps) - 1)
}

// Len is the number of nodes; they are numbered from 0 in post-order, the root
// last.
func (p *Program) Len() int { return len(p.steps) }

// Node is the node at a place.
func (p *Program) Node(place int) Node { return p.nodes[place] }

// Angle tells whether the value at a place is an angle (see IsAngle).
func (p *Program) Angle(place int) bool { return p.steps[place].angle }

// Constant tells whether a number stands at a place.
func (p *Program) Constant(place int) bool { return p.steps[place].kind == constStep }

// Symbol is the index of the symbol at a place, or −1 where there is none.
func (p *Program) Symbol(place int) int {
	if s := &p.steps[place]; s.kind == loadStep {
		return int(s.a)
	}
	return -1
}

// Run works the tree out on values, which Compile's index counts, and leaves
// every node's value on the tape.
func (p *Program) Run(values []float64, t *Tape) float64 {
	const nowhere = -1
	return p.RunWith(values, t, nowhere, 0)
}

// RunWith is Run with the node at a place coming out as with.
func (p *Program) RunWith(values []float64, t *Tape, place int, with float64) float64 {
	return p.run(values, t, place, with, nil)
}

// RunEach is Run with every node coming out as each makes of its value, for what
// follows too.
func (p *Program) RunEach(values []float64, t *Tape, each func(place int, v float64) float64) float64 {
	const nowhere = -1
	return p.run(values, t, nowhere, 0, each)
}

func (p *Program) run(values []float64, t *Tape, place int, with float64, each func(place int, v float64) float64) float64 {
	if len(t.Values) < len(p.steps) {
		t.Values, t.Slopes = make([]float64, 2*len(p.steps)), make([]float64, 2*len(p.steps))
	}
	tape := t.Values[:len(p.steps)]
	for i := range p.steps {
		s := &p.steps[i]
		var v float64
		switch s.kind {
		case loadStep:
			v = math.NaN()
			if s.a >= 0 {
				v = finite(values[s.a])
			}
		case constStep:
			v = s.value
		case negStep:
			v = -tape[s.a]
		case binStep:
			v = binary(s.op, tape[s.a], tape[s.b])
		default:
			v = apply(s.key, s.mode, tape[s.a])
		}
		if i == place {
			v = with
		}
		if each != nil {
			v = each(i, v)
		}
		tape[i] = v
	}
	return tape[len(tape)-1]
}

// Differentiate fills the tape's Slopes with the derivative of the root by
// each node, after a Run; NaN where none exists (see Trace).
func (p *Program) Differentiate(t *Tape) {
	n := len(p.steps)
	tape, slopes := t.Values[:n], t.Slopes[:n]
	clear(slopes)
	slopes[n-1] = 1
	if math.IsNaN(tape[n-1]) {
		slopes[n-1] = math.NaN()
	}
	for i := n - 1; i >= 0; i-- {
		s, d := &p.steps[i], slopes[i]
		switch s.kind {
		case negStep:
			slopes[s.a] = -d
		case binStep:
			l, r := binarySlopes(s.op, tape[s.a], tape[s.b], tape[i])
			slopes[s.a], slopes[s.b] = finite(d*l), finite(d*r)
		case keyStep:
			slopes[s.a] = finite(d * keySlope(s.key, s.mode, tape[s.a], tape[i]))
		}
	}
}
