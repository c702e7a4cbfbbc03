//go:build !shipped

package publish

// shipped is the engine inside the command; there is none unless make install
// built it.
func shipped() (Built, bool) { return Built{}, false }
