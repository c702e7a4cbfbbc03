package text

// reader holds what is said when an entry cannot be read: one sentence each,
// what is wrong and what would do.
var reader = map[string]string{}
