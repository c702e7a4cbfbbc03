package expr

// Node is an expression tree. The set of nodes is closed: Num, Ang, Pi, Sym,
// Neg, Bin and Fn. All are small values without slices, so == compares trees.
type Node interface{ node() }

// Num is a plain number, never negative (minus is a node of its own).
type Num struct{ Value float64 }

// Ang is a literal angle, never negative, in the unit it was written in.
type Ang struct {
	Value float64
	Unit  AngleUnit
}

// Pi is the ratio of a circle's circumference to its diameter.
type Pi struct{}

// Sym stands for a quantity or a given, by its canonical ASCII name.
type Sym struct{ Name string }

// Neg is −X.
type Neg struct{ X Node }

// Bin is L Op R.
type Bin struct {
	Op   Op
	L, R Node
}

// Fn is a function of one argument. Mode is the calculator's angle mode and
// matters to the trigonometric keys alone.
type Fn struct {
	Func Func
	Mode Mode
	X    Node
}

func (Num) node() {}
func (Ang) node() {}
func (Pi) node()  {}
func (Sym) node() {}
func (Neg) node() {}
func (Bin) node() {}
func (Fn) node()  {}

// Op is a binary operation.
type Op uint8

// The binary operations.
const (
	OpAdd Op = iota
	OpSub
	OpMul
	OpDiv
	OpPow
)

// Func is a function of one argument.
type Func uint8

// The functions. The inverse ones return an angle (a number of degrees in
// degree mode).
const (
	FnSqrt Func = iota
	FnAbs
	FnSin
	FnCos
	FnTan
	FnAsin
	FnAcos
	FnAtan
)

// Mode is the angle mode of a calculator key.
type Mode uint8

// The modes. A key in InRadians reads the number of degrees it is given as
// radians, and an inverse key in InRadians shows radians where degrees belong.
const (
	InDegrees Mode = iota
	InRadians
	InGradians
)

// AngleUnit is the unit a literal angle was written in.
type AngleUnit uint8

// The units of a literal angle. Their values in degrees: 1, 180/π, 0.9.
const (
	UnitDeg AngleUnit = iota
	UnitRad
	UnitGrad
)

// S is the symbol called name.
func S(name string) Node { return Sym{name} }

// N is the number v; a negative one becomes Neg{Num}.
func N(v float64) Node {
	if v < 0 {
		return Neg{Num{-v}}
	}
	return Num{v}
}

// Deg is the literal angle of v degrees; a negative one becomes Neg{Ang}.
func Deg(v float64) Node {
	if v < 0 {
		return Neg{Ang{-v, UnitDeg}}
	}
	return Ang{v, UnitDeg}
}

// Add is a + b + more, gathered from the left.
func Add(a, b Node, more ...Node) Node { return chain(OpAdd, a, b, more) }

// Sub is a − b.
func Sub(a, b Node) Node { return Bin{OpSub, a, b} }

// Mul is a · b · more, gathered from the left.
func Mul(a, b Node, more ...Node) Node { return chain(OpMul, a, b, more) }

// Div is a / b.
func Div(a, b Node) Node { return Bin{OpDiv, a, b} }

// Pow is a ^ b.
func Pow(a, b Node) Node { return Bin{OpPow, a, b} }

// Sq is x².
func Sq(x Node) Node { return Bin{OpPow, x, Num{2}} }

// Sqrt is √x.
func Sqrt(x Node) Node { return Fn{Func: FnSqrt, X: x} }

// Abs is |x|.
func Abs(x Node) Node { return Fn{Func: FnAbs, X: x} }

// Sin is sin x; x is in degrees, here and below.
func Sin(x Node) Node { return Fn{Func: FnSin, X: x} }

// Cos is cos x.
func Cos(x Node) Node { return Fn{Func: FnCos, X: x} }

// Tan is tan x.
func Tan(x Node) Node { return Fn{Func: FnTan, X: x} }

// Asin is sin⁻¹ x, in degrees.
func Asin(x Node) Node { return Fn{Func: FnAsin, X: x} }

// Acos is cos⁻¹ x, in degrees.
func Acos(x Node) Node { return Fn{Func: FnAcos, X: x} }

// Atan is tan⁻¹ x, in degrees.
func Atan(x Node) Node { return Fn{Func: FnAtan, X: x} }

func chain(op Op, a, b Node, more []Node) Node {
	n := Node(Bin{op, a, b})
	for _, m := range more {
		n = Bin{op, n, m}
	}
	return n
}
