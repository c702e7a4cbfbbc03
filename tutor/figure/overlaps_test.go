package figure

import (
	"maps"
	"math"
	"math/rand/v2"
	"slices"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The checks here do not use the layout's own geometry: ink is sampled every
// half pixel, and arcs are taken apart as SVG's viewers do (SVG 1.1, appendix
// F.6.5).

// sampled calls ink for points along everything drawn but text.
func sampled(d Drawing, ink func(p Point, half float64)) {
	line := func(p, q Point, half float64) {
		n := int(math.Hypot(q.X-p.X, q.Y-p.Y)/0.5) + 1
		for i := 0; i <= n; i++ {
			t := float64(i) / float64(n)
			ink(Point{p.X + t*(q.X-p.X), p.Y + t*(q.Y-p.Y)}, half)
		}
	}
	for _, m := range d.Marks {
		half := m.Class.Weight() / 2
		switch m.Shape {
		case Path:
			for i := 1; i < len(m.Points); i++ {
				line(m.Points[i-1], m.Points[i], half)
			}
		case Polygon, Head:
			if m.Class == ClassArea {
				continue
			}
			for i, p := range m.Points {
				line(p, m.Points[(i+1)%len(m.Points)], half)
			}
		case Circle:
			for a := 0.0; a < 2*math.Pi; a += 0.05 {
				ink(Point{m.Points[0].X + m.Radius*math.Cos(a), m.Points[0].Y + m.Radius*math.Sin(a)}, half)
			}
		case ArcPath:
			for _, p := range svgArc(m) {
				ink(p, half)
			}
		}
	}
}

// svgArc samples an elliptical arc command by SVG 1.1, F.6.5, for a circle.
func svgArc(m Mark) []Point {
	p, q, r := m.Points[0], m.Points[1], m.Radius
	x, y := (p.X-q.X)/2, (p.Y-q.Y)/2
	if half := math.Hypot(x, y); r < half {
		r = half // F.6.6
	}
	k := math.Sqrt(math.Max(0, (r*r-x*x-y*y)/(x*x+y*y)))
	sweep := !m.CCW // SVG's positive angles are clockwise on the page
	if !sweep {     // the arc is never the large one
		k = -k
	}
	cx, cy := k*y+(p.X+q.X)/2, -k*x+(p.Y+q.Y)/2
	from, to := math.Atan2(p.Y-cy, p.X-cx), math.Atan2(q.Y-cy, q.X-cx)
	if sweep && to < from {
		to += 2 * math.Pi
	}
	if !sweep && to > from {
		to -= 2 * math.Pi
	}
	n := int(math.Abs(to-from)*r/0.5) + 1
	pts := make([]Point, n+1)
	for i := range pts {
		a := from + (to-from)*float64(i)/float64(n)
		pts[i] = Point{cx + r*math.Cos(a), cy + r*math.Sin(a)}
	}
	return pts
}

// disturbed counts labels that touch each other, ink or the frame.
func disturbed(d Drawing) int {
	var labels []Mark
	for _, m := range d.Marks {
		if m.Shape == Text {
			labels = append(labels, m)
		}
	}
	bad := make([]bool, len(labels))
	for i, m := range labels {
		b := m.Box
		bad[i] = b.Min.X < 0 || b.Min.Y < 0 || b.Max.X > d.Width || b.Max.Y > d.Height
		for k, o := range labels {
			apart := o.Box.Min.X > b.Max.X || o.Box.Max.X < b.Min.X || o.Box.Min.Y > b.Max.Y || o.Box.Max.Y < b.Min.Y
			bad[i] = bad[i] || k != i && !apart
		}
	}
	sampled(d, func(p Point, half float64) {
		for i := range labels {
			b := labels[i].Box
			dx := math.Max(0, math.Max(b.Min.X-p.X, p.X-b.Max.X))
			dy := math.Max(0, math.Max(b.Min.Y-p.Y, p.Y-b.Max.Y))
			if dx*dx+dy*dy < half*half || dx == 0 && dy == 0 {
				bad[i] = true
			}
		}
	})
	n := 0
	for _, b := range bad {
		if b {
			n++
		}
	}
	return n
}

// inside reports whether all ink lies in the frame.
func inside(d Drawing) bool {
	ok := true
	sampled(d, func(p Point, half float64) {
		ok = ok && p.X-half >= 0 && p.Y-half >= 0 && p.X+half <= d.Width && p.Y+half <= d.Height
	})
	return ok
}

func TestTheCheckSeesOverlaps(t *testing.T) {
	box := Box{Point{10, 10}, Point{40, 30}}
	label := Mark{Shape: Text, Box: box}
	for _, c := range []struct {
		name string
		mark Mark
		want int
	}{
		{"line through", Mark{Shape: Path, Class: ClassAxis, Points: []Point{{0, 20}, {60, 20}}}, 1},
		{"line beside", Mark{Shape: Path, Class: ClassAxis, Points: []Point{{0, 31}, {60, 31}}}, 0},
		{"line's edge", Mark{Shape: Path, Class: ClassForce, Points: []Point{{0, 31}, {60, 31}}}, 1},
		{"label", Mark{Shape: Text, Box: Box{Point{35, 25}, Point{50, 50}}}, 2},
		{"arc through", Mark{Shape: ArcPath, Class: ClassArc, Radius: 40, Points: []Point{{40, 0}, {0, 40}}}, 1},
		{"arc around", Mark{Shape: ArcPath, Class: ClassArc, Radius: 54, Points: []Point{{54, 0}, {0, 54}}}, 0},
		{"frame", Mark{Shape: Text, Box: Box{Point{80, 10}, Point{101, 20}}}, 1},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := Drawing{Width: 100, Height: 100, Marks: []Mark{label, c.mark}}
			assert.Equal(t, c.want, disturbed(d))
			assert.Equal(t, c.want, d.overlaps(), "the layout's own count")
		})
	}
}

// tally counts what layouts had to give up.
type tally struct{ figures, labels, leaders, led, smaller, letters, overlaps, outside int }

func (c *tally) add(d Drawing) {
	c.figures++
	for _, m := range d.Marks {
		if m.Shape == Text {
			c.labels++
		}
	}
	c.leaders += d.Cost.Leaders
	if d.Cost.Leaders > 0 {
		c.led++
	}
	if d.Cost.Stage > 1 {
		c.smaller++
	}
	if d.Cost.Stage > 5 {
		c.letters++
	}
	c.overlaps += max(disturbed(d), d.Cost.Overlaps)
	if !inside(d) {
		c.outside++
	}
}

func (c *tally) log(t *testing.T, name string) {
	share := func(n, of int) string { return strconv.FormatFloat(100*float64(n)/float64(of), 'f', 2, 64) + " %" }
	t.Logf("%-14s %d figures, %d labels: %d overlaps; labels with a leader %s; figures with one %s; drawn smaller %s, with smaller letters %s",
		name, c.figures, c.labels, c.overlaps, share(c.leaders, c.labels), share(c.led, c.figures), share(c.smaller, c.figures), share(c.letters, c.figures))
}

func (c *tally) plus(o tally) {
	c.figures += o.figures
	c.labels += o.labels
	c.leaders += o.leaders
	c.led += o.led
	c.smaller += o.smaller
	c.letters += o.letters
	c.overlaps += o.overlaps
	c.outside += o.outside
}

// TestNoLabelIsDisturbed lays out the figures of many random problems: the
// given forces, one order of the triangle, and one more figure of each.
func TestNoLabelIsDisturbed(t *testing.T) {
	problems, shards := 10000, 4
	if testing.Short() {
		problems = 400
	}
	counts := make([]map[string]*tally, shards)
	t.Run("all", func(t *testing.T) {
		for shard := range shards {
			counts[shard] = map[string]*tally{}
			t.Run(strconv.Itoa(shard), func(t *testing.T) {
				t.Parallel()
				for seed := shard; seed < problems; seed += shards {
					layOut(t, seed, counts[shard])
				}
			})
		}
	})
	total := map[string]*tally{}
	var every tally
	for _, c := range counts {
		for name, part := range c {
			if total[name] == nil {
				total[name] = &tally{}
			}
			total[name].plus(*part)
			every.plus(*part)
		}
	}
	for _, name := range slices.Sorted(maps.Keys(total)) {
		total[name].log(t, name)
	}
	every.log(t, "every figure")
	require.GreaterOrEqual(t, every.figures, 3*problems)
	require.Zero(t, every.overlaps)
	require.Zero(t, every.outside)
	assert.Less(t, 100*every.smaller, every.figures, "drawn smaller too often")
}

func layOut(t *testing.T, seed int, counts map[string]*tally) {
	r := rand.New(rand.NewPCG(uint64(seed), 5))
	scenes := randomScenes(r)
	size := randomSize(r)
	others := []string{"parallelogram", "components", "through", "polygon", "free body", "space", "board", "large board"}
	for _, name := range []string{"given", []string{"triangle", "other order"}[seed%2], others[seed%len(others)]} {
		d := Layout(scenes[name], size)
		if counts[name] == nil {
			counts[name] = &tally{}
		}
		before := *counts[name]
		counts[name].add(d)
		if counts[name].overlaps > before.overlaps || counts[name].outside > before.outside {
			t.Errorf("%s of problem %d, %g by %g: a label is disturbed or ink leaves the frame; cost %+v",
				name, seed, size.Width, size.Height, d.Cost)
		}
	}
}
