// Package export writes problems and sets for other places: worked solutions
// in Markdown with their figures, and items in QTI 3 (1EdTech's Question and
// Test Interoperability, version 3.0) for a learning platform.
//
//	files, err := export.Markdown("week3", variant) // week3.md and its figures
//	packed, err := export.QTI(variant)              // a package, zipped
//
// Items ask for the answers alone, and none knows what was entered in another:
// carried values and hints are the page's. Native only: nothing of it is in the
// engine.
package export
