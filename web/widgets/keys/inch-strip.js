import { element, svgElement } from "../element.js";

const WIDTH = 344;
const HEIGHT = 60;
const WORDS_FROM_EDGE = 28;
const WORDS_APART = 46;

/**
 * An inch drawn large: touch the mark that you see on your tape, slide to adjust. The core sends
 * the marks; `onPick(mark)` hears of each one under the finger, `step(by)` and the arrow keys go
 * one mark on or back from the one that stands in the field.
 * @param {() => string} standing the text of that mark, "" when there is none
 * @returns {{node, step(by), refresh()}}
 */
export function inchStrip(strip, { standing, onPick }) {
  const marks = strip.marks;
  const x = (mark) => mark.at * WIDTH;
  const cursor = svgElement("line", { class: "strip-cursor", y1: 0, y2: HEIGHT, hidden: true });
  const spelled = svgElement("text", { class: "strip-spelled", y: HEIGHT - 6, "text-anchor": "middle", hidden: true });
  const labels = marks
    .filter((mark) => mark.label)
    .map((mark) => ({
      at: x(mark),
      node: svgElement(
        "text",
        { class: "strip-label", x: x(mark), y: HEIGHT - 6, "text-anchor": "middle" },
        mark.label,
      ),
    }));
  const picture = svgElement(
    "svg",
    { class: "strip-picture", viewBox: `0 0 ${WIDTH} ${HEIGHT}`, "aria-hidden": "true" },
    marks.map((mark) =>
      svgElement("line", { class: "tape-tick", x1: x(mark), x2: x(mark), y1: 0, y2: 8 + mark.size * 30 }),
    ),
    labels.map(({ node }) => node),
    cursor,
    spelled,
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
      onfocus: () => draw(at()),
      onpointerdown: touched,
      onpointermove: (event) => event.buttons && touched(event),
      onkeydown: (event) => {
        const by = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key];
        if (!by) return;
        event.preventDefault();
        made.step(by);
      },
    },
    picture,
  );

  /** Which mark stands in the field; the first one, which writes nothing, where none does. */
  const at = () =>
    Math.max(
      0,
      marks.findIndex((mark) => mark.text && mark.text === standing()),
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
    if (next !== at()) onPick(marks[next]);
    draw(next);
  }

  function draw(now) {
    const mark = marks[now];
    for (const each of [cursor, spelled]) each.toggleAttribute("hidden", !mark.text);
    cursor.setAttribute("x1", x(mark));
    cursor.setAttribute("x2", x(mark));
    const middle = Math.min(WIDTH - WORDS_FROM_EDGE, Math.max(WORDS_FROM_EDGE, x(mark)));
    spelled.setAttribute("x", middle);
    // Half of a 1/2 beside a 9/16 would read as 1 9/16.
    for (const label of labels) {
      label.node.toggleAttribute("hidden", Boolean(mark.text) && Math.abs(label.at - middle) < WORDS_APART);
    }
    spelled.textContent = mark.text ?? "";
    node.setAttribute("aria-valuenow", now);
    node.setAttribute("aria-valuetext", mark.words);
  }

  const made = {
    node,
    step: (by) => pick(Math.min(marks.length - 1, Math.max(0, at() + by))),
    /** The field says something else now. */
    refresh: () => draw(at()),
  };
  made.refresh();
  return made;
}
