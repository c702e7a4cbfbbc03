package figure

import (
	"testing"

	"closingside/statics"
	"closingside/tutor/text"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func strict(t *testing.T) {
	was := text.Strict
	text.Strict = true
	t.Cleanup(func() { text.Strict = was })
}

func TestSpeakDirection(t *testing.T) {
	strict(t)
	for _, c := range []struct {
		ref, turn float64
		want      string
	}{
		{0, 25, "25 degrees above the positive x axis"},
		{0, -25, "25 degrees below the positive x axis"},
		{0, 1, "1 degree above the positive x axis"},
		{0, 0, "along the positive x axis"},
		{0, 90, "along the positive y axis"},
		{0, 360, "along the positive x axis"},
		{0, -180, "along the negative x axis"},
		{0, 118, "118 degrees counter-clockwise from the positive x axis, up and to the left"},
		{0, -118, "118 degrees clockwise from the positive x axis, down and to the left"},
		{0, 478, "118 degrees counter-clockwise from the positive x axis, up and to the left"},
		{0, 300.25, "300.25 degrees counter-clockwise from the positive x axis, down and to the right"},
		{90, 20, "20 degrees from the positive y axis, towards the negative x axis"},
		{90, -20, "20 degrees from the positive y axis, towards the positive x axis"},
		{180, 30, "30 degrees below the negative x axis"},
		{180, -30, "30 degrees above the negative x axis"},
		{-90, 15, "15 degrees from the negative y axis, towards the positive x axis"},
		{270, -15, "15 degrees from the negative y axis, towards the negative x axis"},
		{30, 20, "20 degrees counter-clockwise from the direction 30 degrees counter-clockwise of the positive x axis, up and to the right"},
	} {
		t.Run(c.want, func(t *testing.T) {
			assert.Equal(t, c.want, speakDirection(deg(c.ref), deg(c.turn)))
		})
	}
}

func TestFiguresInWords(t *testing.T) {
	strict(t)
	p := tugs()
	p.First.Label = p.First.Label.Say("P, 340 newtons")
	p.Second.Label = p.Second.Label.Say("Q, 610 newtons")
	p.AtJoint = p.AtJoint.Say("gamma, 87 degrees")
	p.AtTail, p.AtHead, p.Direction = p.AtTail.Say("beta"), p.AtHead.Say("alpha"), p.Direction.Say("theta")
	hidden := p.Second
	hidden.Hidden = true
	sloped := Force{Vec: statics.Polar(100, deg(143.1301)), Label: Symbol("T", ""), Rise: Plain("3"), Run: Plain("4")}
	thrust := Force{Vec: statics.Polar(100, deg(150)), Label: Symbol("S", ""), Push: true}
	closed := []Force{{Vec: statics.Polar(1, 0), Label: Symbol("A", "")}, {Vec: statics.Polar(1, deg(120)), Label: Symbol("B", "")},
		{Vec: statics.Polar(1, deg(240)), Label: Symbol("C", "")}}
	for _, c := range []struct {
		name  string
		scene Scene
		want  string
	}{
		{"given", Given(p.First, p.Second), "Two forces act at one point. P, 340 newtons, points 25 degrees above the positive x axis. " +
			"Q, 610 newtons, points 118 degrees counter-clockwise from the positive x axis, up and to the left."},
		{"a direction not known", Given(p.First, hidden), "Two forces act at one point. P, 340 newtons, points 25 degrees above the positive x axis. " +
			"Q, 610 newtons. The direction of Q is not known yet."},
		{"triangle", HeadToTail(p), "P, 340 newtons, points 25 degrees above the positive x axis. " +
			"Q, 610 newtons, starts at the head of P and points 118 degrees counter-clockwise from the positive x axis, up and to the left. " +
			"R, the resultant, runs from the tail of P to the head of Q. It points up and to the right. " +
			"theta is the angle from the positive x axis to R. beta is the angle of the triangle between P and R. " +
			"gamma, 87 degrees, is the angle of the triangle between P and Q. alpha is the angle of the triangle between Q and R."},
		{"components", Rectangular(p.Second, Symbol("Q", "x"), Symbol("Q", "y")), "Q, 610 newtons, points 118 degrees counter-clockwise from the positive x axis, up and to the left. " +
			"The component Qx lies along the x axis and points to the left. The component Qy lies along the y axis and points straight up. Dashed lines join their heads to the head of Q."},
		{"slope and thrust", FreeBody(sloped, thrust), "A free-body diagram. Two forces act on the particle. " +
			"T points along a slope that goes 4 across for every 3 of height, up and to the left. " +
			"S pushes on the point, 150 degrees counter-clockwise from the positive x axis, up and to the left."},
		{"closed polygon", ForcePolygon(closed, Label{}), "A points along the positive x axis. " +
			"B starts at the head of A and points 120 degrees counter-clockwise from the positive x axis, up and to the left. " +
			"C starts at the head of B and points 120 degrees clockwise from the positive x axis, down and to the left. " +
			"The head of C meets the tail of A: the polygon closes."},
		{"space", Space(Part{Kind: Cable, Direction: deg(140), Length: 3, Label: Symbol("T", "1"), Ref: deg(180), Turn: deg(-40), Angle: Plain("40°")},
			Part{Kind: Weight, Length: 1, Label: Symbol("W", "").Is("800 N")}), "A particle is held by the following parts. " +
			"T1: a cable that runs 40 degrees above the negative x axis from the particle to a support. " +
			"W = 800 N: a weight that hangs straight down from the particle."},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want, c.scene.Desc)
			assert.NotEmpty(t, c.scene.Title)
		})
	}
}

// TestWordsDoNotGiveUnknownsAway: only what a label says is said of R.
func TestWordsDoNotGiveUnknownsAway(t *testing.T) {
	strict(t)
	p := tugs()
	for _, s := range []Scene{Parallelogram(p), HeadToTail(p)} {
		assert.NotContains(t, s.Desc, "682", "the resultant's size is for the learner to find")
		assert.NotContains(t, s.Desc, "88", "and so is its direction")
	}
	require.Panics(t, func() { text.Say("figure.no-such-key") })
}
