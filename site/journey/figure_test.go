package journey

import (
	"encoding/json"
	"net/http"
	"net/http/httptest"
	"strconv"
	"strings"
	"testing"

	"closingside/site"
	"closingside/site/page"
	"closingside/statics"
	"closingside/tutor/figure"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// labels are of every kind a figure writes.
func labels() []figure.Label {
	var all []figure.Label
	for _, value := range []string{"340 N", "−308.1 N", "4.448 kN", "12.5 lb", "1500 kip", "87.25°", "118° − θ"} {
		all = append(all, figure.Symbol("F", "1x").Is(value), figure.Plain(value))
	}
	for _, letter := range strings.Split("A B C D E F G H I J K L M N P Q R S T U V W X Y Z f j k m x y α β γ δ ε θ λ μ π ρ σ φ ψ ω", " ") {
		all = append(all, figure.Symbol(letter, ""), figure.Symbol(letter, "2").Is("87°"), figure.Symbol(letter, "y").Is("100 kN"))
	}
	return all
}

// TestLabelsFitTheirBoxes: the room the layout keeps for a label is at least
// what the browser fills, in the system's face and in two common ones.
func TestLabelsFitTheirBoxes(t *testing.T) {
	type box [4]float64
	var boxes []box
	var body strings.Builder
	for i, l := range labels() {
		s := figure.Scene{Arrows: []figure.Arrow{{To: statics.Polar(9, 0), Label: l}}}
		d := figure.Layout(s, figure.Size{Width: 240, Height: 120})
		body.WriteString(site.SVG("f"+strconv.Itoa(i), d).String())
		for _, m := range d.Marks {
			if m.Shape == figure.Text {
				boxes = append(boxes, box{m.Box.Min.X, m.Box.Min.Y, m.Box.Max.X, m.Box.Max.Y})
			}
		}
	}
	known, err := json.Marshal(boxes)
	require.NoError(t, err)
	sheet, err := page.Files.ReadFile("figure.css")
	require.NoError(t, err)
	server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		w.Write([]byte("<!doctype html><title>figures</title><style>" + string(sheet) + "svg.f-figure{width:240px}</style>" + body.String()))
	}))
	defer server.Close()
	ctx, cancel := chromedp.NewContext(browser)
	defer cancel()
	_, err = chromedp.Run(ctx, chromedp.Navigate(server.URL))
	require.NoError(t, err)
	for _, face := range []string{"", "'DejaVu Sans'", "'Liberation Sans'"} {
		t.Run("face "+face, func(t *testing.T) {
			out, err := chromedp.Run(ctx, chromedp.Evaluate[[][2]any](`(() => {
				const boxes = `+string(known)+`, texts = [...document.querySelectorAll("svg text")];
				if (texts.length !== boxes.length) throw new Error("labels lost");
				for (const s of document.querySelectorAll("svg")) s.style.fontFamily = `+strconv.Quote(face)+`;
				return texts.map((t, i) => {
					const b = t.getBBox(), width = t.getComputedTextLength(), [left,, right] = boxes[i];
					return [t.textContent, Math.max(left - b.x, b.x + b.width - right, width - (right - left))];
				});
			})()`))
			require.NoError(t, err)
			require.Len(t, out, len(boxes))
			worst := -1e9
			for _, o := range out {
				over := o[1].(float64)
				worst = max(worst, over)
				assert.LessOrEqual(t, over, 0.5, "%v is wider than its box", o[0])
			}
			t.Logf("%d labels; the tightest has %.2f pixels to spare on its side", len(out), -worst)
		})
	}
}
