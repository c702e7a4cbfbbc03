// Package site is what stands between the page and the tutor: it reads a
// request, lets the tutor work, and renders the answer as fragments of HTML.
//
//	reply := site.Handle([]byte("do=enter&quantity=R&entry=682.6+N"))
//
// A request is one line of application/x-www-form-urlencoded, just what a
// form serialises to. The reply is a run of elements, each with an id; the
// page puts each in the place of the element with that id. The page logs every
// request before the engine sees it, and on start sends
//
//	do=start&hash=…&at=…
//	(one line for each request and outcome in the log, oldest first)
//
// to be answered with the whole <main id="main">. Four things in a reply speak to the
// page itself: <data id="log" value="…"> is appended to the log as an outcome;
// an element with id "say" is announced; data-focus="id" says where the focus goes; data-hash="…" sets
// the fragment of the address, so that a reload, a bookmark or the back button finds the same place.
//
// Four requests are not logged: do=read shows how an entry is read so far; do=ahead makes a piece of what
// the next check will look in, and is answered with <data id="ahead" value="more">, or value="made" at the end;
// do=deal draws a few more problems of a set, and is sent as long as an element with id "drawing" is there;
// do=bring&lines=N, followed by the N lines of the log and then by a saved copy of work, is answered with
// <data class="bring" value="…" data-before="…"> for each line of the copy to be put in, before that line of the log
// (counted from 0; at the end where none is named), and with what to say, in an element with id "brought".
//
// Handle keeps the state of one learner in memory and never fails: what it
// cannot read it answers with a sentence. It knows no file, network or clock;
// the time of a request comes with the request (at=, milliseconds).
package site
