package sets

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
)

// manySets are sets that differ in everything a code carries.
func manySets(t testing.TB) []*Set {
	settings := lesson.Branch(lesson.CheckKey, lesson.Leaf("digits", "4"), lesson.Leaf("hints", "off"))
	quadrants := lesson.Branch("", lesson.Leaf("generate", "two-forces"), lesson.Leaf("count", "2"), lesson.Leaf("quadrants", "2, 4"), lesson.Leaf("right-angles", "allowed"))
	relaxed := lesson.Branch("", lesson.Leaf("generate", "two-forces"), lesson.Branch(lesson.CheckKey, lesson.Leaf("digits", "3"), lesson.Leaf("working-digits", "4"), lesson.Leaf("hints", "on")))
	kept := lesson.Branch("", append([]lesson.Source{lesson.Branch(lesson.CheckKey, lesson.Leaf("hints", "delayed"))}, kinds.TwoForces.Bank[0].Kids...)...)
	odd := lesson.Branch("", lesson.Leaf("title", "a|b!c;d:e f~g_h#i%é+j"), lesson.Leaf("version", "2|x"), lesson.Branch("problems", relaxed))
	return []*Set{
		readSet(t, weekThree()),
		readSet(t, weekThree(lesson.Leaf("numbers", "own"), lesson.Leaf("order", "shuffled"), lesson.Leaf("carried", "half"), settings)),
		readSet(t, lesson.Branch("", lesson.Leaf("title", "T"), lesson.Leaf("carried", "none"), settings, lesson.Branch("problems", quadrants, relaxed, kept))),
		readSet(t, odd),
	}
}

func TestASetsCodeComesBack(t *testing.T) {
	for _, s := range manySets(t) {
		code := s.Code("S 1042")
		t.Run(code, func(t *testing.T) {
			back, student, err := Decode(code)
			require.NoError(t, err)
			assert.Equal(t, code, back.Code(student))
			assert.Equal(t, s, back)
			want, got := variantOf(t, s, "S 1042"), variantOf(t, back, student)
			assert.Equal(t, codes(want), codes(got))
			assert.Equal(t, want.ID, got.ID)
		})
	}
}

func TestABrokenSetCodeIsRefused(t *testing.T) {
	good := readSet(t, weekThree()).Code("")
	checked := func(body string) string { return body + "+" + lesson.Checksum(body) }
	drawn := func(rest string) string { return checked(codeVersion + kinds.TwoForces.Rule + rest) }
	for name, code := range map[string]string{
		"empty": "", "mark alone": "s", "cut short": good[:len(good)-1], "cut in half": good[:len(good)/2],
		"another version": "s9" + good[2:], "too long": checked("s1+" + strings.Repeat("x", MaxCode)),
		"another rule": checked("s1zzzz+T+1+++d1;two-forces+"),
		"no rule":      checked("s1+T+1+++d1;two-forces+"),
		"no title":     checked("s1++1+++d1;two-forces+"),
		"no problems":  drawn("+T+1+++"),
		"no such kind": drawn("+T+1+++d1;ten-forces+"),
		"a choice":     drawn("+T+1++z+d1;two-forces+"),
		"a part":       drawn("+T+1+++z1;two-forces+"),
		"no part":      drawn("+T+1++++"),
		"no marks":     drawn("+T+1+++d;two-forces;1;0+"),
		"too many":     drawn("+T+1+++d1;two-forces;40;0+d1;two-forces;40;0+"),
		"a problem":    drawn("+T+1+++p1;1!two-forces!!0000+"),
		"settings":     drawn("+T+1++:zz9+d1;two-forces;1;0+"),
		"student":      drawn("+T+1++o+d1;two-forces;1;0+" + strings.Repeat("9", 80)),
	} {
		t.Run(name, func(t *testing.T) {
			_, _, err := Decode(code)
			require.Error(t, err)
			assert.Regexp(t, `[.)]$`, err.Error(), "a sentence")
		})
	}
}

func FuzzDecode(f *testing.F) {
	for _, s := range manySets(f) {
		f.Add(s.Code("1042"))
	}
	f.Add(codeVersion + kinds.TwoForces.Rule + "+T+1++os:d4+d1;two-forces;1;0+~zz")
	f.Fuzz(func(t *testing.T, code string) {
		for _, c := range []string{code, code + "+" + lesson.Checksum(code)} {
			s, student, err := Decode(c)
			if err != nil {
				continue
			}
			again, who, err := Decode(s.Code(student))
			require.NoError(t, err)
			require.Equal(t, s.Code(student), again.Code(who))
		}
	})
}
