import { element } from "../element.js";

/**
 * What a screen reader calls a key whose label does not say it.
 * @type {Record<string, string>}
 */
const NAMES = {
  "+": "plus",
  "−": "minus",
  "×": "times",
  "÷": "divided by",
  "/": "slash, for a fraction",
  "′": "feet",
  "″": "inches",
  ".": "point",
  "°": "degrees",
  "(": "open parenthesis",
  ")": "close parenthesis",
  mm: "mm, millimeters",
  cm: "cm, centimeters",
  "⌫": "delete",
  "‹": "one mark less",
  "›": "one mark more",
  more: "more keys",
  123: "digits",
  again: "again, repeat the last step",
  kerf: "subtract a kerf",
  project: "pick a number from the project",
};

/** Signs so small that they are drawn larger than others. */
const PRIMES = new Set(["′", "″"]);

/** @type {Record<string, string>} */
const LOOKS = { more: "key-turn", 123: "key-turn", Enter: "key-enter", Next: "key-enter" };

/** @param {string} label */
function lookOf(label) {
  if (/^\d$/.test(label)) return "";
  if (label === ".") return "key-point";
  if (label.length > 1) return "key-sign key-word";
  return PRIMES.has(label) ? "key-sign key-prime" : "key-sign";
}

/**
 * One key; `relabel` makes another one of it in its place.
 * @param {string} label
 * @param {() => void} onclick
 */
export function key(label, onclick) {
  const node = element("button", {
    type: "button",
    // The caret stays in the field: a key never takes the focus.
    onpointerdown: (/** @type {PointerEvent} */ event) => event.preventDefault(),
    onclick,
  });
  relabel(node, label);
  return node;
}

/**
 * @param {HTMLButtonElement} node a key
 * @param {string} label
 */
export function relabel(node, label) {
  if (node.textContent === label) return;
  node.textContent = label;
  node.className = `key ${lookOf(label)} ${LOOKS[label] ?? ""}`;
  node.setAttribute("aria-label", NAMES[label] ?? label);
}
