package journey

import (
	"context"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"closingside/site/publish"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// What the benchmarks enter: the place of a problem, and a right value on it.
const (
	benchHash     = "" // opens the problem of the barge
	benchQuantity = "R"
	benchEntry    = "682.6 N"
	benchVerdict  = "[data-verdict=correct]"
	slowdown      = 4 // times slower than this machine: a phone
	rounds        = 7
)

// emptyProgram is a Go program that does nothing, built as the engine is.
func emptyProgram(t testing.TB) publish.Built {
	t.Helper()
	dir := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(dir, "go.mod"), []byte("module empty\n\ngo 1.26\n"), 0o644))
	require.NoError(t, os.WriteFile(filepath.Join(dir, "main.go"), []byte("package main\n\nfunc main() {}\n"), 0o644))
	b, err := publish.Compile(context.Background(), dir, ".")
	require.NoError(t, err)
	return b
}

// BenchmarkSize compares the engine, compressed, with an empty program.
// Aim: a ratio of at most 2.0.
func BenchmarkSize(b *testing.B) {
	ours, empty := engine(b, ""), emptyProgram(b)
	size := func(wasm []byte) float64 {
		packed, err := publish.Gzip(wasm)
		require.NoError(b, err)
		return float64(len(packed))
	}
	var packed, packedEmpty float64
	for b.Loop() {
		packed, packedEmpty = size(ours.Wasm), size(empty.Wasm)
	}
	b.ReportMetric(float64(len(ours.Wasm)), "raw-bytes")
	b.ReportMetric(packed, "gzip-bytes")
	b.ReportMetric(packedEmpty, "empty-gzip-bytes")
	b.ReportMetric(packed/packedEmpty, "size-ratio")
	require.Greater(b, packed, packedEmpty)
}

// BenchmarkStart compares the time from opening the page to the verdict on
// the first entry with the time from opening a bare page to the end of an
// empty program, both on a slowed processor and with nothing cached. Medians
// of several rounds, taken in turn. Aim: a ratio of at most 1.6.
func BenchmarkStart(b *testing.B) {
	ours, bare := newSite(b), emptySite(b)
	var took, tookEmpty []float64
	for b.Loop() {
		for range rounds {
			took = append(took, timed(b, ours, benchHash, firstEntry))
			tookEmpty = append(tookEmpty, timed(b, bare, "", ""))
		}
	}
	b.ReportMetric(median(took), "start-ms")
	b.ReportMetric(median(tookEmpty), "empty-start-ms")
	b.ReportMetric(median(took)/median(tookEmpty), "start-ratio")
}

// firstEntry enters a value as soon as the engine is there, and notes when
// its verdict shows. It waits for changes of the page: looking again and
// again would itself take a good part of the slowed processor.
var firstEntry = `(() => {
	let sent = false;
	new MutationObserver(() => {
		if (document.body?.dataset.engine !== "ready" || window.took) return;
		if (sent && document.querySelector("` + benchVerdict + `")) window.took = performance.now();
		if (sent) return;
		sent = true;
		const form = document.querySelector("form:has([name=quantity][value=` + benchQuantity + `])");
		form.querySelector("[name=entry]").value = "` + benchEntry + `";
		form.requestSubmit();
	}).observe(document, { subtree: true, childList: true, attributeFilter: ["data-engine"] });
})()`

// emptySite serves a page that runs the empty program as ours is run.
func emptySite(t testing.TB) *host {
	t.Helper()
	b := emptyProgram(t)
	h := &host{t: t, addr: "127.0.0.1:0", folder: &publish.Folder{Files: map[string][]byte{
		"index.html":   []byte(`<!doctype html><meta charset="utf-8"><title>empty</title><link rel="icon" href="data:,"><body><script src="wasm_exec.js"></script><script src="run.js"></script>`),
		"wasm_exec.js": b.Exec,
		"empty.wasm":   b.Wasm,
		"run.js": []byte(`const go = new Go();
WebAssembly.compileStreaming(fetch("empty.wasm")).then((m) => WebAssembly.instantiate(m, go.importObject))
	.then((i) => go.run(i)).then(() => { window.took = performance.now(); });`),
	}}}
	h.start()
	t.Cleanup(h.stop)
	return h
}

// timed opens a site in a fresh browser context on a slowed processor and
// returns the milliseconds that the page noted.
func timed(b *testing.B, h *host, hash, script string) float64 {
	b.Helper()
	p := newVisitor(b, h, browser, chromedp.WithNewBrowserContext())
	defer func() { require.NoError(b, chromedp.Cancel(p.ctx)) }()
	p.do(call(emulation.SetCPUThrottlingRate, emulation.SetCPUThrottlingRateParams{Rate: slowdown}))
	if script != "" {
		p.do(onEveryPage(script))
	}
	p.open(hash)
	p.await("the page is done", "window.took")
	var ms float64
	p.eval("window.took", &ms)
	return ms
}

func median(values []float64) float64 {
	sorted := slices.Sorted(slices.Values(values))
	return sorted[len(sorted)/2]
}
