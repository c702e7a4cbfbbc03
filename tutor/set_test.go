package tutor

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// weekThree is a set with every kind of entry.
func weekThree(extra ...Source) Source {
	return branch("", append([]Source{
		leaf("title", "Mooring lines, week 3"), leaf("note", "Degree mode."),
		branch("problems",
			branch("", leaf("generate", "two-forces"), leaf("count", "3"), leaf("difficulty", "2"), leaf("marks", "4")),
			branch("", append([]Source{leaf("marks", "6")}, twoForces.Bank[0].Kids...)...),
		)}, extra...)...)
}

func readSet(t testing.TB, src Source) *Set {
	s, err := ReadSet(src)
	require.NoError(t, err)
	return s
}

func codes(v *Variant) []string {
	var all []string
	for _, task := range v.Tasks {
		all = append(all, task.Problem.Code())
	}
	return all
}

func variantOf(t testing.TB, s *Set, student string) *Variant {
	v, err := s.Variant(student)
	require.NoError(t, err)
	return v
}

func TestASetIsReadWhole(t *testing.T) {
	s := readSet(t, weekThree())
	assert.Equal(t, "Mooring lines, week 3", s.Title)
	assert.Equal(t, 4, s.Size())
	assert.Equal(t, 18, s.Marks())
	v := variantOf(t, s, "")
	require.Len(t, v.Tasks, 4)
	for i, task := range v.Tasks {
		assert.Equal(t, i+1, task.Number)
	}
	assert.Equal(t, twoForces.BankProblems()[0].Code(), v.Tasks[3].Problem.Code())
	assert.Equal(t, 6, v.Tasks[3].Marks)
	assert.Positive(t, v.Tasks[0].Fair.Draws)
}

// Set and student alone bring a variant back; another student, title or
// version gives another.
func TestAVariantIsBroughtBackBySetAndStudent(t *testing.T) {
	own := leaf("numbers", "own")
	first := variantOf(t, readSet(t, weekThree(own)), "S 1042")
	again := variantOf(t, readSet(t, weekThree(own)), "s1042")
	assert.Equal(t, codes(first), codes(again))
	assert.Equal(t, first.ID, again.ID)

	other := variantOf(t, readSet(t, weekThree(own)), "S1043")
	assert.NotEqual(t, codes(first)[:3], codes(other)[:3])
	assert.Equal(t, codes(first)[3], codes(other)[3], "a problem given is the same for all")
	newer := variantOf(t, readSet(t, weekThree(own, leaf("version", "2"))), "S1042")
	assert.NotEqual(t, codes(first)[:3], codes(newer)[:3])

	same := readSet(t, weekThree())
	assert.Equal(t, codes(variantOf(t, same, "S1042")), codes(variantOf(t, same, "S1043")))
}

func TestAnOrderOfOnesOwn(t *testing.T) {
	s := readSet(t, weekThree(leaf("order", "shuffled")))
	seen := map[string]bool{}
	for _, student := range []string{"a", "b", "c", "d", "e", "f"} {
		v := variantOf(t, s, student)
		assert.ElementsMatch(t, codes(variantOf(t, s, "")), codes(v), "the same problems")
		seen[v.Tasks[0].Problem.Code()] = true
	}
	assert.Greater(t, len(seen), 1, "more than one begins")
}

func TestMarksAreSharedByAnswers(t *testing.T) {
	s := readSet(t, weekThree())
	w := NewWork(barge(t), DefaultSettings())
	assert.Zero(t, s.Earned(w, 6))
	require.Equal(t, Correct, w.Enter("R", "682.6 N").Verdict)
	assert.InDelta(t, 3, s.Earned(w, 6), 0)

	w = NewWork(barge(t), DefaultSettings())
	require.Equal(t, SlipFound, w.Enter("gamma", "93").Verdict)
	require.Equal(t, Carried, w.Enter("R", "713.7 N").Verdict)
	for share, want := range map[Share]float64{Full: 3, Half: 1.5, None: 0} {
		s.Carried = share
		assert.InDelta(t, want, s.Earned(w, 6), 0, share)
	}
}

func TestAWrongSetIsRefusedAtItsPlace(t *testing.T) {
	at := func(line int, s Source) Source { s.Line, s.Col = line, 3; return s }
	good := leaf("title", "T")
	list := func(items ...Source) Source { return branch("problems", items...) }
	draw := func(extra ...Source) Source {
		return list(branch("", append([]Source{leaf("generate", "two-forces")}, extra...)...))
	}
	for name, row := range map[string]struct {
		src  []Source
		says string
	}{
		"no title":         {[]Source{draw()}, "no title"},
		"no problems":      {[]Source{good}, "no problems"},
		"unknown key":      {[]Source{good, at(2, leaf("prblems", ""))}, "“prblems” is not known"},
		"key twice":        {[]Source{good, at(2, leaf("title", "U")), draw()}, "twice"},
		"no list":          {[]Source{good, at(2, leaf("problems", "ten"))}, "must be a list"},
		"numbers":          {[]Source{good, at(2, leaf("numbers", "mine")), draw()}, "same, own"},
		"order":            {[]Source{good, at(2, leaf("order", "any")), draw()}, "given, shuffled"},
		"carried":          {[]Source{good, at(2, leaf("carried", "yes")), draw()}, "full, half, none"},
		"unknown kind":     {[]Source{good, list(branch("", at(2, leaf("generate", "ten-forces"))))}, "ten-forces"},
		"marks":            {[]Source{good, draw(at(2, leaf("marks", "0")))}, "from 1 to 100"},
		"count":            {[]Source{good, draw(at(2, leaf("count", "1e3")))}, "from 1 to 40"},
		"too many":         {[]Source{good, list(append(draw(leaf("count", "40")).Kids, draw().Kids...)...)}, "keep it to 40"},
		"difficulty":       {[]Source{good, draw(at(2, leaf("difficulty", "4")))}, "from 0 to 3"},
		"quadrant":         {[]Source{good, draw(at(2, leaf("quadrants", "1, 5")))}, "“5” is no quadrant"},
		"contradiction":    {[]Source{good, list(at(2, branch("", leaf("generate", "two-forces"), leaf("difficulty", "1"), leaf("quadrants", "2"))))}, "Difficulty 1"},
		"wish's key":       {[]Source{good, draw(at(2, leaf("story", "Tugs")))}, "“story” is not known"},
		"a file":           {[]Source{good, list(branch("", at(2, leaf("file", "barge.yaml"))))}, "use the command"},
		"unsolvable":       {[]Source{good, list(at(2, branch("", leaf("kind", "two-forces"), branch("forces", force("P", "1 N", "0"), force("Q", "1 N", "180")))))}, "equal and opposite"},
		"title too long":   {[]Source{at(2, leaf("title", string(make([]byte, 200)))), draw()}, "too long"},
		"title of parts":   {[]Source{at(2, branch("title", leaf("", "T"))), draw()}, "without parts"},
		"empty problem":    {[]Source{good, list(at(2, branch("")))}, "kind of problem is missing"},
		"problem's fields": {[]Source{good, list(branch("", leaf("kind", "two-forces"), branch("forces", at(2, branch("", leaf("name", "P"))))))}, "“magnitude” is missing"},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := ReadSet(branch("", row.src...))
			var fault *SourceError
			require.ErrorAs(t, err, &fault)
			assert.Contains(t, fault.Message, row.says)
			if name != "no title" && name != "no problems" && name != "too many" {
				assert.Equal(t, 2, fault.Line)
			}
		})
	}
}

func TestAStudentsIDIsChecked(t *testing.T) {
	assert.Empty(t, CheckStudent("S 1042"))
	assert.NotEmpty(t, CheckStudent("  "))
	assert.NotEmpty(t, CheckStudent(string(make([]byte, 60))))
}

// The set's settings reach every problem; one entry may change them for itself.
func TestASetsSettingsReachItsProblems(t *testing.T) {
	s := readSet(t, branch("", leaf("title", "T"), branch(CheckKey, leaf("hints", "off"), leaf("digits", "4")),
		branch("problems",
			branch("", leaf("generate", "two-forces"), branch(CheckKey, leaf("hints", "delayed"))),
			branch("", twoForces.Bank[0].Kids...),
			branch("", append([]Source{branch(CheckKey, leaf("digits", "3"))}, twoForces.Bank[1].Kids...)...))))
	tasks := variantOf(t, s, "").Tasks
	require.Len(t, tasks, 3)
	for i, want := range []struct {
		hints  Help
		digits int
	}{{HelpDelayed, 4}, {HelpOff, 4}, {HelpOff, 3}} {
		got := tasks[i].Problem.Settings
		assert.Equal(t, want.hints, got.Hints, i)
		assert.Equal(t, want.digits, got.Answer.Magnitude, i)
	}
}
