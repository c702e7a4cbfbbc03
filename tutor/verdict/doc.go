// Package verdict has the words for what is said of an entry, and nothing else:
// the tutor judges, the sketch does, and the page shows.
//
//	verdict.SlipFound.String() // "slip", in logs and the command's JSON
//
// The sentences that learners read are in package text, under "verdict.".
package verdict
