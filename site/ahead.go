package site

import "closingside/site/html"

// ahead makes one piece of what the next check will look in, and tells whether
// there is more to make. The page asks while nobody types.
func (s *session) ahead() html.Nodes {
	d, value := s.desks[s.current], "made"
	if s.warmed != nil && s.warmed != d {
		s.warmed.work.Cool()
	}
	if s.warmed = d; d != nil {
		s.turnTo(d)
		pieces := 1
		if !d.work.Warm(func() bool { pieces--; return pieces < 0 }) {
			value = "more"
		}
	}
	return html.Nodes{html.El("data", html.A("id", "ahead"), html.A("value", value))}
}
