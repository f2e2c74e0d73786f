import { element, svgElement } from "./element.js";

const WIDTH = 344;
const HEIGHT = 60;

/**
 * An inch drawn large: touch the mark that you see on your tape, slide to adjust. The core sends
 * the marks; `onPick(mark)` hears of each one under the finger, `step(by)` and the arrow keys go
 * one mark on or back.
 * @returns {{node, step(by), clear()}}
 */
export function inchStrip(strip, onPick) {
  const marks = strip.marks;
  let at = -1;
  const x = (mark) => mark.at * WIDTH;
  const cursor = svgElement("line", { class: "strip-cursor", y1: 0, y2: HEIGHT, hidden: true });
  const picture = svgElement(
    "svg",
    { class: "strip-picture", viewBox: `0 0 ${WIDTH} ${HEIGHT}`, "aria-hidden": "true" },
    marks.map((mark) =>
      svgElement("line", { class: "tape-tick", x1: x(mark), x2: x(mark), y1: 0, y2: 8 + mark.size * 30 }),
    ),
    marks
      .filter((mark) => mark.label)
      .map((mark) =>
        svgElement("text", { class: "strip-label", x: x(mark), y: HEIGHT - 6, "text-anchor": "middle" }, mark.label),
      ),
    cursor,
  );
  const node = element(
    "div",
    {
      class: "strip",
      role: "slider",
      tabindex: "0",
      "aria-label": strip.words,
      "aria-valuemin": 0,
      "aria-valuemax": marks.length - 1,
      "aria-valuenow": 0,
      onpointerdown: touched,
      onpointermove: (event) => event.buttons && touched(event),
      onkeydown: (event) => {
        const by = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key];
        if (!by) return;
        event.preventDefault();
        step(by);
      },
    },
    picture,
  );

  function touched(event) {
    event.preventDefault();
    node.setPointerCapture(event.pointerId);
    const box = node.getBoundingClientRect();
    const part = (event.clientX - box.left) / box.width;
    let nearest = 0;
    marks.forEach((mark, each) => {
      if (Math.abs(mark.at - part) < Math.abs(marks[nearest].at - part)) nearest = each;
    });
    pick(nearest);
  }

  function pick(next) {
    if (next === at) return;
    at = next;
    const mark = marks[at];
    cursor.removeAttribute("hidden");
    cursor.setAttribute("x1", x(mark));
    cursor.setAttribute("x2", x(mark));
    node.setAttribute("aria-valuenow", at);
    node.setAttribute("aria-valuetext", mark.words);
    onPick(mark);
  }

  const step = (by) => pick(Math.min(marks.length - 1, Math.max(0, at + by)));
  return {
    node,
    step,
    clear: () => {
      at = -1;
      cursor.setAttribute("hidden", "");
    },
  };
}
