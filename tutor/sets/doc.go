// Package sets deals problems to students: a set lists problems and wishes for
// problems, and each student gets the same ones or a variant drawn by an id.
//
//	s, err := sets.Read(source)
//	v, err := s.Variant("1042")
//
// A set fits into the fragment of an address (code.go), so a static page can
// carry it. The package keeps no marks and knows no names: what a student did
// is in that student's log.
package sets
