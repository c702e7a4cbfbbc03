package sets

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/verdict"
)

// weekThree is a set with every kind of entry.
func weekThree(extra ...lesson.Source) lesson.Source {
	return lesson.Branch("", append([]lesson.Source{
		lesson.Leaf("title", "Mooring lines, week 3"), lesson.Leaf("note", "Degree mode."),
		lesson.Branch("problems",
			lesson.Branch("", lesson.Leaf("generate", "two-forces"), lesson.Leaf("count", "3"), lesson.Leaf("difficulty", "2"), lesson.Leaf("marks", "4")),
			lesson.Branch("", append([]lesson.Source{lesson.Leaf("marks", "6")}, kinds.TwoForces.Bank[0].Kids...)...),
		)}, extra...)...)
}

func readSet(t testing.TB, src lesson.Source) *Set {
	s, err := Read(src)
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
	assert.Equal(t, kinds.TwoForces.BankProblems()[0].Code(), v.Tasks[3].Problem.Code())
	assert.Equal(t, 6, v.Tasks[3].Marks)
	assert.Positive(t, v.Tasks[0].Fair.Draws)
}

// Set and student alone bring a variant back; another student, title or
// version gives another.
func TestAVariantIsBroughtBackBySetAndStudent(t *testing.T) {
	own := lesson.Leaf("numbers", "own")
	first := variantOf(t, readSet(t, weekThree(own)), "S 1042")
	again := variantOf(t, readSet(t, weekThree(own)), "s1042")
	assert.Equal(t, codes(first), codes(again))
	assert.Equal(t, first.ID, again.ID)

	other := variantOf(t, readSet(t, weekThree(own)), "S1043")
	assert.NotEqual(t, codes(first)[:3], codes(other)[:3])
	assert.Equal(t, codes(first)[3], codes(other)[3], "a problem given is the same for all")
	newer := variantOf(t, readSet(t, weekThree(own, lesson.Leaf("version", "2"))), "S1042")
	assert.NotEqual(t, codes(first)[:3], codes(newer)[:3])

	same := readSet(t, weekThree())
	assert.Equal(t, codes(variantOf(t, same, "S1042")), codes(variantOf(t, same, "S1043")))
}

func TestAnOrderOfOnesOwn(t *testing.T) {
	s := readSet(t, weekThree(lesson.Leaf("order", "shuffled")))
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
	w := tutor.NewWork(tugs(t), lesson.DefaultSettings())
	assert.Zero(t, s.Earned(w, 6))
	require.Equal(t, verdict.Correct, w.Enter("R", "682.6 N").Verdict)
	assert.InDelta(t, 3, s.Earned(w, 6), 0)

	w = tutor.NewWork(tugs(t), lesson.DefaultSettings())
	require.Equal(t, verdict.SlipFound, w.Enter("gamma", "93").Verdict)
	require.Equal(t, verdict.Carried, w.Enter("R", "713.7 N").Verdict)
	for share, want := range map[Share]float64{FullShare: 3, HalfShare: 1.5, NoShare: 0} {
		s.Carried = share
		assert.InDelta(t, want, s.Earned(w, 6), 0, share)
	}
}

func TestAWrongSetIsRefusedAtItsPlace(t *testing.T) {
	at := func(line int, s lesson.Source) lesson.Source { s.Line, s.Col = line, 3; return s }
	good := lesson.Leaf("title", "T")
	list := func(items ...lesson.Source) lesson.Source { return lesson.Branch("problems", items...) }
	draw := func(extra ...lesson.Source) lesson.Source {
		return list(lesson.Branch("", append([]lesson.Source{lesson.Leaf("generate", "two-forces")}, extra...)...))
	}
	for name, row := range map[string]struct {
		src  []lesson.Source
		says string
	}{
		"no title":         {[]lesson.Source{draw()}, "no title"},
		"no problems":      {[]lesson.Source{good}, "no problems"},
		"unknown key":      {[]lesson.Source{good, at(2, lesson.Leaf("prblems", ""))}, "“prblems” is not known"},
		"key twice":        {[]lesson.Source{good, at(2, lesson.Leaf("title", "U")), draw()}, "twice"},
		"no list":          {[]lesson.Source{good, at(2, lesson.Leaf("problems", "ten"))}, "must be a list"},
		"numbers":          {[]lesson.Source{good, at(2, lesson.Leaf("numbers", "mine")), draw()}, "same, own"},
		"order":            {[]lesson.Source{good, at(2, lesson.Leaf("order", "any")), draw()}, "given, shuffled"},
		"carried":          {[]lesson.Source{good, at(2, lesson.Leaf("carried", "yes")), draw()}, "full, half, none"},
		"unknown kind":     {[]lesson.Source{good, list(lesson.Branch("", at(2, lesson.Leaf("generate", "ten-forces"))))}, "ten-forces"},
		"marks":            {[]lesson.Source{good, draw(at(2, lesson.Leaf("marks", "0")))}, "from 1 to 100"},
		"count":            {[]lesson.Source{good, draw(at(2, lesson.Leaf("count", "1e3")))}, "from 1 to 40"},
		"too many":         {[]lesson.Source{good, list(append(draw(lesson.Leaf("count", "40")).Kids, draw().Kids...)...)}, "keep it to 40"},
		"difficulty":       {[]lesson.Source{good, draw(at(2, lesson.Leaf("difficulty", "4")))}, "from 0 to 3"},
		"quadrant":         {[]lesson.Source{good, draw(at(2, lesson.Leaf("quadrants", "1, 5")))}, "“5” is no quadrant"},
		"contradiction":    {[]lesson.Source{good, list(at(2, lesson.Branch("", lesson.Leaf("generate", "two-forces"), lesson.Leaf("difficulty", "1"), lesson.Leaf("quadrants", "2"))))}, "Difficulty 1"},
		"wish's key":       {[]lesson.Source{good, draw(at(2, lesson.Leaf("story", "Tugs")))}, "“story” is not known"},
		"a file":           {[]lesson.Source{good, list(lesson.Branch("", at(2, lesson.Leaf("file", "barge.yaml"))))}, "use the command"},
		"unsolvable":       {[]lesson.Source{good, list(at(2, lesson.Branch("", lesson.Leaf("kind", "two-forces"), lesson.Branch("forces", kinds.ForceSource("P", "1 N", "0"), kinds.ForceSource("Q", "1 N", "180")))))}, "equal and opposite"},
		"title too long":   {[]lesson.Source{at(2, lesson.Leaf("title", string(make([]byte, 200)))), draw()}, "too long"},
		"title of parts":   {[]lesson.Source{at(2, lesson.Branch("title", lesson.Leaf("", "T"))), draw()}, "without parts"},
		"empty problem":    {[]lesson.Source{good, list(at(2, lesson.Branch("")))}, "kind of problem is missing"},
		"problem's fields": {[]lesson.Source{good, list(lesson.Branch("", lesson.Leaf("kind", "two-forces"), lesson.Branch("forces", at(2, lesson.Branch("", lesson.Leaf("name", "P"))))))}, "“magnitude” is missing"},
	} {
		t.Run(name, func(t *testing.T) {
			_, err := Read(lesson.Branch("", row.src...))
			var fault *lesson.SourceError
			require.ErrorAs(t, err, &fault)
			assert.Contains(t, fault.Message, row.says)
			if name != "no title" && name != "no problems" && name != "too many" {
				assert.Equal(t, 2, fault.Line)
			}
		})
	}
}

func TestAStudentsIDIsChecked(t *testing.T) {
	assert.NoError(t, CheckStudent("S 1042"))
	assert.Error(t, CheckStudent("  "))
	assert.Error(t, CheckStudent(string(make([]byte, 60))))
}

// The set's settings reach every problem; one entry may change them for itself.
func TestASetsSettingsReachItsProblems(t *testing.T) {
	s := readSet(t, lesson.Branch("", lesson.Leaf("title", "T"), lesson.Branch(lesson.CheckKey, lesson.Leaf("hints", "off"), lesson.Leaf("digits", "4")),
		lesson.Branch("problems",
			lesson.Branch("", lesson.Leaf("generate", "two-forces"), lesson.Branch(lesson.CheckKey, lesson.Leaf("hints", "delayed"))),
			lesson.Branch("", kinds.TwoForces.Bank[0].Kids...),
			lesson.Branch("", append([]lesson.Source{lesson.Branch(lesson.CheckKey, lesson.Leaf("digits", "3"))}, kinds.TwoForces.Bank[1].Kids...)...))))
	tasks := variantOf(t, s, "").Tasks
	require.Len(t, tasks, 3)
	for i, want := range []struct {
		hints  lesson.Help
		digits int
	}{{lesson.HelpDelayed, 4}, {lesson.HelpOff, 4}, {lesson.HelpOff, 3}} {
		got := tasks[i].Problem.Settings
		assert.Equal(t, want.hints, got.Hints, i)
		assert.Equal(t, want.digits, got.Answer.Magnitude, i)
	}
}

// tugs is a problem of two tugs.
func tugs(t *testing.T) *tutor.Lesson {
	t.Helper()
	l, err := tutor.Open(kinds.TwoForces.BankProblems()[0])
	require.NoError(t, err)
	return l
}
