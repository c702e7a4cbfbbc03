package main

import (
	"encoding/csv"
	"io"
	"strconv"

	"closingside/tutor"
	"closingside/tutor/lesson"
)

// wrongList is the table of wrong values, in a machine's form.
type wrongList struct {
	Quantities []wrongQuantity `json:"quantities"`
}

type wrongQuantity struct {
	Name   string       `json:"name"`
	Symbol string       `json:"symbol"`
	Unit   string       `json:"unit"`
	Right  string       `json:"right"` // as a student writes it
	Wrong  []wrongValue `json:"wrong"`
	what   string
}

type wrongValue struct {
	Value float64     `json:"value"`
	Shown string      `json:"shown"`
	At    string      `json:"at"` // the quantity in whose finding the slip sits
	Slips []wrongSlip `json:"slips"`
	Share float64     `json:"share"` // among this quantity's wrong values, before any is seen
	at    string      // its symbol, where it is another
}

type wrongSlip struct {
	ID  string `json:"id"`
	Did string `json:"did"`
}

func wrongTable(l *tutor.Lesson, quantities []*lesson.Quantity, all bool) wrongList {
	table := wrongList{Quantities: []wrongQuantity{}}
	settings := l.Problem.Settings
	for _, q := range quantities {
		if q.Equation {
			continue
		}
		row := wrongQuantity{Name: q.Name, Symbol: l.SymbolText(q.Name), Unit: l.UnitOf(q).Symbol,
			Right: l.ShowKept(q, q.True, settings), what: l.Sentence(q, "what"), Wrong: []wrongValue{}}
		for _, w := range l.WrongValues(q, settings) {
			if w.InHead(q) && !all {
				continue
			}
			value := wrongValue{Value: w.Value, Shown: w.Shown, At: w.At, Share: w.Weight}
			if w.InHead(q) {
				value.at = l.SymbolText(w.At)
			}
			for _, id := range w.IDs {
				value.Slips = append(value.Slips, wrongSlip{id, l.SlipTitle(id)})
			}
			row.Wrong = append(row.Wrong, value)
		}
		table.Quantities = append(table.Quantities, row)
	}
	return table
}

// show writes the table for a person.
func (t wrongList) show(page *screen, all bool) {
	for i, q := range t.Quantities {
		if i > 0 {
			page.line("")
		}
		page.line(page.in(bold, q.Symbol+" = "+q.Right))
		page.paragraph(2, dim, q.what)
		var values, ids []string
		for _, w := range q.Wrong {
			values = append(values, w.Shown)
			for _, s := range w.Slips {
				ids = append(ids, s.ID)
			}
		}
		values = atPoint(values)
		at := 2 + widest(values) + 2 + widest(ids) + 2
		for k, w := range q.Wrong {
			value := values[k]
			for _, s := range w.Slips {
				did := s.Did
				if w.at != "" {
					did = "in " + w.at + ": " + did
				}
				page.hanging("  "+pad(value, widest(values))+"  "+s.ID, at, plain, did)
				value = ""
			}
		}
	}
	page.line("")
	hint := "Slips under one value give the same. A value is looked up with --value."
	if !all {
		hint += " Slips in a step before, done in the head, are listed with --all."
	}
	page.paragraph(0, dim, hint)
}

func (t wrongList) csv(out io.Writer) error {
	w := csv.NewWriter(out)
	rows := [][]string{{"quantity", "symbol", "slip", "value", "unit", "shown", "at", "did"}}
	for _, q := range t.Quantities {
		for _, v := range q.Wrong {
			for _, s := range v.Slips {
				rows = append(rows, []string{q.Name, q.Symbol, s.ID, strconv.FormatFloat(v.Value, 'g', 10, 64), q.Unit, v.Shown, v.At, s.Did})
			}
		}
	}
	return w.WriteAll(rows)
}
