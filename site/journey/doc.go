// Package journey walks through the published page in headless Chromium, as a
// learner would: on a phone's screen, offline, after a crash, in two tabs.
// It has tests only. harness_test.go has the means; a journey reads like
//
//	p := visit(t, newSite(t))
//	p.enter("R", "682.6 N")
//	p.offline()
//	p.reload()
//	p.await("the entry is back", `document.querySelectorAll("[data-verdict]").length === 1`)
//
// Every page fails its test on an error in the console, an uncaught
// exception, or a request to any other host. CHROMIUM names the browser when it is not on
// the path; SHOTS names a folder for screenshots, which are not taken otherwise.
package journey
