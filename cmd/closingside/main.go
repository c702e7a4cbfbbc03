// Command closingside is the instructor's tool over the engine that the page
// runs. Each verb has its own file; closingside --help lists them.
//
//	closingside solve testdata/problems/barge.yaml
//	echo '{"quantity":"R","entry":"682.6 N"}' | closingside check testdata/problems/barge.yaml --json
//
// Exit status: 0 done, 1 something failed on the way, 2 the input was wrong
// (one line on standard error says what, where, and what would do).
package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/alecthomas/kong"
)

// verbs is every verb; each field's type has the flags and a Run method.
type verbs struct {
	Solve    solveVerb    `cmd:"" help:"Solve a problem by every method and show the working."`
	Check    checkVerb    `cmd:"" help:"Check what a learner wrote, value by value, read from standard input."`
	Slips    slipsVerb    `cmd:"" help:"List the wrong values of a problem, or say which mistakes give a value."`
	Trial    trialVerb    `cmd:"" help:"Measure the diagnosis on simulated learners."`
	Generate generateVerb `cmd:"" help:"Draw fair problems by seed, kind and difficulty."`
	Set      setVerb      `cmd:"" help:"Show what a set gives, to everyone or to one student."`
	Variants variantsVerb `cmd:"" help:"Draw a set for every student of a roster, with a link for each."`
	Sheet    sheetVerb    `cmd:"" help:"Write worksheets and keys to print."`
	Export   exportVerb   `cmd:"" help:"Write worked solutions in Markdown, or QTI 3 items for a learning platform."`
	Report   reportVerb   `cmd:"" help:"Read what students saved on the page: what to teach again, and who finished what."`
	Link     linkVerb     `cmd:"" help:"Print the link that opens a problem or a set on the page."`
	Serve    serveVerb    `cmd:"" help:"Serve the practice page on this machine and print its address."`
	Build    buildVerb    `cmd:"" help:"Write the practice page as a folder for any static web host."`
}

// streams are what a verb reads and writes.
type streams struct {
	in       io.Reader
	out, err io.Writer
}

// inputError is a mistake in what the command was given.
type inputError struct{ error }

// wrongInput marks an error as one of the input: exit status 2.
func wrongInput(format string, args ...any) error { return inputError{fmt.Errorf(format, args...)} }

func main() {
	// A fault of the program is said in one line too.
	defer func() {
		if r := recover(); r != nil {
			fmt.Fprintln(os.Stderr, "closingside: this is a fault of the program, please report it:", printable(fmt.Sprint(r)))
			os.Exit(1)
		}
	}()
	os.Exit(run(os.Args[1:], streams{os.Stdin, os.Stdout, os.Stderr}))
}

// helped is the command whose help goes with a faulty command line: the one it names, if any.
func helped(err error) string {
	if wrong := new(kong.ParseError); errors.As(err, &wrong) {
		for _, p := range wrong.Context.Path {
			if p.Command != nil {
				return "closingside " + p.Command.Name
			}
		}
	}
	return "closingside"
}

// run carries out one command line and returns the exit status.
func run(args []string, s streams) int {
	if len(args) == 0 {
		args = []string{"--help"}
	}
	status := -1
	parser, err := kong.New(&verbs{}, kong.Name("closingside"),
		kong.Description("Practice in how forces add: problems, checked step by step. For learning; not for lifting, rigging or structural decisions, which follow local codes and a licensed engineer."),
		kong.Vars{"kinds": strings.Join(kindNames(), ", ")}, kong.Writers(s.out, s.err), kong.Exit(func(code int) { status = code }),
		kong.WithHyphenPrefixedParameters(true), // --value "-62 deg"
		kong.ConfigureHelp(kong.HelpOptions{Compact: true, WrapUpperBound: 80}))
	if err != nil {
		panic(err) // the declaration above is wrong
	}
	ctx, err := parser.Parse(args)
	if status >= 0 { // help was shown
		return status
	}
	if err != nil {
		fmt.Fprintln(s.err, "closingside:", printable(err.Error())+"; "+helped(err)+" --help shows what there is")
		return 2
	}
	if err := ctx.Run(s); err != nil {
		fmt.Fprintln(s.err, "closingside:", printable(err.Error()))
		if wrong := (inputError{}); errors.As(err, &wrong) {
			return 2
		}
		return 1
	}
	return 0
}
