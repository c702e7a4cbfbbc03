package journey

import (
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

// browser is the one Chromium the journeys share. Each journey has a context
// of its own in it: own storage, own service workers.
var browser context.Context

func TestMain(m *testing.M) {
	os.Exit(func() int {
		profile, err := os.MkdirTemp("", "closingside-profile-")
		if err != nil {
			fmt.Fprintln(os.Stderr, err)
			return 1
		}
		defer clear(profile)
		ctx, stop, err := launch(profile)
		if err != nil {
			fmt.Fprintln(os.Stderr, err)
			return 1
		}
		defer stop()
		browser = ctx
		return m.Run()
	}())
}

// clear removes a profile: as much as there is to be removed, for a process of
// the browser may still write into it.
func clear(profile string) {
	for range 20 {
		if os.RemoveAll(profile) == nil {
			return
		}
		time.Sleep(50 * time.Millisecond)
	}
}

// newProfile is a folder for a browser of a test's own.
func newProfile(t testing.TB) string {
	t.Helper()
	profile, err := os.MkdirTemp("", "closingside-profile-")
	require.NoError(t, err)
	t.Cleanup(func() { clear(profile) })
	return profile
}

// chromium is the browser to run.
func chromium() (string, error) {
	for _, name := range []string{os.Getenv("CHROMIUM"), "chromium", "chromium-browser", "google-chrome", "google-chrome-stable"} {
		if path, err := exec.LookPath(name); name != "" && err == nil {
			return path, nil
		}
	}
	return "", fmt.Errorf("no Chromium found: make browser installs one; CHROMIUM=... names another")
}

// launch starts a browser on a profile. No name but this machine's resolves
// in it, so that a request to any other host fails even if it went unnoticed.
func launch(profile string) (context.Context, func(), error) {
	path, err := chromium()
	if err != nil {
		return nil, nil, err
	}
	options := []chromedp.ExecAllocatorOption{chromedp.ExecPath(path), chromedp.UserDataDir(profile), chromedp.WSURLReadTimeout(patience)}
	for _, flag := range []string{"headless", "no-sandbox", "disable-gpu", "disable-quic", "no-first-run", "disable-background-networking",
		"disable-component-update", "disable-sync", "disable-dev-shm-usage", "disable-extensions", "no-default-browser-check",
		"disable-background-timer-throttling", "disable-renderer-backgrounding", "disable-backgrounding-occluded-windows", "disable-ipc-flooding-protection"} {
		options = append(options, chromedp.Flag(flag, true))
	}
	options = append(options, chromedp.Flag("host-resolver-rules", "MAP * ~NOTFOUND, EXCLUDE 127.0.0.1"))
	alloc, stopAlloc := chromedp.NewExecAllocator(context.Background(), options...)
	ctx, stopBrowser := chromedp.NewContext(alloc)
	if err := chromedp.Do(ctx); err != nil {
		stopBrowser()
		stopAlloc()
		return nil, nil, fmt.Errorf("starting %s: %w", path, err)
	}
	return ctx, func() { _ = chromedp.Cancel(ctx); stopAlloc() }, nil
}

// shot takes a screenshot when SHOTS names a folder for them.
func (p *visitor) shot(name string) {
	p.t.Helper()
	dir := os.Getenv("SHOTS")
	if dir == "" {
		return
	}
	png := get(p, chromedp.FullScreenshot(100))
	require.NoError(p.t, os.MkdirAll(dir, 0o755))
	require.NoError(p.t, os.WriteFile(filepath.Join(dir, name+".png"), png, 0o644))
}

// call makes an action of a command of the protocol.
func call[P, R any](c cdp.Command[P, R], params P) chromedp.Action[chromedp.Void] {
	return chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
		_, err := cdp.Call(ctx, t, c, params)
		return err
	})
}

// onEveryPage runs a script before those of the page.
func onEveryPage(script string) chromedp.Action[chromedp.Void] {
	return call(page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: script})
}
