package text

// common holds what every part of the product says.
var common = map[string]string{
	"list.last": "{before} and {last}",

	"common.safety": "For learning. Not for lifting, rigging or structural decisions: those follow local codes and a licensed engineer.",
}
