package journey

import (
	"os"
	"path/filepath"
	"testing"

	cdpbrowser "github.com/chromedp/cdproto/browser"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// saveCopy saves a copy of the work and returns the file's path.
func (p *visitor) saveCopy() string {
	p.t.Helper()
	dir := p.t.(*testing.T).TempDir()
	p.do(call(cdpbrowser.SetDownloadBehavior, cdpbrowser.SetDownloadBehaviorParams{
		Behavior: cdpbrowser.SetDownloadBehaviorBehaviorAllow, DownloadPath: dir, BrowserContextID: chromedp.FromContext(p.ctx).BrowserContextID}))
	p.aboutTheWork()
	p.do(chromedp.Click(chromedp.CSS(`.titleblock [data-page=export]`)))
	var path string
	require.Eventually(p.t, func() bool { // the browser writes under another name first
		files, _ := filepath.Glob(filepath.Join(dir, "closingside-*.txt"))
		if len(files) != 1 {
			return false
		}
		path = files[0]
		saved, _ := os.ReadFile(path)
		return len(saved) > 0
	}, patience, 50e6)
	return path
}

// aboutTheWork unfolds what the page says of the work on this device.
func (p *visitor) aboutTheWork() {
	p.t.Helper()
	p.eval(`document.querySelectorAll(".titleblock details").forEach(d => d.open = true)`, nil)
}

// bring chooses a file to take work back from, and waits until the page says so.
func (p *visitor) bring(path string) string {
	p.t.Helper()
	p.aboutTheWork()
	p.eval(`(() => { document.querySelector("#brought").textContent = ""; })()`, nil)
	p.do(chromedp.SetUploadFiles(chromedp.CSS("#bring"), []string{path}))
	p.await("the page tells what came of it", `document.querySelector("#brought").textContent`)
	var said string // as written: what is far down the page is not laid out
	p.eval(`document.querySelector("#brought").textContent`, &said)
	return said
}

func TestExportAndClear(t *testing.T) {
	h := newSite(t)
	p := visit(t, h)
	other := p.newTab()
	p.enter("R", "682.6 N")
	saved, err := os.ReadFile(p.saveCopy())
	require.NoError(t, err)
	assert.Contains(t, string(saved), "entry=682.6+N")
	p.shot("work-on-this-device")

	p.do(chromedp.Click(chromedp.CSS(`[data-page=clear]`)))
	p.await("the work is gone", verdicts+" === 0")
	other.await("in the other tab too", verdicts+" === 0")
	p.reload()
	assert.Zero(t, p.count("[data-verdict]"))
}

// TestWorkIsTakenBackFromACopy: on another phone, or after everything was erased,
// also beside work that was done since.
func TestWorkIsTakenBackFromACopy(t *testing.T) {
	h := newSite(t)
	p := visit(t, h)
	p.enter("gamma", "93")
	p.enter("R", "682.6 N")
	copied := p.saveCopy()

	q := visit(t, h) // another device
	tab := q.newTab()
	q.enter("gamma", "87")
	assert.Contains(t, q.bring(copied), "not on this device")
	q.shot("work-taken-back")
	assert.Equal(t, 3, q.count("[data-verdict]"))
	tab.await("in the other tab too", verdicts+" === 3")
	assert.Contains(t, q.text("#card-gamma .history li"), "87", "what was entered last stands")
	assert.Contains(t, q.bring(copied), "already")
	q.reload()
	assert.Equal(t, 3, q.count("[data-verdict]"), "it is kept")
	first, err := os.ReadFile(copied)
	require.NoError(t, err)
	var again string
	q.eval(`log.text()`, &again)
	assert.Equal(t, string(first), again[:len(first)], "a copy of it is in the order of the work")

	broken := filepath.Join(t.TempDir(), "broken.txt")
	require.NoError(t, os.WriteFile(broken, append(first, "do=ent"...), 0o600))
	assert.Contains(t, q.bring(broken), "as it was")
	assert.Equal(t, 3, q.count("[data-verdict]"), "nothing is lost by a broken file")
}

// TestACopyBringsNewsOfAnotherTab: what another tab did meanwhile is shown, also where
// the copy adds nothing to it.
func TestACopyBringsNewsOfAnotherTab(t *testing.T) {
	p := visit(t, newSite(t))
	p.enter("R", "682.6 N")
	copied := p.saveCopy()
	p.eval(`log.append(new URLSearchParams({ do: "enter", problem: document.querySelector("#entry-gamma").form.elements.problem.value, quantity: "gamma", entry: "87", at: Date.now() }).toString()).then(() => { log.stale = true; })`, nil) // no word of it comes
	require.Equal(t, 1, p.count("[data-verdict]"))
	assert.Contains(t, p.bring(copied), "already")
	p.await("both are there", verdicts+" === 2")
}

// TestACopyThatTheDeviceHasNoRoomFor is refused whole, so that what is done after it
// has what room there is.
func TestACopyThatTheDeviceHasNoRoomFor(t *testing.T) {
	h := newSite(t)
	p := visit(t, h)
	p.enter("gamma", "87")
	p.enter("R", "682.6 N")
	copied := p.saveCopy()

	q := visit(t, h)
	q.enter("gamma", "93")
	q.eval(`(() => { // as a device that has room for one record and not for many
		const add = IDBObjectStore.prototype.add, many = new WeakMap();
		IDBObjectStore.prototype.add = function (v) {
			const t = this.transaction, n = (many.get(t) ?? 0) + 1, r = add.call(this, v);
			many.set(t, n);
			if (n === 3) queueMicrotask(() => t.abort());
			return r;
		};
	})()`, nil)
	assert.Contains(t, q.bring(copied), "could not be taken")
	assert.False(t, q.shown("#notice-full"), "nothing of the learner's own is waiting for room")
	assert.Equal(t, 1, q.count("[data-verdict]"))
	q.enter("gamma", "92")
	q.reload()
	assert.Equal(t, 2, q.count("[data-verdict]"), "what was done after it is kept")
	assert.Contains(t, q.bring(copied), "not on this device", "with room for it, it is taken")
	assert.Equal(t, 4, q.count("[data-verdict]"))
}

// TestAFileThatCannotBeRead says so, and so does one that brings the engine down.
func TestAFileThatCannotBeRead(t *testing.T) {
	p := visit(t, newSite(t))
	p.enter("R", "682.6 N")
	copied := p.saveCopy()
	p.eval(`(() => { Blob.prototype.text = () => Promise.reject(new DOMException("gone", "NotFoundError")); })()`, nil)
	assert.Contains(t, p.bring(copied), "could not be taken")
	p.reload()
	p.eval(`(() => { const whole = call; call = (r) => r.startsWith("do=bring") ? null : whole(r); })()`, nil)
	assert.Contains(t, p.bring(copied), "could not be taken")
	assert.Equal(t, 1, p.count("[data-verdict]"))
}
