package figure

// em is the width of a rune in ems: the wider of DejaVu Sans (the widest of
// the sans-serif faces that systems ship) and a face with Helvetica's metrics
// (Liberation Sans), upright or slanted, measured in Chromium and rounded up.
// A rune that is not in the table counts as a full em.
func em(r rune) float64 {
	if r >= ' ' && r <= '~' {
		return float64(ascii[r-' ']) / 100
	}
	for i := 0; i < len(others); i++ {
		if others[i].r == r {
			return float64(others[i].w) / 100
		}
	}
	return 1
}

// ascii holds the widths of ' ' to '~' in hundredths of an em.
var ascii = [...]uint8{
	33, 41, 47, 85, 65, 96, 79, 28, 40, 40, 51, 85, 33, 37, 33, 35, // space to /
	65, 65, 65, 65, 65, 65, 65, 65, 65, 65, 35, 35, 85, 85, 85, 57, // 0 to ?
	103, 69, 70, 73, 78, 68, 62, 79, 76, 30, 51, 68, 57, 87, 76, 80, // @ to O
	68, 80, 73, 68, 62, 74, 69, 100, 70, 68, 70, 40, 35, 40, 85, 57, // P to _
	51, 62, 64, 56, 64, 63, 36, 64, 64, 29, 29, 59, 29, 98, 64, 62, // ` to o
	64, 64, 42, 53, 40, 64, 60, 83, 60, 60, 53, 65, 35, 65, 85, // p to ~
}

var others = [...]struct {
	r rune
	w uint8
}{
	{'°', 51}, {'−', 85}, {'·', 33}, {'×', 85}, {'÷', 85}, {'√', 65}, {'²', 41}, {'³', 41},
	{'α', 67}, {'β', 65}, {'γ', 60}, {'δ', 62}, {'ε', 55}, {'ζ', 55}, {'η', 64}, {'θ', 62},
	{'κ', 60}, {'λ', 60}, {'μ', 65}, {'ν', 57}, {'ξ', 57}, {'π', 70}, {'ρ', 64}, {'σ', 64},
	{'τ', 61}, {'υ', 59}, {'φ', 67}, {'χ', 60}, {'ψ', 74}, {'ω', 85}, {'Δ', 69}, {'Σ', 64},
	{'Ω', 77}, {'Φ', 85}, {'Θ', 80}, {'′', 24}, {'″', 38}, {'±', 85}, {'≈', 85}, {'–', 57},
	{'₁', 41}, {'₂', 41}, {'⁻', 54}, {'¹', 41},
}
