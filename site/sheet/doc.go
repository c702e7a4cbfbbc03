// Package sheet makes what is printed: worksheets and their keys, one HTML
// document each with everything inside. A worksheet has for every problem its
// statement, figure and a blank for each value a solution meets; a key has the
// answers, the worked solutions and the values that mistakes give.
//
// Native only: nothing of it is in the engine.
package sheet
