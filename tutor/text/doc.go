// Package text holds every sentence a learner or an instructor reads, by key.
//
// A sentence may have named holes, filled by pairs of name and value:
//
//	text.Say("entry.unknown-name", "name", "Q")
//
// The sentences live in one map a Go file (one file for each part of the
// product, one for each kind of problem) and the maps are joined in areas, so
// translating the product is translating those files. A new map must be added
// to areas; keys begin with the area's name and a dot.
//
// The package does no grammar: no plurals, no agreement. Sentences are written
// so that what fills a hole need not be inflected.
package text
