package tutor

import "math/bits"

// set is a set of a lesson's quantities, by index. A lesson has at most 64.
type set uint64

func (s set) has(i int) bool { return s&(1<<i) != 0 }
func (s set) with(i int) set { return s | 1<<i }

// first is the least member of s, which has some.
func (s set) first() int { return bits.TrailingZeros64(uint64(s)) }

func (s set) size() int { return bits.OnesCount64(uint64(s)) }

// each visits the members of s in order.
func (s set) each(visit func(i int)) {
	for ; s != 0; s &= s - 1 {
		visit(s.first())
	}
}
