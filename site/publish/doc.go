// Package publish builds the folder that is put on a static web host.
//
//	engine, err := publish.Engine(ctx, ".")
//	folder, err := publish.Build(engine)
//	err = folder.Write("build/site")
//
// Every file but index.html and sw.js has the hash of its content in its
// name; the service worker's version is the hash of everything. Links are
// relative, so the folder works under any address. Beside each text and the
// engine lie precompressed copies (.gz, .br), and files.txt lists what there
// is. Native only, and never part of the engine.
//
// Building the engine needs the Go toolchain and this module's source; an
// engine built before can be given instead.
package publish
