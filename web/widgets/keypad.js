import { element } from "./element.js";
import { LAYOUTS, WRITES } from "./key-layouts.js";
import { backspace, write } from "./typing.js";

/** What a screen reader calls a key whose label does not say it. */
const NAMES = {
  "+": "plus",
  "−": "minus",
  "×": "times",
  "÷": "divided by",
  "/": "over, for a fraction",
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
  more: "more signs",
  again: "again, repeat the last step",
  kerf: "subtract a kerf",
};

/**
 * Large keys that write into the field `target()`.
 * @param {string} layout one of LAYOUTS
 * @param {Record<string, () => void>} acts what the keys that do not write do, by their label
 */
export function keypad(layout, target, acts = {}) {
  const { columns, layers } = LAYOUTS[layout];
  const node = element("div", { class: `keypad keypad-${columns}`, role: "group", "aria-label": "Keypad" });
  const signs = Object.values(WRITES);

  function show(layer) {
    const own = {
      "⌫": () => backspace(target(), signs),
      more() {
        show(1 - layer);
        node.querySelector(".key-more").focus();
      },
      ...acts,
    };
    node.replaceChildren(
      ...layers[layer].map((label) => key(label, own[label] ?? (() => write(target(), WRITES[label] ?? label)), layer)),
    );
  }

  show(0);
  return node;
}

function key(label, onclick, layer) {
  const look = /^\d$/.test(label) ? "" : label.length > 1 ? "key-sign key-word" : "key-sign";
  const own = { more: "key-more", Enter: "key-enter", Next: "key-enter" }[label] ?? "";
  return element(
    "button",
    {
      type: "button",
      class: `key ${look} ${own}`,
      "aria-label": NAMES[label] ?? label,
      "aria-pressed": label === "more" ? String(layer === 1) : null,
      // The caret stays in the field: a key never takes the focus.
      onpointerdown: (event) => event.preventDefault(),
      onclick,
    },
    label,
  );
}
