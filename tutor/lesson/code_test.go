package lesson_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"closingside/tutor/kinds"
	"closingside/tutor/lesson"
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
