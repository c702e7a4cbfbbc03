// Package trial measures the tutor on simulated learners.
//
// A learner works a problem as a person does: she chooses a way and, for each
// quantity, a route; she works some steps in the head and writes the others
// down; she rounds as she goes, or doesn't; now and then she makes a slip,
// rounds a value too soon, or writes something that nothing explains; and she
// goes on from what she wrote, right or wrong. She works formulas out herself,
// by package expr: of the tutor she uses the routes of the lesson and the
// rewrites of the catalogue, never the values its diagnosis expects.
//
//	report := trial.Run(trial.Generated(10, 1), trial.DefaultHabits(), trial.Options{Seed: 1, Learners: 10})
//
// What is counted is what the tutor said of each entry against what really
// happened. The rates are those of these learners; real ones are another
// matter. All draws are of integers, so one seed gives the same figures
// however many processors share the work.
//
// It runs natively only; nothing of it is in the engine that the browser loads.
package trial
