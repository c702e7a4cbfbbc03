package sheet

import (
	"strings"

	"github.com/boombuler/barcode/qr"

	"closingside/site/html"
	"closingside/tutor/text"
)

// maxScanned is the longest link that is drawn as a code: beyond it the
// squares are too small for a phone's camera on a printed sheet of 30 mm
// (common practice: 0.4 mm a square).
const maxScanned = 500

// quiet is the light border a reader needs, in squares (ISO/IEC 18004).
const quiet = 4

// qrCode is a link as a QR code; a link too long to be scanned is written out.
func qrCode(link string) (html.Node, error) {
	if len(link) > maxScanned {
		return html.El("p", html.Class("small qr"), html.Text(text.Say("sheet.long-link"))), nil
	}
	code, err := qr.Encode(link, qr.M, qr.Auto)
	if err != nil {
		return html.Node{}, err
	}
	side := code.Bounds().Dx()
	var path strings.Builder
	for y := range side {
		for x := 0; x < side; x++ {
			from := x
			for x < side && dark(code.At(x, y).RGBA()) {
				x++
			}
			if x > from {
				path.WriteString("M" + itoa(from+quiet) + " " + itoa(y+quiet) + "h" + itoa(x-from) + "v1H" + itoa(from+quiet) + "z")
			}
		}
	}
	all := itoa(side + 2*quiet)
	return html.El("svg", html.Class("qr"), html.A("viewBox", "0 0 "+all+" "+all), html.A("role", "img"),
		html.A("aria-label", text.Say("sheet.qr")), html.A("shape-rendering", "crispEdges"),
		html.El("path", html.A("d", path.String()))), nil
}

// dark tells a dark square by its red part; squares are black or white.
func dark(r, _, _, _ uint32) bool { return r < 0x8000 }
