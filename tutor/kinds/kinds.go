package kinds

import "closingside/tutor/lesson"

// All lists the kinds of problem in teaching order.
var All = lesson.Kinds{&Components, &TwoForces, &ConcurrentForces, &ObliqueComponents, &MissingForce, &ParticleEquilibrium}
