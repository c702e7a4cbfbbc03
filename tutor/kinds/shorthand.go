package kinds

import (
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// Declarations written short, so that they read as tables: routes, mistakes, ways
// and their steps.

func route(id, principle string, m lesson.Method, tree expr.Node) lesson.Route {
	return lesson.Route{ID: id, Principle: principle, Method: m, Tree: tree}
}

func mistake(slip string, tree expr.Node) lesson.Mistake {
	return lesson.Mistake{Slip: slip, Tree: tree}
}

// mistakeAside is a mistake that no draw is refused for.
func mistakeAside(slip string, tree expr.Node) lesson.Mistake {
	return lesson.Mistake{Slip: slip, Tree: tree, Aside: true}
}

// takenForOther are the mistakes of a formula in which, at one place, one of two
// values stands for the other; no draw is refused for them.
func takenForOther(tree, a, b expr.Node) []lesson.Mistake {
	var all []lesson.Mistake
	expr.Walk(tree, func(site int, n expr.Node) {
		switch n {
		case a:
			all = append(all, mistakeAside("other-force", expr.Replace(tree, site, b)))
		case b:
			all = append(all, mistakeAside("other-force", expr.Replace(tree, site, a)))
		}
	})
	return all
}

func way(m lesson.Method, steps ...lesson.Step) lesson.Way {
	return lesson.Way{Method: m, Steps: steps}
}

func step(quantity, route string) lesson.Step {
	return lesson.Step{Quantity: quantity, Route: route}
}

// componentWay is the worked solution by components: each of the named
// quantities by the route it puts first.
func componentWay(qs []lesson.Quantity, names ...string) lesson.Way {
	way := lesson.Way{Method: lesson.ByComponents}
	for _, name := range names {
		for _, q := range qs {
			if q.Name == name {
				way.Steps = append(way.Steps, step(name, q.Routes[0].ID))
			}
		}
	}
	return way
}

// firstRoutes names the route of steps that take whichever a quantity puts
// first.
func firstRoutes(qs []lesson.Quantity, steps []lesson.Step) []lesson.Step {
	var named []lesson.Step
	for _, s := range steps {
		for _, q := range qs {
			if q.Name == s.Quantity && s.Route == "" {
				s.Route = q.Routes[0].ID
			}
		}
		named = append(named, s)
	}
	return named
}
