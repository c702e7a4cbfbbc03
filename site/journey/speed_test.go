package journey

import (
	"context"
	"encoding/json"
	"fmt"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"closingside/site/publish"
	"closingside/tutor/kinds"
	"closingside/tutor/trial"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// cosineLaw is the formula for R of the barge, as mathjs reads it.
const cosineLaw = "sqrt(340^2 + 610^2 - 2*340*610*cos(87 deg))"

// mathjsRun times one evaluation of it: the median of many, warmed up, each
// the mean of a few so that the clock's steps don't show. It prints
// microseconds; math and print are there.
const mathjsRun = `
	const once = () => math.evaluate("` + cosineLaw + `");
	if (Math.abs(once() - 682.6354) > 1e-3) throw new Error("mathjs: " + once());
	for (let i = 0; i < 2000; i++) once();
	const took = [];
	for (let i = 0; i < 300; i++) {
		const start = performance.now();
		for (let k = 0; k < 10; k++) once();
		took.push(100 * (performance.now() - start));
	}
	took.sort((a, b) => a - b);
	print(took[150]);
`

func mathjs(b *testing.B) string {
	path, err := filepath.Abs(filepath.Join("..", "..", "testdata", "npm", "node_modules", "mathjs", "lib", "browser", "math.js"))
	require.NoError(b, err)
	require.FileExists(b, path, "make tools installs it")
	return path
}

// BenchmarkNativeCheck compares a check with a full diagnosis with one
// evaluation of the cosine law by mathjs under Node. Aims: a median of at most
// 1 ms; a ratio of at most 1.0.
func BenchmarkNativeCheck(b *testing.B) {
	script := `const math = require(` + strconv.Quote(mathjs(b)) + `), print = console.log;` + mathjsRun
	var s trial.Speed
	var theirs float64
	for b.Loop() {
		var err error
		s, err = trial.Measure(kinds.All.ByName("two-forces").BankProblems(), trial.Options{Seed: 1, Learners: 8}, 3)
		require.NoError(b, err)
		out, err := exec.Command("node", "-e", script).CombinedOutput()
		require.NoError(b, err, "%s", out)
		theirs, err = strconv.ParseFloat(strings.TrimSpace(string(out)), 64)
		require.NoError(b, err)
	}
	report(b, s, theirs)
	b.ReportMetric(s.Allocs, "allocs/check")
}

// BenchmarkSlowedCheck is the same in WebAssembly in a browser whose processor
// is slowed. Aim: a 99th percentile of at most 8 ms.
func BenchmarkSlowedCheck(b *testing.B) {
	built, err := publish.Compile(context.Background(), ".", "./speed")
	require.NoError(b, err)
	theirs, err := os.ReadFile(mathjs(b))
	require.NoError(b, err)
	h := &host{t: b, addr: "127.0.0.1:0", change: isolated, folder: &publish.Folder{Files: map[string][]byte{
		"index.html": []byte(`<!doctype html><meta charset="utf-8"><title>speed</title><link rel="icon" href="data:,"><body>` +
			`<script src="wasm_exec.js"></script><script src="math.js"></script><script src="run.js"></script>`),
		"wasm_exec.js": built.Exec,
		"speed.wasm":   built.Wasm,
		"math.js":      theirs,
		"run.js": []byte(`const lines = [], print = (s) => lines.push(String(s));
globalThis.measure = async () => {
	console.log = print;
	const go = new Go();
	go.env = { GOGC: "400" }; // as the page has it
	const { instance } = await WebAssembly.instantiateStreaming(fetch("speed.wasm"), go.importObject);
	void go.run(instance);
	while (lines.length === 0) await new Promise((done) => setTimeout(done, 50));
	` + mathjsRun + `
	return lines.join(" ");
};`),
	}}}
	h.start()
	b.Cleanup(h.stop)
	var s trial.Speed
	var evaluation float64
	for b.Loop() {
		s, evaluation = slowed(b, h)
	}
	report(b, s, evaluation)
}

// isolated lets the page's clock step finely, as browsers do for a page that
// nothing else shares a process with.
func isolated(next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Cross-Origin-Opener-Policy", "same-origin")
		w.Header().Set("Cross-Origin-Embedder-Policy", "require-corp")
		next.ServeHTTP(w, r)
	})
}

// slowed runs the measurement in a fresh tab.
func slowed(b *testing.B, h *host) (s trial.Speed, theirs float64) {
	p := newVisitor(b, h, browser, chromedp.WithNewBrowserContext())
	defer func() { require.NoError(b, chromedp.Cancel(p.ctx)) }()
	p.home()
	p.do(call(emulation.SetCPUThrottlingRate, emulation.SetCPUThrottlingRateParams{Rate: slowdown}))
	ctx, cancel := context.WithTimeout(p.ctx, 10*time.Minute)
	defer cancel()
	raw, err := chromedp.Run(ctx, chromedp.Evaluate[[]byte]("measure()", chromedp.EvalAwaitPromise))
	require.NoError(b, err)
	var line string
	require.NoError(b, json.Unmarshal(raw, &line))
	var median, p99, first, worst, clean, ready, readyWorst int64
	_, err = fmt.Sscan(line, &s.Checks, &median, &p99, &first, &worst, &clean, &ready, &readyWorst, &theirs)
	require.NoError(b, err, "the page printed %q", line)
	us := time.Microsecond
	s.Median, s.P99, s.Clean = time.Duration(median)*us, time.Duration(p99)*us, time.Duration(clean)*us
	s.First, s.Worst = time.Duration(first)*us, time.Duration(worst)*us
	s.Ready, s.ReadyWorst = time.Duration(ready)*us, time.Duration(readyWorst)*us
	return s, theirs
}

// report prints the figures; theirs is in microseconds.
func report(b *testing.B, s trial.Speed, theirs float64) {
	require.Greater(b, s.Checks, 100)
	ms := func(d time.Duration) float64 { return float64(d) / float64(time.Millisecond) }
	b.ReportMetric(ms(s.Median), "median-ms")
	b.ReportMetric(ms(s.P99), "p99-ms")
	b.ReportMetric(ms(s.First), "first-median-ms")
	b.ReportMetric(ms(s.Worst), "first-p99-ms")
	b.ReportMetric(theirs/1000, "mathjs-ms")
	b.ReportMetric(ms(s.Clean), "clean-median-ms")
	b.ReportMetric(ms(s.Ready), "ready-median-ms")
	b.ReportMetric(ms(s.ReadyWorst), "ready-p99-ms")
	b.ReportMetric(1000*ms(s.Median)/theirs, "mathjs-ratio")
	b.ReportMetric(1000*ms(s.Clean)/theirs, "clean-mathjs-ratio")
	b.ReportMetric(0, "ns/op")
}
