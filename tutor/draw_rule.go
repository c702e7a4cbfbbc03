package tutor

// drawRule names how problems are drawn: another name, other problems for the
// same seed. It is a hash of what a few hundred seeds draw, and written anew by
// go test ./tutor -run SameEverywhere -update.
const drawRule = "jcq5"
