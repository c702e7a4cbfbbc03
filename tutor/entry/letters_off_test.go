package entry

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestLettersOff(t *testing.T) {
	for _, r := range []struct {
		a, b string
		want int
	}{{"", "", 0}, {"gamma", "gamma", 0}, {"gama", "gamma", 1}, {"Rz", "Rx", 1}, {"", "abc", 3}, {"thêta", "theta", 1},
		{"alpha", "beta", 4}, {"gmama", "gamma", 1}, {"tehta", "theta", 1}, {"ahpla", "alpha", 2}} {
		assert.Equal(t, r.want, LettersOff(r.a, r.b), "%s %s", r.a, r.b)
		assert.Equal(t, r.want, LettersOff(r.b, r.a), "%s %s", r.b, r.a)
	}
}
