package main

import (
	"bufio"
	"encoding/json"
	"io"
	"os"
	"os/exec"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"closingside/tutor"
	"closingside/tutor/verdict"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// ask is a line for check --json.
func ask(quantity, entry string) string {
	line, _ := json.Marshal(map[string]string{"quantity": quantity, "entry": entry})
	return string(line) + "\n"
}

// replies runs check --json on the barge and reads every answer.
func replies(t *testing.T, in string) (all []answer, errs string, status int) {
	t.Helper()
	out, errs, status := tell(in, "check", problem("barge.yaml"), "--json")
	for line := range strings.Lines(out) {
		var a answer
		strict := json.NewDecoder(strings.NewReader(line))
		strict.DisallowUnknownFields()
		require.NoError(t, strict.Decode(&a), line)
		all = append(all, a)
	}
	return all, errs, status
}

func TestCheckForScripts(t *testing.T) {
	all, errs, status := replies(t, "\ufeff"+ask("gamma", "93")+"\r\n\n"+ask("R", "682.6 N")+ask("R", "682.6")+ask("R", "ba<na & Söhne")+ask("γ", "87°")+strings.TrimSpace(ask("F_1x", "1 N")))
	require.Zero(t, status, errs)
	require.Len(t, all, 6)

	assert.Equal(t, []string{"gamma", "R", "R", "R", "gamma", "F1x"}, field(all, func(a answer) string { return a.Quantity }))
	assert.Equal(t, []string{"93", "682.6 N", "682.6", "ba<na & Söhne", "87°", "1 N"}, field(all, func(a answer) string { return a.Entry }))
	assert.Equal(t, "slip", all[0].Verdict)
	assert.Contains(t, all[0].Slips[0].IDs, "included-for-interior")
	assert.Equal(t, "correct", all[1].Verdict)
	assert.Equal(t, []string{"unit-missing"}, all[2].Notes)
	assert.Equal(t, "unreadable", all[3].Verdict)
	for _, a := range all {
		assert.NotEmpty(t, a.Feedback)
		assert.NotNil(t, a.Slips, "an array, even an empty one")
		if a.Verdict != "slip" && a.Verdict != "unexplained" {
			continue
		}
		sum, before := a.Unexplained, 1.0
		for _, s := range a.Slips {
			assert.LessOrEqual(t, s.Probability, before, "best first")
			assert.NotEmpty(t, s.IDs)
			before = s.Probability
			sum += before
		}
		assert.InDelta(t, 1, sum, 1e-9)
	}
}

func field(all []answer, of func(answer) string) []string {
	var texts []string
	for _, a := range all {
		texts = append(texts, of(a))
	}
	return texts
}

// The keys, their order and what is left out are relied on by scripts.
func TestTheFormOfAnAnswer(t *testing.T) {
	line := func(r tutor.Reply) string {
		var b strings.Builder
		require.NoError(t, encode(&b, machine(r)))
		return strings.TrimSpace(b.String())
	}
	assert.Equal(t, `{"quantity":"R","entry":"<1>","verdict":"unreadable","slips":[],"unexplained":0,"feedback":"?"}`,
		line(tutor.Reply{Quantity: "R", Entry: "<1>", Feedback: "?"}))
	assert.Equal(t, `{"quantity":"R","entry":"1","verdict":"slip","slips":[{"ids":["a","b+c"],"probability":0.75}],"unexplained":0.25,`+
		`"from":"gamma","rounded":{"what":"sin β","digits":1,"keep":4},"notes":["unit-missing"],"feedback":"?"}`,
		line(tutor.Reply{Quantity: "R", Entry: "1", Verdict: verdict.SlipFound, Slips: []tutor.Suspect{{IDs: []string{"a", "b+c"}, Probability: 0.75, At: "R"}},
			Unexplained: 0.25, From: "gamma", Rounded: &tutor.Rounded{What: "sin β", Digits: 1, Keep: 4}, Notes: []string{"unit-missing"}, Feedback: "?"}))
}

// R follows from the learner's own γ while that stands; a later γ replaces it,
// and a reset forgets it.
func TestALaterEntryReplacesAndAResetForgets(t *testing.T) {
	formula := ask("R", "sqrt(340^2+610^2-2*340*610*cos(gamma))")
	out, errs, status := tell(ask("gamma", "93")+ask("gamma", "87")+formula+`{"reset":true}`+"\n"+formula, "check", problem("barge.yaml"), "--json")
	require.Zero(t, status, errs)
	lines := strings.Split(strings.TrimSpace(out), "\n")
	require.Len(t, lines, 5)
	assert.Contains(t, lines[2], `"verdict":"correct"`)
	assert.Equal(t, `{"reset":true}`, lines[3])
	assert.Contains(t, lines[4], `"verdict":"unreadable"`, "γ is not found yet")
}

func TestBadLinesEndTheRunAfterTheAnswersBefore(t *testing.T) {
	good := ask("gamma", "87")
	rows := []struct{ name, line, says string }{
		{"unknown quantity", ask("Rz", "1 N"), "is Rx or Ry meant? (names: phi, gamma, R,"},
		{"lower case", ask("r", "1 N"), "is R meant?"},
		{"Greek in words", ask("gama", "1"), "is gamma meant?"},
		{"one letter", ask("q", "1 N"), "called “q” (names"},
		{"nothing near", ask("tension", "1 N"), "called “tension” (names: phi, gamma, R,"},
		{"no name", ask("", "1 N"), "(names: phi,"},
		{"a given", ask("P", "340 N"), "“P” is given, not asked; name one of phi"},
		{"a given by its canonical name", ask("F1", "340 N"), "is given, not asked"},
		{"no JSON", "R 682.6 N\n", `write {"quantity":"R","entry":"682.6 N"} or {"reset":true}`},
		{"half a line", `{"quantity":"R","entry":"682`, "not a JSON object"},
		{"two objects", `{"reset":true}{"reset":true}`, "not a JSON object"},
		{"array", `["R","682.6 N"]`, "not a JSON object"},
		{"null", `null`, "not a JSON object"},
		{"number as entry", `{"quantity":"R","entry":682.6}`, "“entry” must be a text in quotes"},
		{"null as entry", `{"quantity":"R","entry":null}`, "“entry” must be a text in quotes"},
		{"no entry", `{"quantity":"R"}`, "“entry” is missing"},
		{"no quantity", `{"entry":"682.6 N"}`, "“quantity” is missing"},
		{"unknown key", `{"quantity":"R","value":"682.6 N"}`, "“value” is not known here"},
		{"entry twice", `{"quantity":"R","entry":"1 N","entry":"2 N"}`, "“entry” is given twice"},
		{"quantity twice", `{"quantity":"R","entry":"1 N","quant\u0069ty":"theta"}`, "“quantity” is given twice"},
		{"reset twice", `{"reset":false,"reset":true}`, "“reset” is given twice"},
		{"other case", `{"Quantity":"R","entry":"682.6 N"}`, "“Quantity” is not known here"},
		{"reset false", `{"reset":false}`, "“reset” stands alone and is true"},
		{"reset with more", `{"reset":true,"quantity":"R"}`, "“reset” stands alone"},
		{"Latin-1", "{\"quantity\":\"R\",\"entry\":\"\xb0\"}", "UTF-8"},
		{"nested", strings.Repeat("[", 30_000), "not a JSON object"},
		{"long", `{"quantity":"R","entry":"` + strings.Repeat("1", maxLine) + `"}`, "64 kB"},
	}
	for _, r := range rows {
		t.Run(r.name, func(t *testing.T) {
			all, errs, status := replies(t, good+"\n"+r.line)
			assert.Len(t, all, 1, "the answer before stands")
			refused(t, errs, status, "standard input:3:", r.says)
		})
	}
}

// A script may wait for each answer before it writes the next line.
func TestEachAnswerComesAtOnce(t *testing.T) {
	for _, flags := range [][]string{{"--json"}, nil} {
		in, write := io.Pipe()
		read, out := io.Pipe()
		done := make(chan int, 1)
		go func() {
			done <- run(append([]string{"check", problem("barge.yaml")}, flags...), streams{in, out, io.Discard})
			out.Close()
		}()
		answers := bufio.NewReader(read)
		for range 3 {
			line := "gamma 87\n"
			if flags != nil {
				line = ask("gamma", "87")
			}
			_, err := io.WriteString(write, line)
			require.NoError(t, err)
			got, err := answers.ReadString('\n')
			require.NoError(t, err)
			assert.Contains(t, got, "correct")
		}
		write.Close()
		_, err := io.Copy(io.Discard, answers)
		require.NoError(t, err)
		assert.Zero(t, <-done)
	}
}

// A reader that has seen enough is no error and leaves nothing on stderr.
func TestAReaderMayLeaveEarly(t *testing.T) {
	for _, args := range [][]string{{"solve"}, {"solve", "--json"}, {"check"}, {"check", "--json"}} {
		t.Run(strings.Join(args, " "), func(t *testing.T) {
			read, write := io.Pipe()
			read.Close()
			in := strings.Repeat("R 1 N\n", 3)
			if len(args) == 2 {
				in = strings.Repeat(ask("R", "1 N"), 3)
			}
			var errs strings.Builder
			assert.Zero(t, run(append(args, problem("barge.yaml")), streams{strings.NewReader(in), write, &errs}))
			assert.Empty(t, errs.String())
		})
	}
	t.Run("as a process", func(t *testing.T) {
		cmd := exec.Command(os.Args[0], "check", "--json", problem("barge.yaml"))
		cmd.Env = append(os.Environ(), asCommand+"=1")
		var errs strings.Builder
		cmd.Stderr = &errs
		in, err := cmd.StdinPipe()
		require.NoError(t, err)
		out, err := cmd.StdoutPipe()
		require.NoError(t, err)
		require.NoError(t, cmd.Start())
		_, err = io.WriteString(in, ask("R", "682.6 N"))
		require.NoError(t, err)
		got, err := bufio.NewReader(out).ReadString('\n')
		require.NoError(t, err)
		assert.Contains(t, got, "correct")
		out.Close()
		_, _ = io.WriteString(in, ask("R", "682.6 N"))
		ended := make(chan error, 1)
		go func() { ended <- cmd.Wait() }()
		select {
		case <-ended: // by the broken pipe, as any filter ends
		case <-time.After(5 * time.Minute):
			require.NoError(t, cmd.Process.Kill())
			t.Fatal("it went on after its reader had left")
		}
		assert.Empty(t, errs.String())
	})
}

func TestCheckForPeople(t *testing.T) {
	long := "sqrt(340^2+610^2-2*340*610*cos(87))+0*" + strings.Repeat("(340+610)*", 8) + "1"
	in := "gamma 93°\nR = 682.6 N\nγ=87\nβ = θ − 25°\nF_1x\t308.1 N\nR sqrt(340^2+610^2-2*340*610*cos(87)) N\nR banana\x1b[31m\nreset\nR " + long + "\nalpha gamma\n"
	out, errs, status := tell(in, "check", problem("barge.yaml"))
	require.Zero(t, status, errs)
	assert.NotContains(t, out, "\x1b")
	assert.NotContains(t, out, "> ", "no prompt where nobody types")
	assert.True(t, strings.HasSuffix(out, "local codes and a licensed engineer.\n"))
	var heads []string
	for line := range strings.Lines(out) {
		line = strings.TrimRight(line, "\n")
		assert.LessOrEqual(t, utf8.RuneCountInString(line), usualWidth, line)
		if r := []rune(line); len(r) > 2 && (!strings.HasPrefix(line, "   ") || len(r) > 24 && r[24] != ' ' && r[23] == ' ' && r[22] == ' ') {
			heads = append(heads, strings.TrimRight(string(r[:min(len(r), 38)]), " "))
		}
	}
	assert.Equal(t, []string{
		"  γ   93°               slip",
		"  R   682.6 N           correct",
		"  γ   87                correct",
		"  β   θ − 25°           correct",
		"  Px  308.1 N           correct",
		"  R   sqrt(340^2+610^2-2*340*610*cos(8", // the rest of the line is longer than the columns
		"                        correct",
		"  R   banana▯[31m       unreadable",
		"  begun anew",
		"  R   sqrt(340^2+610^2-2*340*610*cos(8",
		"                        correct",
		"  α   gamma             unreadable",
		"For learning. Not for lifting, rigging", "local codes and a licensed engineer.",
	}, heads)
}

// A name may stand before its value as it does in a notebook.
func TestANameIsToldFromItsValue(t *testing.T) {
	for _, line := range []string{"R 682.6 N", "R=682.6 N", "R = 682.6 N", "R: 682.6 N", "R :682.6 N"} {
		name, entry, ok := splitEntry(line)
		assert.True(t, ok && name == "R" && entry == "682.6 N", "%q: %q %q", line, name, entry)
	}
}

func TestLinesOfPeopleThatAreNoEntry(t *testing.T) {
	for line, says := range map[string]string{
		"hello":     "write a quantity and its value, such as “R 682.6 N”",
		"R":         "write a quantity and its value",
		"R =":       "write a quantity and its value",
		"= 3":       "write a quantity and its value",
		"r 682.6 N": "is R meant?",
		"P 340 N":   "“P” is given",
	} {
		t.Run(line, func(t *testing.T) {
			_, errs, status := tell("R 682.6 N\n"+line+"\n", "check", problem("barge.yaml"))
			refused(t, errs, status, "standard input:2:", says)
		})
	}
}

// Whatever forces are called, a canonical name means the lesson's quantity.
func TestCanonicalNamesComeFirst(t *testing.T) {
	path := writeFile(t, "p.yaml", head+"forces:\n  - {name: F2, magnitude: 340 N, direction: 25 deg}\n  - {name: F1, magnitude: 610 N, direction: 118 deg}\n")
	out, errs, status := tell(ask("F1x", "308.1 N")+ask("F2x", "-286.4 N"), "check", "--json", path)
	require.Zero(t, status, errs)
	assert.Equal(t, 2, strings.Count(out, `"verdict":"correct"`), out)
}
