// The sketch: what is dragged over a drawing is shown as it goes, and where it began and ended, in the
// drawing's own coordinates, is written into the form's fields, which is then submitted. What it means is
// the engine's to say. And the figure builds itself up, step by step, where motion is welcome.

{
  const STEP = 8; // of the drawing, for one press of an arrow key
  let drag = null; // what is under way: {svg, form, held, from, to, pointer}

  const fields = (form) => form.elements;
  const place = (svg, { clientX, clientY }) => new DOMPoint(clientX, clientY).matrixTransform(svg.getScreenCTM().inverse());
  const numbers = (text) => text.split(" ").map(Number);

  function begin(target, from, pointer) {
    const svg = target.closest("svg");
    const grip = target.closest("[data-grip]"), corner = target.closest("[data-corner]");
    if (corner) { const [x, y] = numbers(corner.dataset.corner); from = { x, y }; }
    drag = { svg, form: svg.closest("form"), grip, from, to: from, pointer };
    drag.form.classList.add("dragging");
  }

  // show moves what is held, or stretches the line that is drawn.
  function show() {
    const { svg, grip, from, to } = drag, x = to.x - from.x, y = to.y - from.y;
    let ends = [[to.x, to.y]];
    if (grip) {
      const [ax, ay, bx, by] = numbers(grip.dataset.ends);
      ends = [[ax + x, ay + y], [bx + x, by + y]];
      for (const part of [grip, ...svg.querySelectorAll(`[data-name="${CSS.escape(grip.dataset.grip)}"]`)]) part.setAttribute("transform", `translate(${x} ${y})`);
    } else {
      const band = svg.querySelector(".f-band");
      for (const [name, value] of Object.entries({ x1: from.x, y1: from.y, x2: to.x, y2: to.y })) band.setAttribute(name, value);
    }
    for (const corner of svg.querySelectorAll("[data-corner]")) {
      const [cx, cy] = numbers(corner.dataset.corner);
      const reach = grip ? 22 : corner.getBBox().width / 2;
      corner.classList.toggle("near", Math.hypot(x, y) > 12 && ends.some(([ex, ey]) => Math.hypot(ex - cx, ey - cy) < reach));
    }
  }

  function cancel() {
    if (!drag) return;
    drag.to = drag.from;
    show();
    drag.form.classList.remove("dragging");
    drag = null;
  }

  function drop() {
    const { form, grip, from, to } = drag;
    const at = (v) => v.toFixed(1);
    Object.entries({ held: grip?.dataset.grip || "", x0: at(from.x), y0: at(from.y), x1: at(to.x), y1: at(to.y) })
      .forEach(([name, value]) => { fields(form)[name].value = value; });
    form.classList.remove("dragging");
    drag = null;
    form.requestSubmit();
  }

  document.addEventListener("pointerdown", (event) => {
    const target = event.target.closest?.("[data-grip], [data-corner]");
    if (!target || event.button || drag?.pointer !== undefined) return;
    cancel();
    begin(target, place(target.closest("svg"), event), event.pointerId);
    drag.svg.setPointerCapture?.(event.pointerId);
  });
  document.addEventListener("pointermove", (event) => {
    if (drag?.pointer !== event.pointerId) return;
    drag.to = place(drag.svg, event);
    show();
  });
  document.addEventListener("pointerup", (event) => {
    if (drag?.pointer !== event.pointerId) return;
    const near = drag.svg.querySelector("[data-corner].near"); // a line that ends on a ring ends at its corner
    if (near && !drag.grip) { const [x, y] = numbers(near.dataset.corner); drag.to = { x, y }; }
    if (Math.hypot(drag.to.x - drag.from.x, drag.to.y - drag.from.y) < 6) cancel(); else drop();
  });
  document.addEventListener("pointercancel", (event) => { if (drag?.pointer === event.pointerId) cancel(); });
  document.addEventListener("touchmove", (event) => { if (drag?.pointer !== undefined && event.cancelable) event.preventDefault(); }, { passive: false });

  // By keys: arrow keys move the arrow in use and Enter puts it down; Enter at a corner begins the closing
  // side and Enter at another ends it; Escape leaves things as they were.
  const ways = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  document.addEventListener("keydown", (event) => {
    const target = event.target.closest?.("[data-grip], [data-corner]");
    if (event.key === "Escape" && drag) { cancel(); return; }
    if (!target || event.altKey || event.ctrlKey || event.metaKey) return;
    const way = ways[event.key], go = event.key === "Enter" || event.key === " ";
    if (!way && !go) return;
    event.preventDefault();
    if (target.dataset.grip !== undefined) {
      if (way && drag?.grip !== target) { cancel(); begin(target, { x: 0, y: 0 }); }
      if (way) {
        const step = event.shiftKey ? 1 : STEP;
        drag.to = { x: drag.to.x + way[0] * step, y: drag.to.y + way[1] * step };
        show();
      } else if (drag?.grip === target) drop();
      return;
    }
    const all = [...target.closest("svg").querySelectorAll("[data-corner]")];
    if (way) {
      all[(all.indexOf(target) + (way[0] + way[1] > 0 ? 1 : all.length - 1)) % all.length].focus();
    } else if (drag && !drag.grip) {
      drop();
    } else {
      begin(target, null);
    }
  });
  document.addEventListener("focusin", ({ target }) => {
    if (drag?.pointer !== undefined || !drag) return;
    if (drag.grip) { if (target !== drag.grip) cancel(); return; }
    if (target.dataset?.corner === undefined) { cancel(); return; }
    const [x, y] = numbers(target.dataset.corner);
    drag.to = { x, y };
    show();
  });
}

// build shows a figure step by step: each part appears after the one before it, and a force that was moved
// comes from where it was.
function build(svg) {
  if (!svg || matchMedia("(prefers-reduced-motion: reduce)").matches) return;
  svg.classList.remove("f-build");
  void svg.getBoundingClientRect(); // so that it begins again
  svg.classList.add("f-build");
  for (const part of svg.querySelectorAll("[data-shift]")) {
    const [x, y] = part.dataset.shift.split(" ");
    const delay = 300 * Number(part.dataset.step);
    part.animate([{ transform: `translate(${x}px, ${y}px)` }, { transform: `translate(${x}px, ${y}px)`, offset: 0.35 }, { transform: "none" }], { duration: 700, delay, easing: "ease-in-out", fill: "backwards" });
  }
}
