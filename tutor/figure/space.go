package figure

import (
	"math"

	"closingside/statics"
	"closingside/tutor/text"

	"gonum.org/v1/gonum/spatial/r2"
)

// Part is one of the things that hold a particle, as the situation shows them
// before its free-body diagram is drawn.
type Part struct {
	Kind      MemberKind // Cable, Strut, Spring or Weight; Pulley is a cable over a pulley to a weight
	Direction statics.Angle
	Length    float64 // of the part; lengths need not be to the scale of any force
	Label     Label
	Hangs     Label // of a Pulley: the weight at the other end
	Name      string

	Ref, Turn statics.Angle // the angle the direction is given by, as in Force
	Angle     Label
	Rise, Run Label // the numbers of a slope triangle, where that gives the direction
	Force     bool  // no thing but a force that acts at the particle
}

// dropPart is how far a weight hangs below its pulley, in lengths of its cable.
const dropPart = 0.5

// Space shows a particle and what holds it. Supports stand where parts end:
// overhead or below for steep parts, at the side for flat ones.
func Space(parts ...Part) Scene {
	s := Scene{Dots: []Dot{{}}}
	var w words
	w.say("figure.space")
	for i, p := range parts {
		w.part(p)
		step := i + 1
		if p.Kind == Weight {
			p.Direction = -90 * statics.Degree
		}
		end := statics.Polar(p.Length, p.Direction)
		if !p.Rise.Empty() || !p.Run.Empty() {
			s.Slopes = append(s.Slopes, Slope{To: end, RunLabel: p.Run, RiseLabel: p.Rise, Step: step})
		}
		if p.Force {
			s.Arrows = append(s.Arrows, Arrow{To: end, Class: ClassForce, Label: p.Label, Step: step, Name: p.Name})
			s.angleOf(p, step)
			continue
		}
		s.Members = append(s.Members, Member{Kind: p.Kind, To: end, Label: p.Label, Step: step, Name: p.Name,
			Drop: dropPart * p.Length, Hangs: p.Hangs})
		if p.Kind != Pulley {
			s.Members[len(s.Members)-1].Drop = 0
		}
		if p.Kind == Cable || p.Kind == Strut || p.Kind == Spring {
			s.Members = append(s.Members, Member{Kind: Support, From: end, To: r2.Add(end, facing(end)), Step: step})
		}
		s.angleOf(p, step)
	}
	s.Title, s.Desc = text.Say("figure.title.space"), w.String()
	return s
}

// angleOf adds the angle a part's direction is given by.
func (s *Scene) angleOf(p Part, step int) {
	if !p.Angle.Empty() {
		s.Lines = append(s.Lines, reference(p, step))
		s.Arcs = append(s.Arcs, Arc{From: p.Ref, Turn: p.Turn, Label: p.Angle, Step: step, Name: p.Name})
	}
}

// reference is the construction line a part's angle is measured from.
func reference(p Part, step int) Line {
	return Line{To: statics.Polar(0.5*p.Length, p.Ref), Class: ClassConstruction, Step: step}
}

// facing is the way a support at v looks: towards the particle, level or
// upright.
func facing(v r2.Vec) r2.Vec {
	if math.Abs(v.Y) > 0.5*math.Abs(v.X) {
		return r2.Vec{Y: math.Copysign(r2.Norm(v), -v.Y)}
	}
	return r2.Vec{X: math.Copysign(r2.Norm(v), -v.X)}
}

var partKeys = map[MemberKind]string{Cable: "cable", Strut: "strut", Spring: "spring", Weight: "weight", Pulley: "over"}

func (w *words) part(p Part) {
	pairs := []string{"label", p.Label.spoken()}
	if p.Kind != Weight {
		f := Force{Vec: statics.Polar(1, p.Direction), Ref: p.Ref, Turn: p.Turn, Angle: p.Angle, Rise: p.Rise, Run: p.Run}
		pairs = append(pairs, "direction", f.direction())
	}
	if p.Kind == Pulley {
		pairs = append(pairs, "hangs", p.Hangs.spoken())
	}
	key := partKeys[p.Kind]
	if p.Force {
		key = "force"
	}
	*w = append(*w, text.Say("figure.space."+key, pairs...))
}
