// Package sheet makes what is printed: worksheets and their keys, one HTML
// document each with everything inside. A worksheet has for every problem its
// statement, figure and a blank for each value a solution meets; a key has the
// answers, the worked solutions and the values that mistakes give.
//
//	v, err := set.Variant("1042")
//	page, err := sheet.Worksheets(set.Title, []sheet.Copy{{ID: "1042", Variant: v}}, nil)
//	key, err := sheet.Key(set.Title, sheet.Copy{Variant: v}, nil)
//
// It lays out for a browser to print, and makes no PDF. Native only: nothing of it
// is in the engine.
package sheet
