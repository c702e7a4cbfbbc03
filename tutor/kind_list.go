package tutor

// All lists the kinds of problem in teaching order.
var All = Kinds{&components, &twoForces, &concurrentForces, &obliqueComponents, &missingForce, &particleEquilibrium}
