// The log: every request and outcome, in order, in IndexedDB. The log is the state; the engine is
// given it on start. Where the browser keeps nothing (private mode, a full disk) the log lives in
// memory, the page says so, and each append tries again to store what is not yet stored.

const log = {
  name: `closingside:${new URL("./", location.href).pathname}`, // folders of one host stay apart
  tab: `${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 8)}`,
  count: 0,
  db: null,
  last: 0, // the highest key this tab knows
  stale: false, // another tab has written since this tab's engine was given the log
  held: null, // the id of a record to leave out of the next replay
  unsaved: [], // records that are only in memory
  saving: Promise.resolve(), // the latest save
  aside: new Set(), // ids of records the engine must not see again
  seen: new Set(), // ids of this engine's records

  // open waits a while for the store. One that comes later, on a busy device, takes what was kept in
  // memory until then, and the page catches up with it.
  async open() {
    const coming = new Promise((resolve, reject) => {
      const request = indexedDB.open(this.name, 1);
      request.onupgradeneeded = () => request.result.createObjectStore("log", { autoIncrement: true });
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    }).then((db) => {
      this.db = db;
      db.onversionchange = () => db.close();
    });
    try {
      await within(4000, coming);
    } catch {
      await parsed;
      if (!this.db) show("notice-no-store");
      coming.then(async () => {
        show("notice-no-store", false);
        await this.save();
        this.stale = true;
        dispatchEvent(new Event("store"));
      }, () => {});
    }
    opened();
  },

  // append stores one line and resolves when it is safe, or known not to be.
  async append(line, kind = "line") {
    const [record] = await this.appendAll([{ kind, line }]);
    return record;
  },

  // appendAll stores several records at once: all of them, or none.
  async appendAll(records) {
    await ready;
    const named = records.map((r) => ({ id: `${this.tab}-${this.count++}`, ...r }));
    this.unsaved.push(...named);
    await this.save();
    return named;
  },

  // takeAll stores records of a saved copy and tells whether they are kept. Where the store has no room for them
  // they are given up, their file has them, so that what is done from now on has the room there is.
  async takeAll(records) {
    const named = await this.appendAll(records);
    if (!this.db || !named.some((r) => this.unsaved.includes(r))) return true;
    this.unsaved = this.unsaved.filter((r) => !named.includes(r));
    if (this.unsaved.length === 0) show("notice-full", false);
    return false;
  },

  // save stores what is not stored yet. One at a time: what is being written is not written again.
  save() {
    this.saving = this.saving.then(() => this.write());
    return this.saving;
  },

  async write() {
    if (!this.db || this.unsaved.length === 0) return;
    const batch = [...this.unsaved];
    try {
      await this.transaction("readwrite", (store) => {
        for (const record of batch) {
          store.add(record).onsuccess = ({ target }) => { // keys are consecutive: a gap is another tab's
            if (target.result > this.last + 1) this.stale = true;
            this.last = target.result;
          };
        }
      });
      this.unsaved = this.unsaved.filter((r) => !batch.includes(r));
      show("notice-full", false);
    } catch {
      show("notice-full");
    }
  },

  // records is the log, oldest first, without what was set aside or is held.
  async records() {
    const stored = await this.read();
    this.stale = false;
    const all = inOrder([...stored, ...this.unsaved]);
    for (const r of all) if (r.kind === "aside") this.aside.add(r.line);
    return all.filter((r) => r.kind === "line" && !this.aside.has(r.id) && r.id !== this.held);
  },

  async read() {
    await ready;
    if (!this.db) return [];
    let keys, values;
    try {
      await this.transaction("readonly", (store) => {
        keys = store.getAllKeys();
        values = store.getAll();
      });
    } catch {
      show("notice-no-store");
      return [];
    }
    this.last = Math.max(this.last, ...keys.result.slice(-1));
    return values.result;
  },

  // hasNews: has another tab written since?
  async hasNews() {
    if (!this.db || this.stale) return this.stale;
    let keys;
    await this.transaction("readonly", (store) => { keys = store.getAllKeys(IDBKeyRange.lowerBound(this.last, true)); });
    return keys.result.length > 0;
  },

  // setAside keeps a record from being replayed: it brought the engine down.
  async setAside(id) {
    this.aside.add(id);
    await this.append(id, "aside");
  },

  async clear() {
    await ready;
    this.unsaved = [];
    if (this.db) await this.transaction("readwrite", (store) => store.clear());
  },

  // text is the log as one line a record, to be kept elsewhere.
  async text() {
    const all = inOrder([...await this.read(), ...this.unsaved]);
    return all.map((r) => (r.kind === "line" ? r.line : `${r.kind}=${r.line}`)).join("\n") + "\n";
  },

  // transaction resolves when what it wrote is on the disk, so that a killed browser process keeps it.
  transaction(mode, work) {
    return new Promise((resolve, reject) => {
      const t = this.db.transaction("log", mode, { durability: "strict" });
      t.oncomplete = resolve;
      t.onerror = t.onabort = () => reject(t.error);
      work(t.objectStore("log"));
    });
  },
};

// inOrder puts records taken from a saved copy where they belong: before the record that they name.
function inOrder(records) {
  const ids = new Set(records.map((r) => r.id)), before = new Map();
  const placed = (r) => r.before !== undefined && ids.has(r.before);
  for (const r of records) if (placed(r)) before.set(r.before, [...(before.get(r.before) ?? []), r]);
  const withThose = (r) => [...(before.get(r.id) ?? []).flatMap(withThose), r];
  return records.filter((r) => !placed(r)).flatMap(withThose);
}

let opened;
const ready = new Promise((resolve) => { opened = resolve; });

function within(milliseconds, promise) {
  return Promise.race([promise, new Promise((_, reject) => { setTimeout(() => reject(new Error("too slow")), milliseconds); })]);
}
