package main

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What is asked of a direction is said, and shown beside its value.
func TestSolveTellsADirectionAsAsked(t *testing.T) {
	file := head + first + second
	rows := []struct{ direction, asks, told, ends string }{
		{"from P", "counter-clockwise from P", "as asked: 63.173° from P", "88.17°, that is 63.17° from P"},
		{"bearing", "as a bearing", "as asked: N 1.827° E", "88.17°, that is N 1.83° E"},
		{"from the vertical", "from the vertical", "as asked: 1.827° right of +y", "88.17°, that is 1.83° right of +y"},
		{"acute", "with its quadrant", "as asked: 88.173° above +x", "88.17°, that is 88.17° above +x"},
	}
	for _, r := range rows {
		t.Run(r.direction, func(t *testing.T) {
			out, errs, status := tell("", "solve", writeFile(t, "p.yaml", file+"check: {direction: "+r.direction+", method: triangle}\n"))
			require.Zero(t, status, errs)
			assert.Contains(t, out, "Asked\n")
			assert.Contains(t, out, r.asks)
			assert.Contains(t, out, r.told)
			assert.Contains(t, out, r.ends)
			assert.NotContains(t, out, "By rectangular components")
		})
	}
	out, _, _ := tell("", "solve", writeFile(t, "p.yaml", file))
	assert.NotContains(t, out, "Asked\n")
}
