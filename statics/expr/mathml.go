package expr

import "strings"

// Markup is an element of a document tree: a tag with its attributes, and
// either text or kids. Text is not escaped; whoever renders it does that.
type Markup struct {
	Tag  string
	Attr []Attr
	Text string
	Kids []Markup
}

// Attr is an attribute of an element. Value is not escaped.
type Attr struct{ Name, Value string }

const applyFunction = "\u2061" // between a function's name and its argument

// Math builds n in MathML Core presentation elements (mrow, mi, mn, mo, msqrt,
// mfrac, msup, msub, msubsup, mspace, mtext). It returns one element, to be
// put inside a math element. Quotients are fractions; apart from those,
// parentheses stand where Plain has them.
func Math(n Node, names Naming) Markup {
	return mathPrinter{names}.one(n)
}

type mathPrinter struct{ names Naming }

// mathGrip is gripOf for what is drawn: a fraction bar encloses both its
// parts, and a power of ten is a product.
func mathGrip(n Node) grip {
	switch n := n.(type) {
	case Bin:
		if n.Op == OpDiv {
			return gripPower
		}
	case Num:
		if usesPower(n.Value) {
			return gripUnit
		}
	}
	return gripOf(n)
}

// one is n as a single element.
func (m mathPrinter) one(n Node) Markup { return row(m.cells(n, loose)...) }

// cells is n as the elements of a row.
func (m mathPrinter) cells(n Node, next behind) []Markup {
	switch n := n.(type) {
	case Num:
		return mathNumber(n.Value)
	case Ang:
		if n.Unit == UnitDeg {
			return append(mathNumber(n.Value), leaf("mo", "°"))
		}
		return append(mathNumber(n.Value), leaf("mtext", "\u00a0"+unitSign(n.Unit)[1:]))
	case Pi:
		return []Markup{leaf("mi", "π")}
	case Sym:
		return []Markup{mathSymbol(m.names.symbol(n.Name))}
	case Neg:
		return append([]Markup{sign("prefix", minus)}, m.operand(n.X, needNeg, next)...)
	case Bin:
		return m.binary(n, next)
	case Fn:
		return m.function(n, next)
	}
	panic("expr: unknown node")
}

// operand is n, in parentheses where it has less than the least grip.
func (m mathPrinter) operand(n Node, least grip, next behind) []Markup {
	if mathGrip(n) < least {
		return m.enclosed(n)
	}
	return m.cells(n, next)
}

func (m mathPrinter) enclosed(n Node) []Markup {
	return []Markup{fence("(", ")", m.cells(n, loose))}
}

func (m mathPrinter) binary(n Bin, next behind) []Markup {
	left, right := need(n.Op)
	switch n.Op {
	case OpDiv:
		return []Markup{{Tag: "mfrac", Kids: []Markup{m.one(n.L), m.one(n.R)}}}
	case OpPow:
		base := row(m.operand(n.L, left, loose)...)
		return []Markup{{Tag: "msup", Kids: []Markup{base, m.one(n.R)}}}
	}
	sign, then := opSign(n.Op), loose
	if n.Op == OpMul {
		sign, then = "⋅", tight // the operator U+22C5, which MathML spaces as a product
	}
	cells := append(m.operand(n.L, left, then), leaf("mo", sign))
	return append(cells, m.operand(n.R, right, next)...)
}

func (m mathPrinter) function(n Fn, next behind) []Markup {
	switch n.Func {
	case FnAbs:
		return []Markup{fence("|", "|", m.cells(n.X, loose))}
	case FnSqrt:
		return []Markup{{Tag: "msqrt", Kids: m.cells(n.X, loose)}}
	}
	name, inverse := keyName(n.Func)
	cells := []Markup{mathKey(name, inverse, modeName(n.Mode)), leaf("mo", applyFunction)}
	if next == tight || inverse || !isBare(n.X) {
		return append(cells, m.enclosed(n.X)...)
	}
	space := Markup{Tag: "mspace", Attr: []Attr{{"width", "0.1667em"}}}
	return append(append(cells, space), m.cells(n.X, loose)...)
}

// mathKey is the name of a trigonometric key: sin, sin⁻¹, with its mode below.
func mathKey(name string, inverse bool, mode string) Markup {
	key := leaf("mi", name)
	exponent := row(leaf("mo", minus), leaf("mn", "1"))
	switch {
	case inverse && mode != "":
		return Markup{Tag: "msubsup", Kids: []Markup{key, leaf("mi", mode), exponent}}
	case inverse:
		return Markup{Tag: "msup", Kids: []Markup{key, exponent}}
	case mode != "":
		return Markup{Tag: "msub", Kids: []Markup{key, leaf("mi", mode)}}
	}
	return key
}

// mathSymbol is a letter with its subscript; digits and letters of a subscript
// are elements of their own (the x of F₁x is a name, its 1 a number).
func mathSymbol(s Symbol) Markup {
	letter := row(mathStretches(s.Letter)...)
	if s.Sub == "" {
		return letter
	}
	return Markup{Tag: "msub", Kids: []Markup{letter, row(mathStretches(s.Sub)...)}}
}

// mathStretches is the letter or the subscript of a symbol. MathML slants what is one
// character long.
func mathStretches(s string) (cells []Markup) {
	for _, piece := range Stretches(s) {
		cell := leaf("mi", piece.Text)
		switch {
		case piece.Text[0] >= '0' && piece.Text[0] <= '9':
			cell.Tag = "mn"
		case piece.Upright:
			cell.Attr = []Attr{{"mathvariant", "normal"}}
		}
		cells = append(cells, cell)
	}
	return cells
}

// mathNumber is a number, a power of ten drawn as one.
func mathNumber(v float64) []Markup {
	var cells []Markup
	s := FormatNumber(v, treeDigits)
	if positive, negative := strings.CutPrefix(s, minus); negative {
		cells, s = append(cells, sign("prefix", minus)), positive
	}
	mantissa, power, ok := strings.Cut(s, "e")
	cells = append(cells, leaf("mn", mantissa))
	if !ok {
		return cells
	}
	exponent := leaf("mn", power)
	if positive, negative := strings.CutPrefix(power, minus); negative {
		exponent = row(leaf("mo", minus), leaf("mn", positive))
	}
	ten := Markup{Tag: "msup", Kids: []Markup{leaf("mn", "10"), exponent}}
	return append(cells, leaf("mo", "×"), ten)
}

func leaf(tag, text string) Markup { return Markup{Tag: tag, Text: text} }

// row is its only element, or an mrow of several.
func row(cells ...Markup) Markup {
	if len(cells) == 1 {
		return cells[0]
	}
	return Markup{Tag: "mrow", Kids: cells}
}

// fence is a row between two signs; being first and last makes them a pair.
func fence(open, shut string, cells []Markup) Markup {
	kids := append([]Markup{leaf("mo", open)}, cells...)
	return Markup{Tag: "mrow", Kids: append(kids, leaf("mo", shut))}
}
