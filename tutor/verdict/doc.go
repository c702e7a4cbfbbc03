// Package verdict has the words for what is said of an entry, and nothing else:
// the tutor judges, the sketch does, and the page shows.
package verdict
