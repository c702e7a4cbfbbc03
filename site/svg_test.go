package site

import (
	"flag"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"closingside/site/page"
	"closingside/statics"
	"closingside/tutor/figure"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the golden files")

func tugs() figure.Pair {
	force := func(letter, name string, magnitude, direction float64) figure.Force {
		n := func(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }
		a := statics.Angle(direction) * statics.Degree
		return figure.Force{Vec: statics.Polar(magnitude, a), Name: name, Turn: a, Angle: figure.Plain(n(direction) + "°"),
			Label: figure.Symbol(letter, "").Is(n(magnitude) + " N").Say(letter + ", " + n(magnitude) + " newtons")}
	}
	return figure.Pair{
		First: force("P", "F1", 340, 25), Second: force("Q", "F2", 610, 118),
		Resultant: figure.Symbol("R", ""), Direction: figure.Symbol("θ", "").Say("theta"),
		AtTail: figure.Symbol("β", "").Say("beta"), AtJoint: figure.Symbol("γ", "").Is("87°").Say("gamma, 87 degrees"),
		AtHead: figure.Symbol("α", "").Say("alpha"),
	}
}

func scenes() map[string]figure.Scene {
	p := tugs()
	bare := p
	bare.First.Angle, bare.Second.Angle = figure.Label{}, figure.Label{}
	par := bare
	par.AtTail, par.AtHead, par.Between = figure.Label{}, figure.Label{}, figure.Symbol("φ", "").Is("93°")
	return map[string]figure.Scene{
		"given":         figure.Given(p.First, p.Second),
		"triangle":      figure.HeadToTail(bare),
		"parallelogram": figure.Parallelogram(par),
		"components":    figure.Rectangular(p.Second, figure.Symbol("Q", "x"), figure.Symbol("Q", "y").Is("538.6 N")),
	}
}

// TestSVGGolden holds four figures as they were last looked at.
func TestSVGGolden(t *testing.T) {
	for name, s := range scenes() {
		t.Run(name, func(t *testing.T) {
			got := SVG("fig", figure.Layout(s, figure.Size{Width: 360, Height: 300})).String() + "\n"
			got = strings.ReplaceAll(got, "<g ", "\n<g ")
			file := filepath.Join("testdata", "figures", name+".svg")
			if *update {
				require.NoError(t, os.MkdirAll(filepath.Dir(file), 0o755))
				require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
			}
			want, err := os.ReadFile(file)
			require.NoError(t, err)
			assert.Equal(t, string(want), got)
		})
	}
}

func TestSVGIsNamedAndBare(t *testing.T) {
	d := figure.Layout(scenes()["triangle"], figure.Size{Width: 360, Height: 300})
	got := SVG("work-3", d).String()
	assert.Contains(t, got, `role="img"`)
	assert.Contains(t, got, `aria-labelledby="work-3-title"`)
	assert.Contains(t, got, `<title id="work-3-title">`+d.Title+`</title>`)
	assert.Contains(t, got, `<desc id="work-3-desc">`+d.Desc+`</desc>`)
	assert.NotContains(t, got, "style=", "the page's policy blocks inline styles")
	assert.NotContains(t, got, "NaN")
	assert.Regexp(t, `data-name="F2" data-shift="-?[0-9.]+ -?[0-9.]+"`, got, "a moved force says where it came from")
	for _, id := range regexp.MustCompile(` id="([^"]*)"`).FindAllStringSubmatch(got, -1) {
		assert.True(t, strings.HasPrefix(id[1], "work-3-"), "every id begins with the figure's")
	}
}

func TestSubscriptsComeBackUp(t *testing.T) {
	s := figure.Scene{Arrows: []figure.Arrow{{To: statics.Polar(9, 0), Label: figure.Symbol("F", "1").Is("2 N")}}}
	got := SVG("f", figure.Layout(s, figure.Size{Width: 200, Height: 120})).String()
	assert.Contains(t, got, `<tspan class="f-symbol">F</tspan><tspan dy="3.3" font-size="11.1">1</tspan><tspan dy="-3.3"> = 2 N</tspan>`)
}

// TestStrokesAreNoWiderThanTheLayoutThinks reads the widths in figure.css.
func TestStrokesAreNoWiderThanTheLayoutThinks(t *testing.T) {
	sheet, err := page.Files.ReadFile("figure.css")
	require.NoError(t, err)
	css := regexp.MustCompile(`(?s)/\*.*?\*/`).ReplaceAllString(string(sheet), "")
	width := map[string]float64{}
	for _, rule := range regexp.MustCompile(`([^{}]+)\{([^{}]*stroke-width: ([0-9.]+)[^{}]*)\}`).FindAllStringSubmatch(css, -1) {
		w, err := strconv.ParseFloat(rule[3], 64)
		require.NoError(t, err)
		classes := regexp.MustCompile(`\.f-([a-z]+)`).FindAllStringSubmatch(rule[1], -1)
		for _, class := range classes {
			if class[1] == "figure" && len(classes) > 1 {
				continue
			}
			width[class[1]] = max(width[class[1]], w)
		}
	}
	require.Equal(t, 1.0, width["figure"], "the width of every stroke that no other rule sets")
	for _, c := range figure.Classes() {
		w := width[c.String()]
		if w == 0 {
			w = width["figure"]
		}
		assert.LessOrEqual(t, w, c.Weight(), c.String())
	}
}

// TestMeaningWithoutColour: no two classes of line look alike when colour is
// taken away: they differ in width, dashes, or in the shape that is drawn.
func TestMeaningWithoutColour(t *testing.T) {
	sheet, err := page.Files.ReadFile("figure.css")
	require.NoError(t, err)
	look := func(class string) string {
		var parts []string
		for _, rule := range regexp.MustCompile(`([^{}]+)\{([^{}]*)\}`).FindAllStringSubmatch(string(sheet), -1) {
			if !regexp.MustCompile(`\.f-`+class+`\b`).MatchString(rule[1]) || strings.Contains(rule[1], "text.") {
				continue
			}
			parts = append(parts, regexp.MustCompile(`stroke-(width|dasharray): [^;]+`).FindAllString(rule[2], -1)...)
		}
		return strings.Join(parts, "; ")
	}
	seen := map[string]string{}
	for _, class := range []string{"force", "resultant", "component", "construction", "learner", "axis"} {
		l := look(class)
		assert.Empty(t, seen[l], "%s looks like %s: %s", class, seen[l], l)
		seen[l] = class
	}
}
