//go:build browsers

package journey

import (
	"bytes"
	"encoding/json"
	"fmt"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// output keeps what a browser writes.
type output struct {
	lock sync.Mutex
	all  bytes.Buffer
}

func (o *output) Write(b []byte) (int, error) {
	o.lock.Lock()
	defer o.lock.Unlock()
	return o.all.Write(b)
}

// lines are those that match.
func (o *output) lines(like *regexp.Regexp) func() []string {
	return func() []string {
		o.lock.Lock()
		defer o.lock.Unlock()
		var found []string
		for line := range strings.SplitSeq(o.all.String(), "\n") {
			if like.MatchString(line) {
				found = append(found, line)
			}
		}
		return found
	}
}

// begin starts a program that ends with the test.
func begin(t *testing.T, o *output, env []string, name string, args ...string) {
	t.Helper()
	program := exec.Command(name, args...)
	program.Env = append(os.Environ(), env...)
	program.Stdout, program.Stderr = o, o
	require.NoError(t, program.Start(), "make test-browsers installs it")
	t.Cleanup(func() {
		_ = program.Process.Kill()
		_ = program.Wait()
	})
}

// eventually tries until something works.
func eventually(t *testing.T, what string, try func() error) {
	t.Helper()
	var err error
	for deadline := time.Now().Add(2 * patience); time.Now().Before(deadline); time.Sleep(100 * time.Millisecond) {
		if err = try(); err == nil {
			return
		}
	}
	require.NoError(t, err, what)
}

// preferences keep Firefox from asking the world for anything, and have the
// page's console written out.
const preferences = `user_pref("marionette.port", 0);
user_pref("app.update.enabled", false);
user_pref("datareporting.policy.dataSubmissionEnabled", false);
user_pref("toolkit.telemetry.enabled", false);
user_pref("network.captive-portal-service.enabled", false);
user_pref("network.connectivity-service.enabled", false);
user_pref("services.settings.server", "data:,");
user_pref("browser.safebrowsing.downloads.remote.enabled", false);
user_pref("extensions.systemAddon.update.enabled", false);
user_pref("browser.aboutwelcome.enabled", false);
user_pref("browser.shell.checkDefaultBrowser", false);
user_pref("browser.startup.homepage_override.mstone", "ignore");
user_pref("devtools.console.stdout.content", true);
`

// TestFirefox makes the core journey in Firefox, driven by its own remote
// protocol: Debian has no separate driver for it.
func TestFirefox(t *testing.T) {
	profile, heard := newProfile(t), &output{}
	require.NoError(t, os.WriteFile(filepath.Join(profile, "user.js"), []byte(preferences), 0o644))
	begin(t, heard, []string{"MOZ_CRASHREPORTER_DISABLE=1"}, "firefox-esr", "--headless", "--no-remote", "--profile", profile, "--marionette", "--width", "500", "--height", "900", "about:blank")
	var m *marionette
	eventually(t, "Firefox is there", func() error {
		port, err := os.ReadFile(filepath.Join(profile, "MarionetteActivePort"))
		if err == nil {
			m, err = dialMarionette("127.0.0.1:" + strings.TrimSpace(string(port)))
		}
		return err
	})
	d := driven{t, m, heard.lines(regexp.MustCompile(`JavaScript error: http|console\.(error|warn).*http://127`))}
	d.do("WebDriver:NewSession", map[string]any{"capabilities": map[string]any{"alwaysMatch": map[string]any{"timeouts": map[string]any{"script": 30000}}}})
	h := newSite(t)
	coreJourney(t, d, h)
}

// TestWebKit makes the core journey in WebKitGTK, driven by WebKitWebDriver.
func TestWebKit(t *testing.T) {
	h := newSite(t)
	coreJourney(t, newWebKit(t), h)
}

func newWebKit(t *testing.T) driven {
	t.Helper()
	heard := &output{}
	socket, err := net.Listen("tcp", "127.0.0.1:0")
	require.NoError(t, err)
	port := socket.Addr().(*net.TCPAddr).Port
	require.NoError(t, socket.Close())
	display := fmt.Sprintf(":%d", 90+port%900)
	begin(t, heard, nil, "Xvfb", display, "-screen", "0", "800x1000x24", "-nolisten", "tcp")
	begin(t, heard, []string{"DISPLAY=" + display, "WEBKIT_DISABLE_COMPOSITING_MODE=1", "LIBGL_ALWAYS_SOFTWARE=1", "GTK_A11Y=none", "NO_AT_BRIDGE=1", "XDG_DATA_HOME=" + newProfile(t), "XDG_CACHE_HOME=" + newProfile(t)},
		"WebKitWebDriver", fmt.Sprintf("--port=%d", port))
	remote := &overHTTP{base: fmt.Sprintf("http://127.0.0.1:%d", port)}
	var raw json.RawMessage
	eventually(t, "WebKit is there", func() (err error) {
		raw, err = remote.command("WebDriver:NewSession", map[string]any{"capabilities": map[string]any{"alwaysMatch": map[string]any{
			"timeouts":                 map[string]any{"script": 30000},
			"webkitgtk:browserOptions": map[string]any{"args": []string{"--automation", "--enable-write-console-messages-to-stdout=true", "--geometry=480x900"}},
		}}})
		return err
	})
	var session struct{ SessionID string }
	require.NoError(t, json.Unmarshal(raw, &session))
	remote.session = session.SessionID
	t.Cleanup(func() { _, _ = remote.command("WebDriver:DeleteSession", nil) })
	return driven{t, remote, heard.lines(regexp.MustCompile(`CONSOLE .*(ERROR|WARN)`))}
}
