import { element, firstIn } from "../element.js";
import { ENDING, LAYOUTS, WRITES } from "./key-layouts.js";
import { backspace, write } from "./typing.js";

/** What a screen reader calls a key whose label does not say it. */
/** @type {Record<string, string>} */
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

/**
 * Large keys that write into the field `target()`. A key that ends what was being typed leads back
 * to the digits.
 * @param {keyof typeof LAYOUTS} layout
 * @param {() => HTMLInputElement} target
 * @param {Record<string, () => void>} acts what the keys that do not write do, by their label
 */
export function keypad(layout, target, acts = {}) {
  const { columns, layers } = LAYOUTS[layout];
  const node = element("div", { class: `keypad keypad-${columns}`, role: "group", "aria-label": "Keypad" });
  const signs = Object.values(WRITES);

  /** @param {number} layer */
  function show(layer) {
    /** @type {Record<string, () => void>} */
    const own = {
      "⌫": () => backspace(target(), signs),
      more: () => turn(1),
      123: () => turn(0),
      ...acts,
    };
    const press = (/** @type {string} */ label) => () => {
      if (own[label]) own[label]();
      else write(target(), WRITES[label] ?? label);
      if (layer !== 0 && ENDING.has(label)) turn(0);
    };
    node.replaceChildren(...layers[layer].map((label) => key(label, press(label))));
  }

  /**
   * Show a layer; who walks the keys with a keyboard stays on them.
   * @param {number} layer
   */
  function turn(layer) {
    const walked = node.contains(document.activeElement);
    show(layer);
    if (walked) firstIn(node, ".key-turn")?.focus();
  }

  show(0);
  return node;
}

/** @param {string} label */
function lookOf(label) {
  if (/^\d$/.test(label)) return "";
  if (label.length > 1) return "key-sign key-word";
  return PRIMES.has(label) ? "key-sign key-prime" : "key-sign";
}

/** @type {Record<string, string>} */
const LOOK = { more: "key-turn", 123: "key-turn", Enter: "key-enter", Next: "key-enter" };

/**
 * @param {string} label
 * @param {() => void} onclick
 */
function key(label, onclick) {
  return element(
    "button",
    {
      type: "button",
      class: `key ${lookOf(label)} ${LOOK[label] ?? ""}`,
      "aria-label": NAMES[label] ?? label,
      // The caret stays in the field: a key never takes the focus.
      onpointerdown: (/** @type {PointerEvent} */ event) => event.preventDefault(),
      onclick,
    },
    label,
  );
}
