// Package sketch is the sketch that comes before calculating: the forces laid
// head to tail, the closing side drawn, and what is estimated from it.
//
//	s := sketch.New(l, work)
//	s.Put(sketch.End{Arrow: 1}, sketch.End{Arrow: 0, Head: true}) // Q's tail at P's head
//	s.Close(sketch.End{Arrow: 0}, sketch.End{Arrow: 1, Head: true})
//	s.Estimate(map[string]string{"R": "700", "theta": "90"})
//
// An act is taken as an unsteady hand means it (arrange.go, course.go), and judged
// by the corners it joins (judge.go): the other diagonal and a closing side drawn the
// wrong way round are named. The package knows the work it belongs to only as a
// [Reader] of estimates; it draws nothing, see [Sketch.Scene].
package sketch
