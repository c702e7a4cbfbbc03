// Work is saved as a copy, a file, and taken back from one.

async function saveCopy() {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([await log.text()], { type: "text/plain" }));
  link.download = `closingside-${new Date().toISOString().slice(0, 10)}.txt`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}

const COPY = (4 << 20) + 8; // bytes of a file that are read: the engine refuses one as long as that

document.addEventListener("change", async ({ target }) => {
  if (target.type !== "file" || !target.files.length) return;
  const told = byId("brought");
  told.textContent = ""; // so that the same words twice are read twice
  const copy = await target.files[0].slice(0, COPY).text().catch(() => null);
  target.value = ""; // the same file may be chosen again
  await take(async () => { told.textContent = copy !== null && await takeBack(copy) || told.dataset.failed; });
});

// takeBack takes what is in a copy and not in the log, and resolves to what is said of it; null where it
// could not be taken. The engine says which lines those are, and where they belong.
async function takeBack(copy) {
  const records = await log.records();
  const reply = call?.([stamp({ do: "bring", lines: records.length }), ...records.map((r) => r.line), copy].join("\n")) ?? null;
  let said = null;
  if (reply !== null) {
    const answer = document.createElement("template");
    answer.innerHTML = reply;
    const lines = [...answer.content.querySelectorAll(".bring")];
    const kept = await log.takeAll(lines.map((l) => ({ kind: "line", line: l.getAttribute("value"), before: records[l.dataset.before]?.id })));
    if (kept) said = answer.content.querySelector("#brought").textContent;
    if (kept && lines.length) others?.postMessage("appended");
  }
  await bringBack(); // also what another tab did, which the log has told here and not to the engine
  return said;
}
