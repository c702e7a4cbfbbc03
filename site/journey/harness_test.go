package journey

import (
	"context"
	"encoding/json"
	"fmt"
	"net"
	"net/http"
	"strings"
	"sync"
	"testing"
	"time"

	"closingside/site/publish"
	"closingside/tutor/kinds"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/require"
)

const (
	patience = 3 * time.Minute // for one thing to happen, on a machine that is busy with ten others
	under    = "/harbour/practice/"
)

// engines are built once each: by tag.
var (
	engines     = map[string]publish.Built{}
	enginesLock sync.Mutex
)

func engine(t testing.TB, tag string) publish.Built {
	t.Helper()
	enginesLock.Lock()
	defer enginesLock.Unlock()
	if b, ok := engines[tag]; ok {
		return b
	}
	b, err := publish.Engine(context.Background(), ".", tag)
	require.NoError(t, err)
	engines[tag] = b
	return b
}

// host is a static web host on this machine, under a path.
type host struct {
	t      testing.TB
	addr   string
	server *http.Server
	socket net.Listener
	lock   sync.Mutex
	folder *publish.Folder
	change func(http.Handler) http.Handler // how the host misbehaves, or nil
}

// behave has the host answer in another way from now on; nil: as it should.
func (h *host) behave(change func(http.Handler) http.Handler) {
	h.lock.Lock()
	defer h.lock.Unlock()
	h.change = change
}

// engine has the host ask another whether it answers for the program, where it is
// asked for that.
func (h *host) engine(other func(w http.ResponseWriter) (answered bool)) {
	h.behave(func(next http.Handler) http.Handler {
		return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			if !strings.HasSuffix(r.URL.Path, ".wasm") || !other(w) {
				next.ServeHTTP(w, r)
			}
		})
	})
}

// newSite serves the page as published.
func newSite(t testing.TB) *host {
	t.Helper()
	return newSiteOf(t, engine(t, ""))
}

func newSiteOf(t testing.TB, b publish.Built) *host {
	t.Helper()
	folder, err := publish.Build(b)
	require.NoError(t, err)
	h := &host{t: t, addr: "127.0.0.1:0", folder: folder}
	h.start()
	t.Cleanup(h.stop)
	return h
}

func (h *host) url() string { return "http://" + h.addr + under }

// ReadFile lets the folder be exchanged while the host runs.
func (h *host) ReadFile(name string) ([]byte, error) {
	h.lock.Lock()
	defer h.lock.Unlock()
	return h.folder.ReadFile(name)
}

func (h *host) publish(f *publish.Folder) {
	h.lock.Lock()
	defer h.lock.Unlock()
	h.folder = f
}

func (h *host) start() {
	listener, err := net.Listen("tcp", h.addr)
	require.NoError(h.t, err)
	h.addr = listener.Addr().String()
	handler := http.StripPrefix(strings.TrimSuffix(under, "/"), publish.Handler(h))
	server := &http.Server{Handler: http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		h.lock.Lock()
		change := h.change
		h.lock.Unlock()
		if change != nil {
			change(handler).ServeHTTP(w, r)
			return
		}
		handler.ServeHTTP(w, r)
	})}
	h.server, h.socket = server, listener
	go func() { _ = server.Serve(listener) }()
}

func (h *host) stop() {
	_ = h.socket.Close() // the server may not have got it yet
	_ = h.server.Close()
}

// visitor is a learner at one tab.
type visitor struct {
	t    testing.TB
	ctx  context.Context
	host *host

	lock     sync.Mutex
	problems []string
	allowed  []string // parts of messages that a journey expects
}

// visit opens the page in a fresh browser on a phone's screen and waits for
// the engine.
func visit(t testing.TB, h *host) *visitor {
	t.Helper()
	p := newVisitor(t, h, browser, chromedp.WithNewBrowserContext())
	p.open("")
	p.ready()
	p.stores()
	return p
}

// newTab opens the page in another tab of the same browser.
func (p *visitor) newTab() *visitor {
	p.t.Helper()
	q := newVisitor(p.t, p.host, p.ctx)
	q.open("")
	q.ready()
	q.stores()
	return q
}

func newVisitor(t testing.TB, h *host, parent context.Context, options ...chromedp.ContextOption) *visitor {
	t.Helper()
	p := &visitor{t: t, host: h}
	ctx, cancel := chromedp.NewContext(parent, append(options, chromedp.WithListener(p.hear))...)
	p.ctx = ctx
	require.NoError(t, chromedp.Do(ctx)) // without a time limit, which would be the tab's own
	p.do(call(network.Enable, network.EnableParams{}),
		call(emulation.SetDeviceMetricsOverride, emulation.SetDeviceMetricsOverrideParams{Width: 390, Height: 844, DeviceScaleFactor: 2, Mobile: true}),
		call(emulation.SetTouchEmulationEnabled, emulation.SetTouchEmulationEnabledParams{Enabled: true}))
	t.Cleanup(func() {
		p.lock.Lock()
		defer p.lock.Unlock()
		for _, problem := range p.problems {
			t.Errorf("the page: %s", problem)
		}
		cancel()
	})
	return p
}

// hear notes what no page of ours may do.
func (p *visitor) hear(event any) {
	var problem string
	switch e := event.(type) {
	case *runtime.EventExceptionThrown:
		problem = "exception: " + (&chromedp.ExceptionError{ExceptionDetails: e.ExceptionDetails}).Error()
	case *runtime.EventConsoleAPICalled:
		if e.Type == runtime.ConsoleAPICalledTypeError || e.Type == runtime.ConsoleAPICalledTypeWarning {
			parts := []string{}
			for _, a := range e.Args {
				parts = append(parts, string(a.Value)+a.Description)
			}
			problem = "console: " + strings.Join(parts, " ")
		}
	case *log.EventEntryAdded:
		if e.Entry.Level == log.EntryLevelError || e.Entry.Level == log.EntryLevelWarning {
			problem = "log: " + e.Entry.Text + " " + e.Entry.URL
		}
	case *network.EventRequestWillBeSent:
		u := e.Request.URL
		if !strings.HasPrefix(u, p.host.url()) && !strings.HasPrefix(u, "data:") && !strings.HasPrefix(u, "blob:") && u != "about:blank" {
			problem = "request to " + u
		}
	}
	if problem == "" {
		return
	}
	p.lock.Lock()
	defer p.lock.Unlock()
	for _, a := range p.allowed {
		if strings.Contains(problem, a) {
			return
		}
	}
	p.problems = append(p.problems, problem)
}

// allow lets messages with this part pass: a journey into trouble expects some.
func (p *visitor) allow(part string) {
	p.lock.Lock()
	defer p.lock.Unlock()
	p.allowed = append(p.allowed, part)
}

// do runs actions in the page.
func (p *visitor) do(actions ...chromedp.Action[chromedp.Void]) {
	p.t.Helper()
	get(p, chromedp.Steps(actions...))
}

// get runs an action in the page and returns its result.
func get[T any](p *visitor, action chromedp.Action[T]) T {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	got, err := chromedp.Run(ctx, action)
	require.NoError(p.t, err)
	return got
}

// open goes to a page of the host, at the problem of the barge.
func (p *visitor) open(page string) {
	p.t.Helper()
	p.do(chromedp.Navigate(p.host.url() + page + "#" + barge))
}

// home goes to the list of problems.
func (p *visitor) home() {
	p.t.Helper()
	p.do(chromedp.Navigate(p.host.url()))
}

// choose opens the problem of the barge from the list of problems.
func (p *visitor) choose() {
	p.t.Helper()
	chosen := fmt.Sprintf(`.choices form:has([value=%q]) button`, barge)
	p.eval(fmt.Sprintf(`(() => { for (let e = document.querySelector(%q); e; e = e.parentElement) if (e.matches("details")) e.open = true; })()`, chosen), nil)
	p.do(chromedp.Click(chromedp.CSS(chosen)))
	p.await("the desk shows", `document.querySelector("#next")`)
}

// barge is the code of the problem that the journeys work on.
var barge = kinds.All.ByName("two-forces").BankProblems()[0].Code()

func (p *visitor) reload() {
	p.t.Helper()
	p.do(chromedp.Reload())
	p.ready()
	p.stores()
}

// ready waits until the engine is there.
func (p *visitor) ready() {
	p.t.Helper()
	p.await("the engine is ready", `document.body?.dataset.engine === "ready"`)
}

// stores waits until the log is on the disk and the page shows all of it: on a
// busy machine the page begins without (TestLateStore).
func (p *visitor) stores() {
	p.t.Helper()
	p.await("the log is on the disk", `log.db && !log.stale && log.unsaved.length === 0 && document.querySelector("#notice-no-store").hidden`)
}

// kept waits until the page works without a network.
func (p *visitor) kept() {
	p.t.Helper()
	p.await("the page is kept", `document.body.dataset.offline === "ready"`)
}

// eval is the value of a JavaScript expression in the page, awaited when it
// is a promise.
func (p *visitor) eval(expression string, into any) {
	p.t.Helper()
	raw := get(p, chromedp.Evaluate[[]byte](expression, chromedp.EvalAwaitPromise))
	if into != nil {
		require.NoError(p.t, json.Unmarshal(raw, into), "%s: %s", expression, raw)
	}
}

// await waits until an expression, or what it promises, is true.
func (p *visitor) await(what, expression string) {
	p.t.Helper()
	for deadline := time.Now().Add(patience); ; time.Sleep(25 * time.Millisecond) {
		ctx, cancel := context.WithTimeout(p.ctx, patience)
		on, err := chromedp.Run(ctx, chromedp.Evaluate[bool]("(async () => Boolean(await ("+expression+")))()", chromedp.EvalAwaitPromise))
		cancel()
		if err == nil && on { // an error: the page is between two documents
			return
		}
		if time.Now().After(deadline) {
			body, _ := chromedp.Run(p.ctx, chromedp.Evaluate[string]("document.body.innerText"))
			require.Fail(p.t, "waited in vain until "+what, "error %v; the page says:\n%s", err, body)
		}
	}
}

// offline takes the network away: the host stops, and the browser knows.
func (p *visitor) offline() {
	p.t.Helper()
	p.host.stop()
	p.do(call(network.OverrideNetworkState, network.OverrideNetworkStateParams{Offline: true}),
		call(network.EmulateNetworkConditionsByRule, network.EmulateNetworkConditionsByRuleParams{
			MatchedNetworkConditions: []*network.Conditions{{Offline: true, DownloadThroughput: -1, UploadThroughput: -1}},
		}))
}

// field is the selector of the entry field of a quantity.
func field(quantity string) string {
	return fmt.Sprintf(`form:has([name=quantity][value=%q]) [name=entry]`, quantity)
}

// enter types an entry with real keys and presses Enter, then waits for the
// verdict to appear beside it.
func (p *visitor) enter(quantity, entry string) {
	p.t.Helper()
	before := p.count("[data-verdict]")
	p.submit(quantity, entry)
	p.await("a verdict on "+entry, fmt.Sprintf(`document.querySelectorAll("[data-verdict]").length > %d`, before))
}

// submit types an entry and presses Enter.
func (p *visitor) submit(quantity, entry string) {
	p.t.Helper()
	selector, err := json.Marshal(field(quantity))
	require.NoError(p.t, err)
	p.eval(fmt.Sprintf(`(() => { const f = document.querySelector(%s); for (let fold; (fold = f.closest("details:not([open])")); fold.open = true); f.focus(); f.select(); })()`, selector), nil)
	p.do(chromedp.KeyEvent(entry), chromedp.KeyEvent("\r"))
}

// count is how many elements a selector finds.
func (p *visitor) count(selector string) int {
	p.t.Helper()
	var n int
	p.eval(fmt.Sprintf(`document.querySelectorAll(%q).length`, selector), &n)
	return n
}

// text is what an element says, as laid out.
func (p *visitor) text(selector string) string {
	p.t.Helper()
	var s string
	p.eval(fmt.Sprintf(`document.querySelector(%q).innerText`, selector), &s)
	return s
}

// shown reports whether an element is there and laid out.
func (p *visitor) shown(selector string) bool {
	p.t.Helper()
	var on bool
	p.eval(fmt.Sprintf(`Boolean(document.querySelector(%q)?.checkVisibility())`, selector), &on)
	return on
}
