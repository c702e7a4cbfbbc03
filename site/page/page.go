// Package page holds the files of the page that are the same for everyone:
// the shell, its style, its scripts. site/publish fills in names and
// sentences. Native only: nothing of it is in the engine.
package page

import "embed"

// Files holds index.html, page.css, figure.css, sketch.css, early.js, log.js,
// loader.js, copy.js, sketch.js and sw.js.
//
//go:embed index.html page.css figure.css sketch.css early.js log.js loader.js copy.js sketch.js sw.js
var Files embed.FS
