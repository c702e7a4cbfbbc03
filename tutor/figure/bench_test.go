package figure

import (
	"testing"

	"closingside/statics"
)

func deg(v float64) statics.Angle { return statics.Angle(v) * statics.Degree }

// tugs is a pair of forces in the usual proportions.
func tugs() Pair {
	return Pair{
		First: Force{Vec: statics.Polar(340, deg(25)), Label: Symbol("P", "").Is("340 N"), Name: "F1",
			Turn: deg(25), Angle: Plain("25°")},
		Second: Force{Vec: statics.Polar(610, deg(118)), Label: Symbol("Q", "").Is("610 N"), Name: "F2",
			Turn: deg(118), Angle: Plain("118°")},
		Resultant: Symbol("R", ""), Direction: Symbol("θ", ""),
		AtTail: Symbol("β", ""), AtJoint: Symbol("γ", "").Is("87°"), AtHead: Symbol("α", ""),
	}
}

func BenchmarkLayout(b *testing.B) {
	p := tugs()
	for _, c := range []struct {
		name  string
		scene Scene
	}{{"given", Given(p.First, p.Second)}, {"parallelogram", Parallelogram(p)}, {"triangle", HeadToTail(p)}} {
		b.Run(c.name, func(b *testing.B) {
			for b.Loop() {
				if d := Layout(c.scene, Size{Width: 360, Height: 300}); d.Cost.Overlaps > 0 {
					b.Fatal("labels overlap")
				}
			}
		})
	}
}
