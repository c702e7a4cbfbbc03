package main

import (
	"bufio"
	"errors"
	"io"
	"strings"
	"unicode/utf8"

	"closingside/tutor"
)

// checkVerb judges what one learner wrote on a problem, in the order written.
type checkVerb struct {
	File string `arg:"" help:"The problem, a YAML or JSON file."`
	JSON bool   `help:"JSON lines: {\"quantity\":\"R\",\"entry\":\"682.6 N\"} in, one answer a line out; {\"reset\":true} begins anew."`
}

// Help says what standard input holds.
func (checkVerb) Help() string {
	return "Standard input holds one value a line, such as “R 682.6 N” or “gamma = 87 deg”. " +
		"A later value for the same quantity replaces the earlier one; “reset” begins anew."
}

// Run reads lines until they end and answers each before the next is read.
func (v checkVerb) Run(s streams) error {
	lesson, err := openLesson(v.File)
	if err != nil {
		return err
	}
	d := desk{lesson: lesson, names: newIndex(lesson)}
	d.reset()
	if v.JSON {
		return written(eachLine(s.in, func(line string) error { return d.answerJSON(s.out, line) }))
	}
	return written(d.converse(s))
}

// desk holds the work of one learner.
type desk struct {
	lesson *tutor.Lesson
	names  index
	work   *tutor.Work
}

func (d *desk) reset() { d.work = tutor.NewWork(d.lesson, d.lesson.Problem.Settings) }

const maxLine = 64 << 10 // bytes; far more than the reader takes as an entry

// eachLine gives every line that is not blank to answer. An error of what a
// line says becomes an inputError that names the line.
func eachLine(in io.Reader, answer func(line string) error) error {
	r := bufio.NewReaderSize(in, maxLine)
	for n := 1; ; n++ {
		bytes, err := r.ReadSlice('\n')
		if errors.Is(err, bufio.ErrBufferFull) {
			return wrongInput("standard input:%d: this line is longer than 64 kB; write one entry a line", n)
		}
		if err != nil && err != io.EOF {
			return err
		}
		line := string(bytes)
		if n == 1 {
			line = strings.TrimPrefix(line, "\ufeff")
		}
		line = strings.TrimSpace(line)
		switch {
		case !utf8.ValidString(line):
			return wrongInput("standard input:%d: this is not UTF-8 text; send UTF-8", n)
		case line != "":
			if bad := answer(line); errors.As(bad, new(*lineError)) {
				return wrongInput("standard input:%d: %w", n, bad)
			} else if bad != nil {
				return bad
			}
		}
		if err == io.EOF {
			return nil
		}
	}
}

// lineError is a line that is no entry: what is wrong, and what would do.
type lineError struct{ message string }

func (e *lineError) Error() string { return e.message }
