// Package html builds fragments of a page as typed values and renders them.
// There is one way to put text into a page, and so one escaping function.
//
//	html.El("p", html.ID("answer"), html.Class("verdict"), html.Text("R = 682.6 N"))
//
// renders as <p id="answer" class="verdict">R = 682.6 N</p>.
//
// What comes out is always well formed: names are checked, an attribute
// occurs once, void elements have no content, addresses with a scheme that
// could run a program are left out. A wrong name is a mistake of the caller
// and panics; data never does. The package does not check which element may
// stand inside which: the Nu HTML checker does that on whole pages.
package html
