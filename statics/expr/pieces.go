package expr

// longSum is from how many summands on a formula is cut into pieces: with fewer it
// fits beside its symbol on a phone.
const longSum = 4

// MathPieces builds n as Math does, cut before each sign of its outermost sum, so
// that a long one can be laid out on several lines. Where the sum stands over a
// fraction bar, which can't be broken, the quotient is written on the line. A
// formula with no long sum outermost is one piece.
func MathPieces(n Node, names Naming) []Markup {
	m := mathPrinter{names}
	cut := m.pieces(n)
	if len(cut) < longSum {
		return []Markup{m.one(n)}
	}
	var all []Markup
	for _, cells := range cut {
		all = append(all, row(cells...))
	}
	return all
}

// pieces is the cells of n, cut.
func (m mathPrinter) pieces(n Node) [][]Markup {
	b, ok := n.(Bin)
	if !ok {
		return [][]Markup{m.cells(n, loose)}
	}
	_, right := need(b.Op)
	switch b.Op {
	case OpAdd, OpSub:
		return append(m.pieces(b.L), append([]Markup{sign("infix", opSign(b.Op))}, m.operand(b.R, right, loose)...))
	case OpDiv:
		if above := m.pieces(b.L); len(above) >= longSum {
			below := m.pieces(b.R)
			if gripOf(b.R) < right {
				bracket(below)
			}
			below[0] = append([]Markup{sign("infix", "/")}, below[0]...)
			bracket(above)
			return append(above, below...)
		}
	}
	return [][]Markup{m.cells(n, loose)}
}

// bracket puts a bracket before the first of the pieces and one behind the last. They
// keep to the height of a letter: no piece knows how high the others are.
func bracket(pieces [][]Markup) {
	open, shut := sign("prefix", "("), sign("postfix", ")")
	open.Attr, shut.Attr = append(open.Attr, Attr{"stretchy", "false"}), append(shut.Attr, Attr{"stretchy", "false"})
	last := len(pieces) - 1
	pieces[0] = append([]Markup{open}, pieces[0]...)
	pieces[last] = append(pieces[last], shut)
}

// sign is an operator whose spacing does not rest with its place in a row: a piece
// may begin with a plus that adds, and a minus that belongs to a number may stand
// behind a bracket.
func sign(form, text string) Markup {
	return Markup{Tag: "mo", Attr: []Attr{{"form", form}}, Text: text}
}
