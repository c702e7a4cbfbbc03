package kinds

import (
	"closingside/statics/expr"
	"closingside/tutor/lesson"
)

// These write declarations short, as tables.

func route(id, principle string, m lesson.Method, tree expr.Node) lesson.Route {
	return lesson.Route{ID: id, Principle: principle, Method: m, Tree: tree}
}

func mistake(slip string, tree expr.Node) lesson.Mistake {
	return lesson.Mistake{Slip: slip, Tree: tree}
}

func way(m lesson.Method, steps ...lesson.Step) lesson.Way {
	return lesson.Way{Method: m, Steps: steps}
}

func step(quantity, route string) lesson.Step {
	return lesson.Step{Quantity: quantity, Route: route}
}
