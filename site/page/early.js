"use strict";
// Fetches and compiles the engine while the page is still being read: on a phone the longest wait.
// A page that is one file holds the engine at its end, packed and written as text.
// Published as one script: this file, Go's wasm_exec.js, log.js, loader.js, copy.js, sketch.js.

// Where the address names what to open, the list in the page is not what was asked for.
document.documentElement.toggleAttribute("data-opening", location.hash.length > 1);

// parsed: the whole page is there.
const parsed = new Promise((done) => { document.addEventListener("DOMContentLoaded", done, { once: true }); });

const engineModule = (({ engine }) => {
  const unpack = async () => {
    await parsed;
    const packed = Uint8Array.from(atob(document.getElementById("engine").textContent), (c) => c.charCodeAt(0));
    const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
    return WebAssembly.compile(await new Response(stream).arrayBuffer());
  };
  if (!engine) return unpack();
  const load = async (cache) => {
    const answer = await fetch(engine, { cache });
    if (!answer.ok) throw new Error(`engine: status ${answer.status}`);
    const type = answer.headers.get("Content-Type") || "";
    if (type.startsWith("application/wasm") && WebAssembly.compileStreaming) {
      return WebAssembly.compileStreaming(answer);
    }
    return WebAssembly.compile(await answer.arrayBuffer()); // hosts that send another type
  };
  return load("default").catch(() => load("reload")); // once more, past what a cache may hold
})(document.currentScript.dataset);
engineModule.catch(() => {}); // looked at when the engine is to start
