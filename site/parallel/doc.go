// Package parallel makes many things alike on every processor there is.
//
//	variants, faults := parallel.Each(len(ids), func(i int) (*sets.Variant, error) {
//		return set.Variant(ids[i])
//	}, nil)
//
// All are made, whatever fails; nothing stops it on the way. Native only: nothing
// of it is in the engine, which has one processor.
package parallel
