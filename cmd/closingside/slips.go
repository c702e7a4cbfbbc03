package main

import (
	"closingside/tutor"
	"closingside/tutor/lesson"
)

// slipsVerb is for marking on paper: which mistake gives which value.
type slipsVerb struct {
	File     string `arg:"" help:"The problem, a YAML or JSON file."`
	Value    string `help:"Say which mistakes give this value, and how likely each is." placeholder:"VALUE"`
	Quantity string `help:"This quantity only, such as R or gamma." placeholder:"NAME"`
	All      bool   `help:"List values of a slip in an earlier step, too: the step done in the head, the rest right."`
	JSON     bool   `xor:"form" help:"One JSON object."`
	CSV      bool   `xor:"form" help:"The table as comma-separated values, one slip a row."`
}

// Help says what the table holds.
func (slipsVerb) Help() string {
	return "The table lists what each slip gives for each quantity, at the digits kept on the way. " +
		"Values that would be accepted are left out. With --value all of it is searched, two slips together and early rounding included."
}

// Run lists the table, or looks a value up.
func (v slipsVerb) Run(s streams) error {
	lesson, err := openLesson(v.File)
	if err != nil {
		return err
	}
	quantities, err := v.quantities(lesson)
	if err != nil {
		return err
	}
	if v.Value != "" && v.CSV {
		return wrongInput("--csv is for the table; with --value use --json or neither")
	}
	if v.Value != "" {
		return v.lookUp(s, lesson, quantities)
	}
	if q := quantities[0]; q.Equation && len(quantities) == 1 {
		return wrongInput("--quantity %s: this is an equation, and a table holds values; look one up with --value", v.Quantity)
	}
	table := wrongTable(lesson, quantities, v.All)
	switch {
	case v.JSON:
		return written(encode(s.out, table))
	case v.CSV:
		return written(table.csv(s.out))
	}
	page := newScreen(s.out)
	table.show(page, v.All)
	return written(page.err)
}

// quantities are those asked for.
func (v slipsVerb) quantities(l *tutor.Lesson) ([]*lesson.Quantity, error) {
	if v.Quantity == "" {
		return l.Wanted(), nil
	}
	name, err := newIndex(l).find(v.Quantity)
	if err != nil {
		return nil, wrongInput("--quantity: %w", err)
	}
	return []*lesson.Quantity{l.Quantity(name)}, nil
}
