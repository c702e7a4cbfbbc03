package text

// common holds what every part of the product says.
var common = map[string]string{
	"common.safety": "For learning. Not for lifting, rigging or structural decisions: those follow local codes and a licensed engineer.",
}
