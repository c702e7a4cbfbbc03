package publish

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"math"
	"strconv"
	"strings"
	"sync"
)

// The mark is a force polygon: two forces head to tail in hairlines, and the
// side that closes them, heavy. Coordinates in a unit square, y downwards.
var (
	corner = [3]point{{0.17, 0.68}, {0.40, 0.19}, {0.85, 0.50}} // tail of F₁, its head, head of F₂
	strips = []strip{
		{corner[0], corner[1], 0.045, 0.13, thin},
		{corner[1], corner[2], 0.045, 0.13, thin},
		{corner[0], corner[2], 0.105, 0.24, heavy},
	}
	ground = color.NRGBA{R: 0x0d, G: 0x57, B: 0x62, A: 0xff} // harbour water
	thin   = color.NRGBA{R: 0xe9, G: 0xf1, B: 0xec, A: 0xff}
	heavy  = color.NRGBA{R: 0xff, G: 0xb4, B: 0x80, A: 0xff}
)

// icon is one picture of the mark on its ground.
type icon struct {
	name     string
	size     int  // pixels, wide and high
	maskable bool // the launcher cuts its own shape: full ground, mark within the inner 80 %
}

var icons = []icon{
	{"icon-180.png", 180, true},
	{"icon-192.png", 192, false},
	{"icon-512.png", 512, false},
	{"icon-maskable-512.png", 512, true},
}

type point struct{ x, y float64 }

// strip is a line of the mark with its arrowhead of the given length.
type strip struct {
	from, to   point
	width, arm float64
	color      color.NRGBA
}

// head is the arrowhead (tip first) and where the line ends inside it.
func (s strip) head() (triangle [3]point, end point) {
	l := math.Hypot(s.to.x-s.from.x, s.to.y-s.from.y)
	u := point{(s.to.x - s.from.x) / l, (s.to.y - s.from.y) / l}
	back := point{s.to.x - u.x*s.arm, s.to.y - u.y*s.arm}
	half := s.arm * 0.42
	end = point{s.to.x - u.x*s.arm*0.9, s.to.y - u.y*s.arm*0.9}
	return [3]point{s.to, {back.x - u.y*half, back.y + u.x*half}, {back.x + u.y*half, back.y - u.x*half}}, end
}

// covers reports whether the strip covers p.
func (s strip) covers(p point) bool {
	t, end := s.head()
	if side(t[0], t[1], p) >= 0 && side(t[1], t[2], p) >= 0 && side(t[2], t[0], p) >= 0 ||
		side(t[0], t[1], p) <= 0 && side(t[1], t[2], p) <= 0 && side(t[2], t[0], p) <= 0 {
		return true
	}
	d := point{end.x - s.from.x, end.y - s.from.y}
	along := ((p.x-s.from.x)*d.x + (p.y-s.from.y)*d.y) / (d.x*d.x + d.y*d.y)
	along = math.Max(0, math.Min(1, along))
	return math.Hypot(p.x-s.from.x-along*d.x, p.y-s.from.y-along*d.y) <= s.width/2
}

func side(a, b, p point) float64 { return (b.x-a.x)*(p.y-a.y) - (b.y-a.y)*(p.x-a.x) }

// png is the icon as a file.
func (i icon) png() ([]byte, error) {
	if done, ok := drawn.Load(i); ok {
		return done.([]byte), nil
	}
	img := image.NewNRGBA(image.Rect(0, 0, i.size, i.size))
	for y := range i.size {
		for x := range i.size {
			img.SetNRGBA(x, y, i.pixel(x, y))
		}
	}
	var out bytes.Buffer
	encoder := png.Encoder{CompressionLevel: png.BestCompression}
	if err := encoder.Encode(&out, img); err != nil {
		return nil, err
	}
	drawn.Store(i, out.Bytes())
	return out.Bytes(), nil
}

// drawn keeps the icons of this process: they are always the same, and take
// longer than the rest of a folder.
var drawn sync.Map

// pixel is the mean of samples over one pixel.
func (i icon) pixel(x, y int) color.NRGBA {
	const along = 4 // samples along each side
	var r, g, b, n int
	for k := range along * along {
		p := point{(float64(x) + (float64(k%along)+0.5)/along) / float64(i.size), (float64(y) + (float64(k/along)+0.5)/along) / float64(i.size)}
		if c, ok := i.sample(p); ok {
			r, g, b, n = r+int(c.R), g+int(c.G), b+int(c.B), n+1
		}
	}
	if n == 0 {
		return color.NRGBA{}
	}
	return color.NRGBA{R: uint8(r / n), G: uint8(g / n), B: uint8(b / n), A: uint8(255 * n / (along * along))}
}

// sample is the colour at p; none outside the rounded corners.
func (i icon) sample(p point) (color.NRGBA, bool) {
	const radius = 0.16
	if i.maskable {
		p = point{0.5 + (p.x-0.5)/0.8, 0.5 + (p.y-0.5)/0.8}
	} else if dx, dy := math.Abs(p.x-0.5)-0.5+radius, math.Abs(p.y-0.5)-0.5+radius; dx > 0 && dy > 0 && math.Hypot(dx, dy) > radius {
		return color.NRGBA{}, false
	}
	c := ground
	for _, s := range strips {
		if s.covers(p) {
			c = s.color
		}
	}
	return c, true
}

// iconSVG is the same drawing as a file of its own.
func iconSVG() []byte {
	var b strings.Builder
	b.WriteString(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100"><rect width="100" height="100" rx="16" fill="` + hexColor(ground) + `"/>`)
	for _, s := range strips {
		b.WriteString(s.svg(`stroke="`+hexColor(s.color)+`"`, `fill="`+hexColor(s.color)+`"`))
	}
	b.WriteString("</svg>\n")
	return []byte(b.String())
}

// markSVG is the drawing for use inside the page, in the colours of its text.
func markSVG() string {
	var b strings.Builder
	b.WriteString(`<svg viewBox="8 8 86 70" aria-hidden="true">`)
	for _, s := range strips {
		class := "thin"
		if s.color == heavy {
			class = "heavy"
		}
		b.WriteString(`<g class="` + class + `">` + s.svg(`stroke="currentColor"`, `fill="currentColor"`) + `</g>`)
	}
	b.WriteString("</svg>")
	return b.String()
}

func (s strip) svg(stroke, fill string) string {
	t, end := s.head()
	return `<path d="M` + s.from.svg() + "L" + end.svg() + `" stroke-width="` + num(s.width) + `" stroke-linecap="round" ` + stroke + `/>` +
		`<path d="M` + t[0].svg() + "L" + t[1].svg() + "L" + t[2].svg() + `Z" ` + fill + `/>`
}

func (p point) svg() string { return num(p.x) + " " + num(p.y) }

// num is a length of the unit square in hundredths, to two decimals.
func num(v float64) string { return strconv.FormatFloat(math.Round(v*1e4)/100, 'f', -1, 64) }

func hexColor(c color.NRGBA) string {
	const digits = "0123456789abcdef"
	return "#" + string([]byte{digits[c.R>>4], digits[c.R&15], digits[c.G>>4], digits[c.G&15], digits[c.B>>4], digits[c.B&15]})
}
