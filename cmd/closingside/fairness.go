package main

import (
	"fmt"
	"math"
	"strings"

	"closingside/tutor/draw"
)

// tally is how fair some problems are together.
type tally struct {
	Draws        int           `json:"draws"`
	Kept         int           `json:"kept"`
	Share        float64       `json:"share"`
	Separation   *separation   `json:"separation"` // null where nothing was drawn
	Coincidences []coincidence `json:"coincidences"`
}

type separation struct {
	Digits   float64     `json:"digits"` // units of the last digit asked; more than 1
	Problem  int         `json:"problem"`
	Quantity string      `json:"quantity"`
	Between  [2][]string `json:"between"` // slips; none for the right value's band
	symbol   string
}

type coincidence struct {
	Problem  int      `json:"problem"`
	Quantity string   `json:"quantity"`
	Slips    []string `json:"slips"`
	With     []string `json:"with"` // none for the right value's band
}

func newTally(all []drawn) tally {
	t := tally{Coincidences: []coincidence{}}
	for i, d := range all {
		t.add(i+1, d.fair)
	}
	return t
}

// add takes in one problem; one that was not drawn counts for nothing.
func (t *tally) add(problem int, f draw.Fairness) {
	if f.Draws == 0 {
		return
	}
	t.Draws += f.Draws
	t.Kept++
	t.Share = math.Round(1e4*float64(t.Kept)/float64(t.Draws)) / 1e4
	if t.Separation == nil || f.Separation < t.Separation.Digits {
		between := f.Between
		for i := range between {
			between[i] = append([]string{}, between[i]...)
		}
		t.Separation = &separation{f.Separation, problem, f.Quantity, between, f.Symbol}
	}
	for _, c := range f.Coincidences {
		t.Coincidences = append(t.Coincidences, coincidence{problem, c.Quantity, c.IDs, append([]string{}, c.With...)})
	}
}

func showFairness(page *screen, t tally) {
	if t.Kept == 0 {
		return
	}
	page.paragraph(0, plain, fmt.Sprintf("%s kept of %s (%.0f %%).", counted(t.Kept, "problem"), counted(t.Draws, "draw"), 100*t.Share))
	if s := t.Separation; s != nil && !math.IsInf(s.Digits, 0) {
		page.paragraph(0, plain, fmt.Sprintf("Closest wrong values: %.2f units of the last digit asked, for %s of problem %d (%s, and %s).",
			s.Digits, s.symbol, s.Problem, named(s.Between[0]), named(s.Between[1])))
	}
	page.paragraph(0, plain, fmt.Sprintf("%s of rare slips allowed; --json lists them.", counted(len(t.Coincidences), "coincidence")))
}

// named lists slips; none are the right value's band.
func named(ids []string) string {
	if len(ids) == 0 {
		return "the right value's band"
	}
	return strings.Join(ids, " or ")
}
