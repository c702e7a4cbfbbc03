package slips

// WithExample lists the rows that have an example.
func WithExample() []string {
	var ids []string
	for id := range examples {
		ids = append(ids, id)
	}
	return ids
}
