package tutor

// right is an entry for q that is right: the value to so many digits, or the
// equation.
func (l *Lesson) right(q *Quantity, d Digits) string {
	if q.Equation {
		return l.Text(q.Routes[0].Tree) + " = 0"
	}
	return l.Show(q, q.True, d)
}
