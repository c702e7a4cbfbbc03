// Package export writes problems and sets for other places: worked solutions
// in Markdown with their figures, and items in QTI 3 (1EdTech's Question and
// Test Interoperability, version 3.0) for a learning platform.
//
// Native only: nothing of it is in the engine.
package export
