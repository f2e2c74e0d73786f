import { button, element, firstIn } from "../element.js";

/** @typedef {{name: string, state: "filled" | "next" | "fill" | "waits", waitsFor: string, open(): void}} Step */

/**
 * A row of steps, each a touch away from where it is filled in: what is done, what is next, what waits. The next one is
 * in sight; what has no room is reached by the buttons at the ends.
 * @param {Step[]} steps
 */
export function stepRow(steps) {
  const list = element("ol", { class: "steps-list", "aria-label": "To fill in" }, steps.map(step));
  const turn = (/** @type {number} */ way) => () => list.scrollBy({ left: way * list.clientWidth * 0.8 });
  const aside = (/** @type {string} */ sign, /** @type {string} */ label, /** @type {number} */ way) =>
    button(sign, turn(way), { class: "button quiet steps-turn", "aria-label": label });
  const [back, on] = [aside("‹", "Steps before", -1), aside("›", "Steps after", 1)];

  /** Once it has its width: nothing is to be turned where all of it is in sight. */
  function settle() {
    const isWhole = list.scrollWidth <= list.clientWidth + 1;
    back.hidden = on.hidden = isWhole;
    const next = firstIn(list, "[aria-current]");
    if (next) list.scrollLeft = next.offsetLeft - list.offsetLeft - (list.clientWidth - next.offsetWidth) / 2;
  }

  new ResizeObserver(settle).observe(list);
  return element("nav", { class: "steps", "aria-label": "Steps" }, back, list, on);
}

/** @param {Step} each */
function step({ name, state, waitsFor, open }) {
  const isNext = state === "next";
  return element(
    "li",
    {},
    element(
      "button",
      {
        type: "button",
        class: `button to-fill to-fill-${state} ${isNext ? "primary" : ""}`,
        "aria-current": isNext ? "step" : null,
        "aria-label": IN_WORDS[state](name, waitsFor),
        onclick: open,
      },
      element("span", { class: "to-fill-name" }, isNext ? `Next: ${name}` : name),
      element("span", { class: "to-fill-state" }, SHORT[state](waitsFor)),
    ),
  );
}

/** @type {Record<Step["state"], (name: string, waitsFor: string) => string>} */
const IN_WORDS = {
  filled: (name) => `${name}, filled in`,
  next: (name) => `Next: ${name}`,
  fill: (name) => `${name}, to fill in`,
  waits: (name, waitsFor) => `${name}, waits for ${waitsFor}`,
};

/** @type {Record<Step["state"], (waitsFor: string) => string>} */
const SHORT = {
  filled: () => "✓ filled in",
  next: () => "",
  fill: () => "to fill in",
  waits: (waitsFor) => `waits for ${waitsFor}`,
};
