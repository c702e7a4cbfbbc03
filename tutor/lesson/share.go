package lesson

// How often ways are taken (judgement).
const (
	shareTaken = 1.0 // of a route that a worked solution takes, against
	ShareOther = 0.4 // that of another
)

// Takes tells whether a worked solution takes route j of q, or one like it.
func (l *Lesson) Takes(q *Quantity, j int) bool {
	r := &q.Routes[j]
	taken := r.Principle == q.Routes[0].Principle
	for _, way := range l.Ways {
		for _, step := range way.Steps {
			taken = taken || step.Quantity == q.Name && step.Route == r.ID
		}
	}
	return taken
}

// Share is how often a learner takes route j of q: its share among all.
func (l *Lesson) Share(q *Quantity, j int) float64 {
	of := func(j int) float64 {
		if l.Takes(q, j) {
			return shareTaken
		}
		return ShareOther
	}
	sum := 0.0
	for k := range q.Routes {
		sum += of(k)
	}
	return of(j) / sum
}
