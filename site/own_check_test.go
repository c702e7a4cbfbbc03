package site

import (
	"strings"
	"testing"

	"closingside/tutor/draw"
	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/text"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// own is a problem of one's own with more fields.
func own(more ...string) []string {
	return append([]string{"do", "own", "kind", "two-forces", "story", "", "forces.0.name", "P", "forces.0.magnitude", "340 N", "forces.0.direction", "25 deg",
		"forces.1.name", "Q", "forces.1.magnitude", "610 N", "forces.1.direction", "118 deg", "at", "1"}, more...)
}

// code is that of the problem on the screen.
func code() string { return here.current }

// A choice that may be left open is a wish: nobody is told that it is "not given".
func TestAWishIsNothingGiven(t *testing.T) {
	ask("do", "start", "at", "1")
	for kind, id := range map[string]string{"particle-equilibrium": "parts.0.find", "missing-force": "find.0.force"} {
		page := ask("do", "form", "kind", kind, "at", "1")
		_, field, found := strings.Cut(page, `<label for="`+kind+"."+id+`">`)
		require.True(t, found, id)
		field, _, _ = strings.Cut(field, "</select>")
		assert.NotContains(t, field, text.Say("page.field.none"))
		assert.NotContains(t, field, text.Say("page.field.optional", "label", ""))
	}
}

func settings(t *testing.T) lesson.Settings {
	t.Helper()
	require.NotEmpty(t, code(), here.refused)
	return here.desks[code()].work.Settings
}

func TestHowAnswersAreCheckedIsChosenOnThePage(t *testing.T) {
	ask("do", "start", "at", "1")
	home := ask("do", "form", "kind", "two-forces", "at", "1")
	for _, key := range lesson.SettingKeys() {
		assert.Contains(t, home, `name="check.`+key+`"`)
	}
	t.Run("as usual", func(t *testing.T) {
		ask(own("check.digits", "", "check.hints", "")...)
		assert.Equal(t, lesson.DefaultSettings(), settings(t))
		assert.NotContains(t, code(), "check:")
	})
	t.Run("chosen", func(t *testing.T) {
		desk := ask(own("check.digits", "4", "check.method", "triangle", "check.hints", "off", "check.solution", "off", "check.direction", "from", "check.thing", "P", "check.units", "required")...)
		s := settings(t)
		assert.Equal(t, 4, s.Answer.Magnitude)
		assert.Equal(t, "from P", s.Direction.String())
		assert.Contains(t, desk, "Give θ counter-clockwise from P")
		assert.Contains(t, desk, text.Say("settings.by-triangle"))
		assert.NotContains(t, desk, `id="entry-F1x"`)
		assert.NotContains(t, desk, `id="components"`)
		assert.NotContains(t, desk, `value="hint"`)
		assert.NotContains(t, desk, `value="solution"`)
		refused := ask("do", "hint", "problem", code(), "quantity", "R", "at", "2")
		assert.NotContains(t, refused, `class="hint"`, "a request made by hand gets none either")
		assert.NotContains(t, ask("do", "solution", "problem", code(), "at", "2"), "<ol>")
		ask("do", "enter", "problem", code(), "quantity", "R", "entry", "682.6 N", "at", "2")
		end := part(t, ask("do", "enter", "problem", code(), "quantity", "theta", "entry", "63.17°", "at", "2"), "end")
		assert.Contains(t, end, "682.6 N")
		assert.NotContains(t, end, text.Say("page.end.worked"), "nor is it at the end")
		assert.NotContains(t, end, "87.00°")
		assert.Contains(t, ask("do", "enter", "problem", code(), "quantity", "theta", "entry", "63.2°", "at", "3"), `data-state="found"`)
		assert.Contains(t, ask("do", "read", "problem", code(), "quantity", "theta", "entry", "63.2°", "at", "3"), "63.2° counter-clockwise from P")
	})
	t.Run("refused beside the field", func(t *testing.T) {
		page := ask(own("check.direction", "from", "check.thing", "S")...)
		assert.Contains(t, page, "forces: P, Q")
		assert.Equal(t, 1, strings.Count(page, `aria-invalid="true"`))
		at := strings.Index(page, `aria-invalid="true"`)
		assert.Contains(t, page[strings.LastIndex(page[:at], "<input"):at], `name="check.thing"`)
		assert.Contains(t, page, `value="S"`, "what was typed stays")
	})
	t.Run("another like this keeps them", func(t *testing.T) {
		ask(own("check.digits", "4", "check.hints", "off")...)
		first := code()
		ask("do", "draw", "kind", "two-forces", "like", first, "at", "99")
		require.NotEqual(t, first, code())
		assert.Equal(t, 4, settings(t).Answer.Magnitude)
		assert.Equal(t, lesson.HelpOff, settings(t).Hints)
		want, _, err := (draw.Wish{Kind: kinds.All.ByName("two-forces"), Settings: settings(t)}).Generate(99)
		require.NoError(t, err)
		assert.Equal(t, want.Code(), code(), "it is drawn fair at the digits asked")
	})
	t.Run("delayed", func(t *testing.T) {
		desk := ask(own("check.hints", "delayed", "check.solution", "delayed")...)
		assert.NotContains(t, desk, `value="hint"`)
		wrong := ask("do", "enter", "problem", code(), "quantity", "R", "entry", "950 N", "at", "3")
		assert.Contains(t, wrong, `id="hint-R"`)
		assert.Contains(t, wrong, `value="solution"`)
	})
}

// A draft of several things beyond the least number, refused, is shown again.
func TestADraftOfManyThingsIsShownAgain(t *testing.T) {
	ask("do", "start", "at", "1")
	form := []string{"do", "own", "kind", "concurrent-forces", "at", "1"}
	for i, d := range []string{"25 deg", "118 deg", "200 deg", "300 deg", "sideways"} {
		n := "forces." + itoa(i) + "."
		form = append(form, n+"name", "F"+itoa(i+1), n+"magnitude", "100 N", n+"direction", d)
	}
	assert.Contains(t, ask(form...), `value="sideways"`)
}

// What is refused is named as the form has it: a field takes a value, and no line
// of a file.
func TestARefusedFieldIsNamedAsTheFormHasIt(t *testing.T) {
	ask("do", "start", "at", "1")
	form := ask(own("forces.1.magnitude", "6l0 N")...)
	_, why, found := strings.Cut(form, `id="refused"`)
	require.True(t, found)
	why, _, _ = strings.Cut(why, "</p>")
	assert.Contains(t, why, "“6l0 N” can")
	assert.Contains(t, why, "like “340 N”")
	assert.NotContains(t, why, "magnitude:")
}

// A link that leads nowhere is spoken of above everything, and not beside a field
// of a problem of one's own that was refused before.
func TestABrokenLinkIsNoFaultOfTheForm(t *testing.T) {
	ask("do", "start", "at", "1")
	refused := own("forces.1.magnitude", "6l0 N")
	ask(refused...)
	for name, page := range map[string]string{
		"followed":      ask("do", "open", "hash", barge()+"x", "at", "2"),
		"opened anew":   string(Handle([]byte(line("do", "start", "hash", barge()+"x", "at", "3") + "\n" + line(refused...)))),
		"a set, broken": ask("do", "open", "hash", "s1broken", "at", "4"),
	} {
		assert.Contains(t, page, `<p class="notice" role="alert" data-focus="title">This link`, name)
		assert.Less(t, strings.Index(page, `data-focus="title"`), strings.Index(page, `id="own-form"`), "what is in use first, %s", name)
		assert.Equal(t, 1, strings.Count(page, "This link is not whole")-strings.Count(page, `id="say"`), name)
		assert.Contains(t, page, `value="6l0 N"`, "what was typed stays, %s", name)
	}
}

// Every field that can't be read is told of, each beside itself; the first is in use.
func TestEveryFieldThatCannotBeReadIsToldOf(t *testing.T) {
	ask("do", "start", "at", "1")
	page := ask("do", "own", "kind", "two-forces", "at", "1", "forces.0.name", "P", "forces.0.magnitude", "34o N", "forces.0.direction", "25 deg",
		"forces.1.name", "Q", "forces.1.magnitude", "", "forces.1.direction", "sideways")
	assert.Equal(t, 3, strings.Count(page, `aria-invalid="true"`))
	for field, why := range map[string]string{"forces.0.magnitude": "“34o N”", "forces.1.magnitude": text.Say("page.home.own.empty"), "forces.1.direction": "“sideways”"} {
		_, input, found := strings.Cut(page, `name="`+field+`"`)
		require.True(t, found, field)
		input, said, _ := strings.Cut(input, ">")
		assert.Contains(t, input, `aria-invalid="true"`, field)
		assert.Contains(t, said[:strings.Index(said, "</p>")], why, field)
	}
	assert.Equal(t, 1, strings.Count(page, `id="refused"`))
	assert.Equal(t, 1, strings.Count(page, `data-focus="two-forces.`))
	assert.NotContains(t, ask("do", "form", "kind", "two-forces", "at", "2"), `aria-invalid`, "a form opened anew is fresh")
}
