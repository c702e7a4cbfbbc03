// Package text holds every sentence a learner or an instructor reads, by key.
//
// A sentence may have named holes, filled by pairs of name and value:
//
//	text.Say("entry.unknown-name", "name", "Q")
//
// The sentences live in maps, which are joined into one: areas lists those of
// the parts of the product, and each kind of problem adds its own from its own
// file. Translating the product is translating those files. Keys begin with a
// word for the area, or with the kind's name, and a dot.
//
// The package does no grammar: no plurals, no agreement. Sentences are written
// so that what fills a hole need not be inflected.
package text
