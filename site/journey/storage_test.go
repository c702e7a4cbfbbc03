package journey

// What the page keeps on a device that is slow, full, or keeps nothing.

import (
	"context"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/storage"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

func TestWithoutStorage(t *testing.T) {
	rows := map[string]string{
		"refused": `IDBFactory.prototype.open = () => { throw new DOMException("no", "SecurityError"); }`,
		"failing": `IDBFactory.prototype.open = () => { const r = {}; setTimeout(() => r.onerror(), 5); return r; }`,
	}
	for name, script := range rows {
		t.Run(name, func(t *testing.T) {
			p := newVisitor(t, newSite(t), browser, chromedp.WithNewBrowserContext())
			p.do(onEveryPage(script))
			p.open("")
			p.ready()
			assert.True(t, p.shown("#notice-no-store"))
			p.enter("R", "682.6 N")
			assert.Equal(t, 1, p.count("[data-verdict]"))
		})
	}
}

// A store that a busy device opens late takes what was in memory, and what it
// held comes back.
func TestLateStore(t *testing.T) {
	p := visit(t, newSite(t))
	p.enter("R", "1 N")
	p.do(onEveryPage(`(() => { const open = IDBFactory.prototype.open; let now; const allowed = new Promise((done) => { now = done; });
		window.openStore = () => { sessionStorage.setItem("open", "yes"); now(); };
		IDBFactory.prototype.open = function (...all) {
			if (sessionStorage.getItem("open")) return open.apply(this, all);
			const late = {}; allowed.then(() => { const r = open.apply(this, all);
				for (const on of ["onupgradeneeded", "onsuccess", "onerror"]) r[on] = (e) => { late.result = r.result; late[on]?.(e); }; });
			return late; }; })()`))
	p.do(chromedp.Reload())
	p.ready()
	assert.True(t, p.shown("#notice-no-store"))
	p.enter("R", "2 N")
	p.eval(`openStore()`, nil)
	p.await("both are there", verdicts+` === 2 && document.querySelector("#notice-no-store").hidden`)
	p.stores()
	p.reload()
	p.await("both were stored", verdicts+" === 2")
}

// A device that is full refuses what it is asked to keep.
func TestQuota(t *testing.T) {
	h := newSite(t)
	p := visit(t, h)
	p.enter("R", "1 N")
	origin := strings.TrimSuffix(h.url(), under)
	room := func(bytes float64, full bool) {
		p.do(call(storage.OverrideQuotaForOrigin, storage.OverrideQuotaForOriginParams{Origin: origin, QuotaSize: &bytes}))
		// The browser takes a while to know: half a minute, where it has asked a moment ago.
		p.await("the browser knows how much room there is", fmt.Sprintf(`log.append("do=nothing").then(() => document.querySelector("#notice-full").hidden !== %t)`, full))
	}
	room(1, true)
	p.enter("R", "2 N")
	p.await("it says that the device is full", `document.querySelector("#notice-full")?.checkVisibility()`)
	assert.Equal(t, 2, p.count("[data-verdict]"), "the work goes on")
	room(1<<30, false)
	p.enter("R", "3 N")
	p.await("the notice goes", `!document.querySelector("#notice-full")?.checkVisibility()`)
	p.reload()
	assert.Equal(t, 3, p.count("[data-verdict]"))
}

// Two entries sent before the first is on the disk are kept once each.
func TestSentAtOnce(t *testing.T) {
	p := visit(t, newSite(t))
	p.eval(`(() => { const form = document.querySelector("#entry-R").form, field = form.elements.entry;
		for (const entry of ["1 N", "2 N", "3 N"]) { field.value = entry; form.requestSubmit(); } })()`, nil)
	p.await("all three are judged", verdicts+" === 3")
	p.reload()
	assert.Equal(t, 3, p.count("[data-verdict]"))
	var kept []string
	p.eval(`log.records().then((all) => all.filter((r) => r.line.includes("do=enter")).map((r) => new URLSearchParams(r.line).get("entry")))`, &kept)
	assert.Equal(t, []string{"1 N", "2 N", "3 N"}, kept)
}

// A tab that is killed in the middle of an entry: what was sent is in the log,
// answered or not.
func TestKilledTab(t *testing.T) {
	p := visit(t, newSite(t))
	p.enter("R", "1 N")
	p.allow("the engine never gets it")
	p.eval(`call = () => { throw new Error("the engine never gets it"); }; log.setAside = () => new Promise(() => {}); 0`, nil)
	p.submit("R", "2 N")
	p.await("the request is stored", `log.read().then((all) => all.some((r) => r.line.includes("2+N")))`)
	ctx, cancel := context.WithTimeout(p.ctx, 5*time.Second)
	defer cancel()
	_, _ = chromedp.Run(ctx, call(page.Crash, cdp.Empty{})) // it does not live to answer
	q := p.newTab()
	q.await("the entry that was never answered is judged now", `document.querySelectorAll("[data-verdict]").length === 2`)
}

func TestFullDisk(t *testing.T) {
	p := visit(t, newSite(t))
	p.enter("R", "1 N")
	// A full disk aborts the transaction that would write.
	p.eval(`(() => {
		window.room = IDBObjectStore.prototype.add;
		IDBObjectStore.prototype.add = function (v) { const r = window.room.call(this, v); queueMicrotask(() => { try { this.transaction.abort(); } catch { /* done by the record before */ } }); return r; };
	})()`, nil)
	p.enter("R", "2 N")
	p.enter("R", "3 N")
	assert.True(t, p.shown("#notice-full"))
	p.shot("full-disk")
	p.eval(`(() => { IDBObjectStore.prototype.add = window.room; })()`, nil)
	p.enter("R", "4 N")
	assert.False(t, p.shown("#notice-full"))
	p.reload()
	assert.Equal(t, 4, p.count("[data-verdict]"), "what was in memory was stored once there was room")
}
