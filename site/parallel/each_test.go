package parallel

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestEachKeepsTheOrder(t *testing.T) {
	odd := errors.New("odd")
	var told []int
	made, faults := Each(40, func(i int) (int, error) {
		if i%2 == 1 {
			return 0, odd
		}
		return i * i, nil
	}, func(done, all int) {
		assert.Equal(t, 40, all)
		told = append(told, done)
	})
	assert.Len(t, made, 40)
	for i := range made {
		if i%2 == 1 {
			assert.Equal(t, odd, faults[i])
			continue
		}
		assert.NoError(t, faults[i])
		assert.Equal(t, i*i, made[i])
	}
	assert.Len(t, told, 40)
	assert.IsIncreasing(t, told)
}

func TestEachOfNone(t *testing.T) {
	made, faults := Each(0, func(int) (int, error) { panic("nothing is to be made") }, nil)
	assert.Empty(t, made)
	assert.Empty(t, faults)
}
