package text

// export holds what exported items say.
var export = map[string]string{
	"export.question": "{symbol}, {what}, {asked}:",
	"export.mistake":  "This value comes out when something went wrong: {mistake}. Look at that step again.",
}
