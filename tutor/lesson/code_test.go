package lesson_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
	"closingside/tutor/text"
)

func TestCodeComesBack(t *testing.T) {
	for _, k := range kinds.All {
		for _, p := range append(k.BankProblems(), drawn(t, k)) {
			l, err := opened(p.Code())
			require.NoError(t, err, p.Code())
			assert.Equal(t, p.Story, l.Problem.Story)
			assert.Equal(t, p.Code(), l.Problem.Code())
		}
	}
}

func TestABrokenCodeIsRefused(t *testing.T) {
	good := kinds.TwoForces.BankProblems()[0].Code()
	for _, bad := range []string{"", "x", good[:len(good)-1], good[:20], "2" + good[1:], "1!none!!" + lesson.Checksum("1!none!")} {
		_, err := opened(bad)
		assert.Error(t, err, bad)
	}
}

// A whole code that holds what is not known here was made by another version: it is
// not spoken of as a file's key.
func TestACodeOfAnotherVersionIsToldAsSuch(t *testing.T) {
	const forces = "1!two-forces!!forces:P;340_N;25_deg!"
	for _, body := range []string{"0" + forces[1:] + "forces:Q;610_N;118_deg", "1!trusses!!bars:P;340_N", forces + "loads:Q;610_N;118_deg", forces + "forces:Q;610_N;118_deg!check:z9"} {
		_, err := opened(body + "!" + lesson.Checksum(body))
		assert.EqualError(t, err, text.Say("code.version"), body)
	}
}

func FuzzDecode(f *testing.F) {
	for _, p := range kinds.TwoForces.BankProblems() {
		f.Add(p.Code())
	}
	f.Add("1!two-forces!~zz!forces:;;;!0000")
	f.Fuzz(func(t *testing.T, code string) {
		for _, c := range []string{code, code + "!" + lesson.Checksum(code)} {
			if l, err := opened(c); err == nil {
				_, again := opened(l.Problem.Code())
				require.NoError(t, again)
			}
		}
	})
}
