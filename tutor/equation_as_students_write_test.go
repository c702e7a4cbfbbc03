package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// The two sums of the crate as students write them: in any order, multiplied
// through, divided, moved to the other side, evaluated, with units, with decimals
// and with the signs of phones and books.
func TestEquationsAsStudentsWriteThem(t *testing.T) {
	for _, entry := range []string{
		"T1 cos 40 - T2 cos 30 = 0",
		"-T1cos40+T2cos30=0",
		"T2cos(30°)-T1cos(40°)=0",
		"0=T1 cos 40-T2 cos 30",
		"T1·cos40° = T2·cos30°",
		"2T1 cos40 = 2T2 cos30",
		"T1(0.766)=T2(0.866)",
		"0.766T1=0.866T2",
		"0.766T1-0.866T2=0",
		"T1 = 1.1305 T2",
		"T1=1.131T2",
		"T2=0.8846T1",
		"T1/T2 = cos30/cos40",
		"T1 cos 40 / cos 30 = T2",
		"T1 sin 50 = T2 sin 60",
		"−T1 cos 40° + T2 cos 30° = 0 N",
		"ΣFx = -T1 cos 40 + T2 cos 30 = 0",
		"ΣFx: T2 cos 30 - T1 cos 40 = 0",
		"∑Fx=0: T2 cos 30 = T1 cos 40",
		"T1*cos(40)=T2*cos(30)",
		"T_1 cos 40 = T_2 cos 30",
		"T₁ cos 40° = T₂ cos 30°",
		"T1 × cos 40 = T2 × cos 30",
		"T1 cos θ1 - T2 cos θ2 = 0",
		"T1 cosθ_1=T2 cosθ_2",
		"T1 sin 40 + T2 sin 30 = 120·9.81",
		"T1 sin 40 + T2 sin 30 - 120*9.81 = 0",
		"T1 sin 40 + T2 sin 30 = 1177.2 N",
		"T1 sin 40 + T2 sin 30 = 1177",
		"T1 sin 40 + T2 sin 30 = 1.1772 kN",
		"T1 sin 40 + T2 sin 30 - W = 0",
		"T1 sin 40 + T2 sin 30 - mg = 0",
		"T1 sin 40 + T2 sin 30 = m·g",
		"0.6428 T1 + 0.5 T2 = 1177.2",
		"0.643T1+0.5T2-1177=0",
		"T1 sin 40 + 0.5 T2 = 1177.2",
		"0,643 T1 + 0,5 T2 = 1177",
		"T1 sin 40 + T2/2 = 1177.2",
		"1.286 T1 + T2 = 2354",
		"(T1 sin 40 + T2 sin 30)/1177.2 = 1",
		"T1 sin 40 + T2 sin 30 - (120 kg)(9.81 m/s²) = 0",
		"T1 sin 40 + T2 sin 30 = 120 kg · 9.81 m/s^2",
		"W = T1 sin 40 + T2 sin 30",
		"120(9.81) = T1 sin 40 + T2 sin 30",
		"T1 sin(40 deg) + T2 sin(30 deg) = W",
		"T1/sin 120 = T2/sin 130",
		"T1/sin 60 = W/sin 70",
		"T1 = (W - T2 sin 30)/sin 40",
		"T1 cos(0.698 rad) = T2 cos 30",
	} {
		t.Run(entry, func(t *testing.T) {
			r := crate(t).Enter("sumx", entry)
			assert.Equal(t, verdict.Correct, r.Verdict, r.Feedback)
		})
	}
}

// The slope of a cable as students write it, the hypotenuse a root before the
// force, and what is said where it is written wrongly.
func TestSlopesInEquationsAsStudentsWriteThem(t *testing.T) {
	sloping := func() *Work {
		return NewWork(solvedBy(t, kinds.EquilibriumSource("", kinds.PartSource("T1 cable", "direction: 1:2 up left"), kinds.PartSource("T2 cable", "direction: 66 deg above +x"), kinds.PartSource("W weight", "force: 860 lb"))), lesson.DefaultSettings())
	}
	for _, row := range []struct{ sum, entry, slip string }{
		{"sumx", "-2/√5 T1 + T2 cos 66 = 0", ""},
		{"sumx", "-2/sqrt(5) T1 + T2 cos 66 = 0", ""},
		{"sumx", "2/sqrt(2^2+1^2) T1 = T2 cos 66", ""},
		{"sumx", "(-2/√5) T1 + T2 cos 66 = 0", ""},
		{"sumx", "-2T1/√5 + T2 cos 66 = 0", ""},
		{"sumx", "2√5/5 T1 = T2 cos 66", ""},
		{"sumx", "T2 = 2/(√5 cos 66) T1", ""},
		{"sumy", "1/√5 T1 + T2 sin 66 = 860", ""},
		{"sumx", "2/√5 T1 + T2 cos 66 = 0", "sign-lost"},
		{"sumx", "-1/√5 T1 + T2 cos 66 = 0", "slope-inverted"},
		{"sumy", "2/√5 T1 + T2 sin 66 = 860", "slope-inverted"},
		{"sumy", "1/√5 T1 - T2 sin 66 = 860", "sign-lost"},
	} {
		t.Run(row.entry, func(t *testing.T) {
			r := sloping().Enter(row.sum, row.entry)
			if row.slip == "" {
				assert.Equal(t, verdict.Correct, r.Verdict, r.Feedback)
				return
			}
			assert.Equal(t, verdict.SlipFound, r.Verdict, r.Feedback)
			assert.Contains(t, r.Slips[0].IDs, row.slip)
		})
	}
}

// A whole number in an equation may be a value rounded, but is off by no more
// than a value may be: 32 for 32.2 ft/s² is another g, alone or in a sum.
func TestWholeNumbersInEquationsHoldToTheLimit(t *testing.T) {
	hung := func(mass, g string) *Work {
		return NewWork(solvedBy(t, pulledDown(g, kinds.PartSource("T1 cable", "direction: 40 deg above -x"), kinds.PartSource("T2 cable", "direction: 30 deg above +x"), kinds.PartSource("W weight", "mass: "+mass))), lesson.DefaultSettings())
	}
	for _, row := range []struct {
		mass, g, load string
		want          verdict.Verdict
	}{
		{"16 slug", "32.2 ft/s²", "16*32.2", verdict.Correct},
		{"16 slug", "32.2 ft/s²", "515", verdict.Correct},
		{"16 slug", "32.2 ft/s²", "16*32", verdict.SlipFound},
		{"16 slug", "32.2 ft/s²", "(16 slug)(32 ft/s²)", verdict.SlipFound},
		{"16 slug", "32.2 ft/s²", "512", verdict.SlipFound},
		{"10 kg", "9.81 m/s²", "98", verdict.Correct},
		{"8 kg", "9.81 m/s²", "78", verdict.EarlyRounding},
		{"120 kg", "9.81 m/s²", "1180", verdict.Correct},
		{"120 kg", "9.81 m/s²", "120*9.8", verdict.Correct},
		{"120 kg", "9.81 m/s²", "120*10", verdict.SlipFound},
	} {
		r := hung(row.mass, row.g).Enter("sumy", "T1 sin 40 + T2 sin 30 = "+row.load)
		assert.Equal(t, row.want, r.Verdict, "%s: %s", row.load, r.Feedback)
	}
}

// The second sum with the value of a force that was found is another sum than the
// first, though both then come to the same for the force that is left.
func TestASumWithAFoundForceIsNoRepetition(t *testing.T) {
	hung := pulledDown("9.81 m/s^2", kinds.PartSource("T1 cable", "direction: 40 deg above -x"), kinds.PartSource("T2 cable", "direction: 30 deg above +x"), kinds.PartSource("W weight", "mass: 120 kg"))
	pulley := pulledDown("9.81 m/s^2", kinds.PartSource("T cable", "direction: 38 deg above -x"), kinds.PartSource("C pulley", "direction: 61 deg above +x", "mass: 55 kg"), kinds.PartSource("W weight", "find: mass"))
	for name, row := range map[string]struct {
		problem lesson.Source
		entries string
		verdict verdict.Verdict
	}{
		"both with the force found":          {hung, "F1 1084.9; sumx 1084.9 cos 40 = T2 cos 30; sumy 1084.9 sin 40 + T2 sin 30 = 1177.2", verdict.Correct},
		"each in the other's place":          {hung, "F1 1084.9; sumx 1084.9 sin 40 + T2 sin 30 = 1177.2; sumy 1084.9 cos 40 = T2 cos 30", verdict.Correct},
		"found on paper":                     {hung, "sumx 1084.9 cos 40 = T2 cos 30; sumy 1084.9 sin 40 + T2 sin 30 = 1177.2", verdict.Correct},
		"the one along y alone with a value": {pulley, "F3 676.3; sumx T cos 38 = C cos 61; sumy T sin 38 + C sin 61 = 676.3", verdict.Correct},
		"the same again":                     {hung, "F1 1084.9; sumx 1084.9 cos 40 = T2 cos 30; sumy T2 cos 30 = 1084.9 cos 40", verdict.Unexplained},
		"the same, doubled":                  {hung, "F1 1084.9; sumx 1084.9 cos 40 = T2 cos 30; sumy 2 T2 cos 30 = 2*1084.9 cos 40", verdict.Unexplained},
		"the same without values":            {hung, "sumx T1 cos 40 = T2 cos 30; sumy T1 = 1.1305 T2", verdict.Unexplained},
	} {
		t.Run(name, func(t *testing.T) {
			r := enterAll(solvedBy(t, row.problem), row.entries, "; ")
			assert.Equal(t, row.verdict, r.Verdict, r.Feedback)
		})
	}
}

// A sum may carry its own name in the place of the other one, where it is as right
// without.
func TestASumUnderItsOwnNameInTheOthersPlace(t *testing.T) {
	for _, entry := range []string{"ΣFy = T1 sin 40 + T2 sin 30 - W = 0", "ΣFy = 0: T1 sin 40 + T2 sin 30 = W", "sumy = T1 sin 40 + T2 sin 30 - W"} {
		r := crate(t).Enter("sumx", entry)
		assert.Equal(t, verdict.Correct, r.Verdict, "%s: %s", entry, r.Feedback)
	}
}
