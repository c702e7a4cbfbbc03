package trial

import (
	"errors"
	"fmt"
	"maps"
	"slices"

	"closingside/tutor/lesson"
	"closingside/tutor/slips"
)

// Habits say how the learners of a trial work. Shares lie between 0 and 1.
//
// Of what a learner sets out to write, the share Right is meant to be right;
// the rest is divided among one slip, two slips, early rounding and noise in
// the ratio given. Values carried on from a wrong entry come by themselves, as
// often as GoOn says.
type Habits struct {
	Right float64 `json:"right"`
	Slip  float64 `json:"slip"`
	Two   float64 `json:"two"`
	Early float64 `json:"early"` // most of it stays within the accepted band
	Noise float64 `json:"noise"`

	Groups map[string]float64 `json:"groups"` // how often each part of the catalogue is met, in ratio

	Four  float64 `json:"four"`  // learners who keep four digits on the way (angles to 0.01°)
	Three float64 `json:"three"` // learners who keep three (0.1°); the others keep all
	Cut   float64 `json:"cut"`   // learners who cut digits off instead of rounding

	Radians     float64 `json:"radians"`     // learners whose calculator stands in radians until something is put right
	Head        float64 `json:"head"`        // learners who keep most steps in the head; the others write most down
	GoOn        float64 `json:"goOn"`        // wrong entries that the learner goes on from; others are put right
	FirstRoute  float64 `json:"firstRoute"`  // quantities found by the way of the worked solution; others by any route
	Expressions float64 `json:"expressions"` // entries written as a formula with numbers
	Paper       float64 `json:"paper"`       // learners who go on from what they wrote, not from what the calculator holds

	Digits lesson.Digits `json:"digits"` // written
}

// DefaultHabits are those of the tutor's own base rates (see DEVELOPERS.md),
// but every slip of a group is as likely as another, and as most early
// rounding leaves no trace, more of it is drawn. All are judgement.
func DefaultHabits() Habits {
	h := Habits{
		Right: 0.4, Slip: 0.62, Two: 0.08, Early: 0.2, Noise: 0.12,
		Groups: map[string]float64{},
		Four:   0.30, Three: 0.15, Cut: 0.15,
		Radians: 0.02, Head: 0.5, GoOn: 0.5, FirstRoute: 0.6, Expressions: 0.1, Paper: 0.5,
		Digits: lesson.DefaultSettings().Work,
	}
	for _, g := range slips.Groups() {
		h.Groups[g] = 1
	}
	h.Groups["sketch"], h.Groups["writing"] = 0.5, 0.5
	return h
}

// Shares are the habits that are shares, by name.
func (h *Habits) Shares() map[string]*float64 {
	return map[string]*float64{
		"right": &h.Right, "slip": &h.Slip, "two": &h.Two, "early": &h.Early, "noise": &h.Noise,
		"four": &h.Four, "three": &h.Three, "cut": &h.Cut, "radians": &h.Radians, "head": &h.Head, "go-on": &h.GoOn,
		"first-route": &h.FirstRoute, "expressions": &h.Expressions, "paper": &h.Paper,
	}
}

// Check says what is wrong with h; nil where nothing is.
func (h *Habits) Check() error {
	shares := h.Shares()
	for _, name := range slices.Sorted(maps.Keys(shares)) {
		if v := *shares[name]; !(v >= 0 && v <= 1) {
			return fmt.Errorf("%s is %v; a share lies between 0 and 1", name, v)
		}
	}
	if h.Right < 1 && h.Slip+h.Two+h.Early+h.Noise == 0 {
		return errors.New("slip, two, early and noise are all 0; one of them is more, or right is 1")
	}
	if h.Four+h.Three > 1 {
		return errors.New("four and three together are more than 1; they are shares of the learners")
	}
	sum := 0.0
	for name, rate := range h.Groups {
		if !(rate >= 0) {
			return fmt.Errorf("group %s has rate %v; a rate is 0 or more", name, rate)
		}
		sum += rate
	}
	if sum == 0 && h.Slip+h.Two > 0 {
		return errors.New("every group of slips has rate 0; one of them is more, or slip and two are 0")
	}
	if h.Digits.Magnitude < 2 || h.Digits.Magnitude > 8 || h.Digits.Angle < 0 || h.Digits.Angle > 6 {
		return errors.New("digits lie between 2 and 8, places of an angle between 0 and 6")
	}
	return nil
}
