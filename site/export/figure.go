package export

import (
	"strings"

	"closingside/site"
	"closingside/site/html"
	"closingside/site/page"
	"closingside/tutor/figure"
)

// File is one file of an export, its name relative with slashes.
type File struct {
	Name    string
	Content []byte
}

// room is the room for a figure that stands by itself.
var room = figure.Size{Width: 360, Height: 260}

// drawing is a scene as an SVG file with its style inside.
func drawing(scene figure.Scene) ([]byte, error) {
	style, err := page.Files.ReadFile("figure.css")
	if err != nil {
		return nil, err
	}
	node := site.SVG("figure", figure.Layout(scene, room))
	svg := strings.Replace(node.String(), "<svg ", `<svg xmlns="http://www.w3.org/2000/svg" `, 1)
	at := strings.IndexByte(svg, '>') + 1
	// The style is ours and holds no markup; "<" or "&" in it would have to be escaped.
	return []byte(svg[:at] + "<style>" + html.Escape(string(style)) + "</style>" + svg[at:]), nil
}
