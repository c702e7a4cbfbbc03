// Package entry reads what a learner writes: a number, an expression, a form in
// an unknown angle, an equation, a direction.
//
//	r, err := entry.Read("2(340)(610) cos 87°", scope)
//	// r.Form == entry.Expression, r.Value == 21709.15…
//	// r.Tree prints as 2·340·610·cos 87°
//
// A text is folded to plain characters (fold.go), cut into tokens (lex.go,
// lex_units.go, number.go, angle.go, words.go, spoken.go, tex.go) and at its
// equals signs (sides.go), read by recursive descent into a tree (parse.go,
// call.go, fraction.go), and made sense of in its [Scope] (read.go, value.go,
// check.go). A direction has a reader of its own (heading.go). The grammar stands
// above the functions that read it.
//
// # Conventions
//
// Where habits differ, these hold. The page shows each entry as it was read.
//
//   - Angles are in degrees unless rad or grad (gon) stands behind them. A sine
//     of a bare number that looks like radians, cos(1.518) or sin(π/3), is
//     asked about.
//   - -2^2 is −(2²) = −4, and 2^3^2 is 2^(3²).
//   - An implied product binds more tightly than a fraction: 1/2x is 1/(2·x),
//     a/2(3)(4) is a/(2·3·4). A product written with · does not: 1/2·x is
//     (1/2)·x. Where a force or a sum of forces is asked, and only a multiple of
//     a force fits, a fraction of two constants before a name is one: 4/5 T and
//     4/5T are (4/5)·T, 2/√5 T is (2/√5)·T, 1/(sin 40) T is (1/sin 40)·T; so is
//     4/5(410) or 2/√5(410), the sides of a slope triangle before one number in
//     brackets.
//   - R² = … is read as the square root of what follows. Any other equation in
//     what is asked is to be solved first: R/sin 87 = 610/sin 63.2.
//   - A function without brackets takes what stands right behind it, with names
//     that follow: cos 2·30 is (cos 2)·30, cos 2θ is cos(2·θ), sin 87/2 is
//     (sin 87)/2, cos 25° P is (cos 25°)·P, and so is cos 25 P of a force P;
//     cos 30² is cos(30²). With brackets
//     it takes those alone: cos(25)² is (cos 25)².
//   - √ takes one number, name or bracket: √3/2 is (√3)/2.
//   - What reads well but is hardly meant so is asked about: √340² + 610²,
//     √(340)² + 610², tan⁻¹ 682.3/21.77, 340/682.6 sin 87, 340/√2 cos 30, x^1/2,
//     a range (682-683), and what copying makes of a number: 682·6, 6.826×102,
//     88.2^0, or of a root: (308² + 143²)½.
//   - What stands around a value is left out: "R is …", ≈, →, quotation marks,
//     a last comma, the brackets of 682.6 (N), the arrow before +↑ ΣFy = 0, a word
//     before a colon, to how many digits (3 sf, to 1 d.p.). A letter o behind a
//     number is a degree sign. A formula may be pasted as TeX writes it.
//   - sin² 30 is (sin 30)², and sin⁻¹, sin^-1, sin-1(…), arcsin, asin, invsin
//     and "inv sin" are the inverse; sen, tg and tang are read too. Case does not matter.
//   - One comma is a decimal comma (682,6), unless it could as well part
//     thousands: 1,234 is asked about. 1,234.5 and 1.234,5 and 1,234,567 are
//     certain. A space between groups of three is asked about too, since it may
//     part two numbers, unless it is one that does not break.
//   - A unit behind the whole of an entry is meant for the whole: 0.3 + 0.2 kN.
//     Anywhere else it belongs to the number or bracket before it, which is
//     converted to the problem's unit; names carry their units themselves.
//   - An unknown that an affine form may hold stays unknown even if it has a
//     value.
//
// # Resolution
//
// A number is known to half a unit of the last digit typed, converted with its
// unit. The final zeros of a whole number may only hold the place: 466000 has
// four readings, 0.5 to 500, listed finest first. 680. at the end of an entry
// is 680 and a period. An angle's zero is arbitrary, so its final zeros are
// digits like others; written in radians, gradians, or minutes and seconds, it
// is known to the last digit of the short decimal it was converted from:
// 87°18′0″ is 87.3 ± 0.05.
//
// # What it cannot do
//
// It reads no vectors, no names outside the problem, no functions but the
// square root, the absolute value, sine, cosine, tangent and their inverses,
// and judges nothing: whether a value is right is not its business.
package entry
