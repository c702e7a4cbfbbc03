"use strict";
// Fetches and compiles the engine while the page is still being read: on a phone the longest wait.
// Published as one script: this file, Go's wasm_exec.js, log.js, loader.js, sketch.js.

const engineModule = (({ engine }) => {
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

// parsed: the whole page is there.
const parsed = new Promise((done) => { document.addEventListener("DOMContentLoaded", done, { once: true }); });
