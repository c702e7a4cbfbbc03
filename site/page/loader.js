// Starts the engine, hands it what the learner does, and puts its replies in place.
// Every request is in the log (log.js) before the engine sees it. Nothing here looks inside one.

const byId = (id) => document.getElementById(id);
const show = (id, on = true) => { const notice = byId(id); if (notice) notice.hidden = !on; };
const stamp = (fields) => `${new URLSearchParams(fields)}&at=${Date.now()}`;
const fragment = () => { try { return decodeURIComponent(location.hash.slice(1)); } catch { return location.hash.slice(1); } };

// ---- the engine: compiled once (early.js), started as often as need be ----

let call = null; // request -> reply, or null when the engine broke down

// boot starts a fresh engine: a function from request to reply.
async function boot() {
  const go = new Go();
  // A check is not kept waiting by the collector: what is in use (10 to 30 MB, for two problems) may grow
  // to five times as much before it runs, but hardly beyond the limit.
  go.env = { GOGC: "400", GOMEMLIMIT: "128MiB" };
  let gone = false;
  go.exit = () => { gone = true; };
  const instance = await WebAssembly.instantiate(await engineModule, go.importObject);
  delete globalThis.closingside;
  go.run(instance).catch(() => { gone = true; });
  const engine = globalThis.closingside;
  if (typeof engine !== "function") throw new Error("engine: did not start");
  return (request) => {
    let reply = "";
    try { if (!gone) reply = engine(request); } catch { gone = true; }
    return typeof reply === "string" && reply !== "" ? reply : null;
  };
}

let spare = boot(); // started before there is anything to ask it
spare.catch(() => {});

// attempt starts a fresh engine on the first n records; its reply is null when they bring it down.
async function attempt(records, n) {
  call = null;
  const next = spare || boot();
  spare = null;
  call = await next;
  return call([stamp({ do: "start", hash: fragment(), sets: document.body.dataset.sets }), ...records.slice(0, n).map((r) => r.line)].join("\n"));
}

// replay starts a fresh engine on the whole log. A record that brings the engine down is found by
// halving, set aside for good, and the rest brought back.
async function replay() {
  for (;;) {
    const records = await log.records();
    const reply = await attempt(records, records.length);
    if (reply !== null) {
      records.forEach((r) => log.seen.add(r.id));
      return reply;
    }
    let good = 0, bad = records.length;
    if (bad === 0 || await attempt(records, 0) === null) throw new Error("engine: does not answer");
    while (bad - good > 1) {
      const middle = (good + bad) >> 1;
      if (await attempt(records, middle) === null) bad = middle; else good = middle;
    }
    await log.setAside(records[bad - 1].id);
    show("notice-set-aside");
  }
}

// ---- replies ----

const SITE = document.title; // before it the tab, and the browser's history, have the problem's

function apply(reply, { fresh = false, sent = null } = {}) {
  const typed = fresh ? fieldValues() : sent ? typedSince(sent) : {};
  const active = document.activeElement, from = active?.selectionStart, to = active?.selectionEnd;
  const incoming = document.createElement("template");
  incoming.innerHTML = reply;
  let focus = incoming.content.querySelector("[data-focus]")?.dataset.focus;
  const hash = incoming.content.querySelector("[data-hash]")?.dataset.hash;
  const outcomes = [];
  for (const element of [...incoming.content.children]) {
    if (element.id === "say") say(element.textContent);
    else if (element.id === "log") outcomes.push(element.getAttribute("value"));
    else if (!fresh || !byId(element.id)?.isEqualNode(element)) byId(element.id)?.replaceWith(element);
    if (element.id === "main" && !fresh) scrollTo(0, 0);
  }
  if (hash !== undefined && hash !== fragment()) {
    history[fresh ? "replaceState" : "pushState"](null, "", hash ? `#${encodeURI(hash)}` : location.pathname + location.search);
  }
  if (byId("title")) document.title = fragment() ? `${byId("title").textContent} · ${SITE}` : SITE;
  for (const [id, value] of Object.entries(typed)) {
    const field = byId(id);
    if (field && field.value === field.defaultValue) field.value = value;
  }
  if (fresh && active && active !== document.body) focus = undefined; // what was not asked for moves no focus
  const lost = !active?.isConnected && active?.id;
  const target = byId(focus || lost || "");
  if (target && (focus || lost)) {
    use(target);
    if ((!focus || active?.id === target.id && typed[target.id] !== undefined) && from != null && target.setSelectionRange) target.setSelectionRange(from, to);
  }
  reach();
  if (!fresh) document.querySelectorAll("svg[data-build]").forEach(build);
  see();
  ahead();
  deal();
  return outcomes;
}

// use puts an element in use: opened, focused, and in view with the part of the page it belongs to.
function use(target) {
  for (let fold; (fold = target.closest("details:not([open])")); fold.open = true);
  target.focus({ preventScroll: true });
  intoView(target);
}

// intoView shows as much as there is room for of the part of the page that an element leads to or belongs to, and the element.
function intoView(target) {
  see();
  for (const part of [byId(target.hash?.slice(1))?.closest(".quantity"), target.closest(".quantity, .sheet, .next"), target.closest("form"), target]) part?.scrollIntoView({ block: "nearest" });
}

// reach makes a formula that is wider than its room a little smaller, and lets the keyboard scroll one that
// is too wide even so. How wide it is rests with the fonts of the device.
const SMALLEST = 0.75;
function reach() {
  for (const formula of document.querySelectorAll("math[display=block]")) {
    const room = () => formula.clientWidth / formula.scrollWidth;
    formula.style.fontSize = "";
    for (let size = 1; room() < 1 && size > SMALLEST;) {
      size = Math.max(SMALLEST, 0.98 * size * room());
      formula.style.fontSize = `${size}em`;
    }
    if (room() < 1) formula.tabIndex = 0; else formula.removeAttribute("tabindex");
  }
}
addEventListener("resize", reach);
document.addEventListener("toggle", reach, true);

// see tells the style sheet what part of the window is in view: a phone's keyboard covers part of it,
// and not every browser makes the window smaller for it. Then the field in use is brought into view.
const LOW = 620; // pixels in view, below which the lower figure is shown
function see() {
  const view = globalThis.visualViewport, zoomed = view && view.scale > 1.01;
  const height = view && !zoomed ? view.height : innerHeight, above = view && !zoomed ? view.offsetTop : 0;
  const root = document.documentElement;
  const wide = matchMedia("(min-width: 60rem)").matches;
  root.dataset.room = height < LOW && !wide ? "low" : "tall";
  const figure = document.querySelector(".pin"), beside = figure && figure.getBoundingClientRect().width < 0.7 * root.clientWidth;
  for (const [name, pixels] of Object.entries({ seen: height, above, covered: Math.max(0, innerHeight - height - above), pinned: figure && !beside ? figure.offsetHeight : 0 })) {
    root.style.setProperty(`--${name}`, `${Math.round(pixels)}px`);
  }
}
function seeAgain() {
  see();
  const field = document.activeElement;
  if (field?.name === "entry") intoView(field);
}
for (const type of ["resize", "scroll"]) globalThis.visualViewport?.addEventListener(type, type === "resize" ? seeAgain : see);
addEventListener("resize", seeAgain);

// fieldValues is what has been typed and not yet sent, by the id of its field.
function fieldValues() {
  const typed = {};
  for (const field of document.querySelectorAll("input[id], textarea[id]")) {
    if (field.type !== "hidden" && field.type !== "file" && field.value !== field.defaultValue) typed[field.id] = field.value;
  }
  return typed;
}

// typedSince is what has been typed since a form was sent, when its fields held what sent says: the check
// may take a moment, and the fingers go on.
function typedSince(sent) {
  return Object.fromEntries(Object.entries(fieldValues()).filter(([id, value]) => value !== sent[id]));
}

function say(text) {
  const region = byId("say");
  region.textContent = "";
  setTimeout(() => { region.textContent = text; }, 60); // so that the same words twice are read twice
}

function state(word) {
  document.body.dataset.engine = word;
  if (word !== "loading") document.documentElement.removeAttribute("data-opening");
  show("engine-loading", word === "loading");
  show("engine-failed", word === "failed");
}

// ---- taking turns: one request at a time, in the order of the log ----

let turn = Promise.resolve();
function take(job) {
  turn = turn.then(job).catch((problem) => { console.warn(problem); state("failed"); });
  return turn;
}

async function bringBack() {
  log.stale = false;
  await note(apply(await replay(), { fresh: true }));
  state("ready");
}

// note appends outcomes to the log; the engine knows them already.
async function note(outcomes) {
  for (const outcome of outcomes) log.seen.add((await log.append(outcome)).id);
}

// send logs a request, then gives it to the engine.
async function send(line, sent = null) {
  const record = await log.append(line);
  await take(async () => {
    if (log.seen.has(record.id)) return; // came back with the log
    if (document.body.dataset.engine === "failed") return;
    if (log.stale) await bringBackBefore(record);
    log.seen.add(record.id);
    let reply = call?.(record.line) ?? null;
    if (reply === null) { // the engine may have been gone before: once more, on a fresh one
      await bringBackBefore(record);
      reply = call(record.line);
    }
    if (reply === null) {
      await log.setAside(record.id);
      await bringBack();
      show("notice-set-aside");
      return;
    }
    await note(apply(reply, { sent }));
    others?.postMessage("appended");
    if (log.stale) await bringBack();
  });
}

// bringBackBefore brings back the whole log but our own record, which is to be answered by itself.
async function bringBackBefore(record) {
  log.held = record.id;
  try { await bringBack(); } finally { log.held = null; }
}

// ---- other tabs on the same log ----

const others = globalThis.BroadcastChannel ? new BroadcastChannel(log.name) : null;
const catchUp = () => take(async () => { if (await log.hasNews()) await bringBack(); });
if (others) others.onmessage = ({ data }) => { if (data === "cleared") log.stale = true; catchUp(); };
addEventListener("store", catchUp);
addEventListener("pageshow", (event) => { if (event.persisted) catchUp(); });
document.addEventListener("visibilitychange", () => { if (!document.hidden && document.body.dataset.engine === "ready") catchUp(); });

// ---- what the learner does ----

function serialise(form, submitter) {
  const fields = new URLSearchParams([...new FormData(form)].filter(([, v]) => typeof v === "string"));
  if (submitter?.name) fields.set(submitter.name, submitter.value);
  return fields;
}

let soon; // the live reading waits until the fingers rest
let latest = { line: "", until: 0 }; // the entry sent last, and until when the same one is a tap too many
document.addEventListener("submit", async (event) => {
  event.preventDefault();
  clearTimeout(soon);
  const fields = serialise(event.target, event.submitter), line = `${fields}`;
  if (event.target.dataset.live === undefined) return send(stamp(fields), fieldValues());
  if (line === latest.line && Date.now() < latest.until) return;
  const mine = latest = { line, until: Infinity };
  try { await send(stamp(fields), fieldValues()); } finally { mine.until = Date.now() + 500; }
});

document.addEventListener("input", ({ target }) => {
  const form = target.form;
  if (!form || form.dataset.live === undefined) return;
  clearTimeout(soon);
  soon = setTimeout(() => take(async () => {
    if (!call || !form.isConnected) return;
    const fields = serialise(form);
    fields.set("do", "read");
    const reply = call(stamp(fields));
    if (reply === null) await bringBack(); else apply(reply);
  }), 70);
});

addEventListener("hashchange", () => {
  if (!byId(fragment())) send(stamp({ do: "open", hash: fragment() }));
});

// Keys a phone's keyboard hides: data-insert="sin(|)" types at the cursor; | is where the cursor goes.
let field = null; // the field last in use
document.addEventListener("focusin", ({ target }) => { if (target.matches("input[type=text], input:not([type]), textarea")) field = target; });
document.addEventListener("mousedown", (event) => { if (event.target.closest("[data-insert]")) event.preventDefault(); });
document.addEventListener("click", (event) => {
  const { target } = event;
  const key = target.closest("[data-insert]");
  if (key) type(key);
  const there = byId(target.closest("a")?.hash.slice(1) || "");
  if (there) { event.preventDefault(); use(there); } // the address stays that of the problem
  const act = target.closest("[data-page]")?.dataset.page;
  if (act) acts[act]?.();
});

function type(key) {
  const own = key.form?.querySelector("input[name=entry]");
  const into = field?.isConnected && (!own || field.form === key.form) ? field : own;
  if (!into) return;
  const [before, after = ""] = key.dataset.insert.split("|");
  const at = into.selectionStart ?? into.value.length;
  into.setRangeText(before + after, at, into.selectionEnd ?? at, "end");
  into.setSelectionRange(at + before.length, at + before.length);
  into.focus();
  into.dispatchEvent(new Event("input", { bubbles: true }));
}

// ---- while nobody types, the engine makes what the next check looks in, a little at a time ----

const PIECE = 6, REST = 400; // milliseconds: at one go, and after a key or a touch
const idle = globalThis.requestIdleCallback ?? ((job) => setTimeout(job, 50));
let touched = 0, aheadOf, worn = false; // worn: it brought an engine down, and is not tried again
for (const kind of ["input", "keydown", "pointerdown", "scroll"]) addEventListener(kind, () => { touched = performance.now(); ahead(); }, { passive: true, capture: true });

function ahead(wait = REST) {
  clearTimeout(aheadOf);
  if (worn) return;
  aheadOf = setTimeout(() => idle(() => take(() => {
    if (performance.now() - touched < REST) return ahead();
    for (const end = performance.now() + PIECE; call && performance.now() < end;) {
      const reply = call("do=ahead");
      if (reply === null) {
        worn = true;
        return bringBack();
      }
      if (!reply.includes("more")) return;
    }
    ahead(1);
  })), wait);
}

// deal has the problems of a set drawn a few at a time, as long as the screen shows how far that is.
function deal() {
  const drawing = byId("drawing");
  if (drawing) setTimeout(() => take(async () => {
    if (!drawing.isConnected) return; // something else is on the screen
    const reply = call(stamp({ do: "deal", set: drawing.dataset.set }));
    if (reply === null) throw new Error("engine: could not draw");
    await note(apply(reply));
  }));
}

// ---- what the page itself does ----

const acts = {
  export: saveCopy,
  async clear() {
    await log.clear();
    others?.postMessage("cleared");
    await take(bringBack);
    show("notice-cleared");
  },
  update() { waiting?.postMessage("take over"); },
  reload() { location.reload(); },
  build() { document.querySelectorAll("#figure svg").forEach(build); },
};

// Half-typed entries outlive a reload.
addEventListener("pagehide", () => { try { sessionStorage.setItem(log.name, JSON.stringify(fieldValues())); } catch { /* no store: nothing to keep */ } });
function halfTyped() {
  try { return JSON.parse(sessionStorage.getItem(log.name)) || {}; } catch { return {}; }
}

// ---- works without a network ----

let waiting = null; // the next version, loaded and waiting
const kept = (how) => { show("offline-waiting", false); show(how); };
async function keep() {
  const worker = navigator.serviceWorker;
  if (document.body.dataset.engine !== "ready") return; // nothing worth keeping
  if (document.body.dataset.whole !== undefined) return kept("offline-ready"); // everything is in this file
  if (!worker || !location.protocol.startsWith("http")) return;
  const guided = Boolean(worker.controller);
  worker.addEventListener("controllerchange", () => { if (guided) location.reload(); });
  const registration = await worker.register("sw.js");
  const offer = () => { waiting = registration.waiting; show("notice-update", Boolean(waiting) && guided); };
  offer();
  registration.addEventListener("updatefound", () => {
    registration.installing?.addEventListener("statechange", offer);
  });
  await worker.ready;
  document.body.dataset.offline = "ready";
  kept("offline-ready");
}

// ---- start ----

const opening = log.open();
take(async () => {
  await parsed;
  state("loading");
  await opening;
  await bringBack();
  for (const [id, value] of Object.entries(halfTyped())) {
    const input = byId(id);
    if (input && input.value === input.defaultValue) input.value = value;
  }
}).then(() => new Promise(globalThis.requestIdleCallback ? (done) => requestIdleCallback(done, { timeout: 2000 }) : (done) => setTimeout(done, 500)))
  .then(keep).catch((problem) => { console.warn(problem); kept("offline-failed"); });
