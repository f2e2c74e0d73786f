import { element } from "./element.js";
import { backspace, write } from "./typing.js";

/** What a key writes and what it is called; a key that is not here writes its own label. */
const KEYS = {
  "+": { writes: " + ", name: "plus" },
  "−": { writes: " − ", name: "minus" },
  "×": { writes: " × ", name: "times" },
  "÷": { writes: " ÷ ", name: "divided by" },
  of: { writes: " of ", name: "of" },
  "/": { name: "over, for a fraction" },
  "′": { name: "feet" },
  "″": { name: "inches" },
  ".": { name: "point" },
  "°": { name: "degrees" },
  "(": { name: "open parenthesis" },
  ")": { name: "close parenthesis" },
  space: { writes: " ", name: "space" },
  mm: { writes: " mm", name: "millimeters" },
  cm: { writes: " cm", name: "centimeters" },
};

const rows = (text) => text.trim().split(/\s+/);

/** The keys, row by row. A length has a second layer of rarer signs behind `more`. */
const LAYOUTS = {
  inch: {
    columns: 5,
    layers: [
      rows("7 8 9 ⌫ +  4 5 6 / −  1 2 3 space ×  more 0 ′ ‹ ›"),
      rows("7 8 9 ⌫ ÷  4 5 6 of (  1 2 3 space )  more 0 . ″ mm"),
    ],
  },
  metric: {
    columns: 5,
    layers: [
      rows("7 8 9 ⌫ +  4 5 6 / −  1 2 3 space ×  more 0 . ‹ ›"),
      rows("7 8 9 ⌫ ÷  4 5 6 of (  1 2 3 space )  more 0 ′ ″ cm"),
    ],
  },
  angle: { columns: 4, layers: [rows("7 8 9 ⌫  4 5 6 /  1 2 3 space  . 0 °")] },
  count: { columns: 4, layers: [rows("7 8 9 ⌫  4 5 6 0  1 2 3")] },
};

/**
 * Large keys that write into the field `target()`.
 * @param {string} layout one of LAYOUTS
 * @param {(by: number) => void} onStep the keys ‹ and › go one mark on the strip back or on
 */
export function keypad(layout, target, onStep) {
  const { columns, layers } = LAYOUTS[layout];
  const node = element("div", { class: `keypad keypad-${columns}`, role: "group", "aria-label": "Keypad" });
  const show = (layer) => node.replaceChildren(...layers[layer].map((label) => key(label, layer)));

  function key(label, layer) {
    const acts = {
      "⌫": ["delete", () => backspace(target(), Object.values(KEYS).map((each) => each.writes))],
      "‹": ["one mark less", () => onStep(-1)],
      "›": ["one mark more", () => onStep(1)],
      more: ["more signs", () => (show(1 - layer), node.querySelector(".key-more").focus())],
    };
    const [name, act] = acts[label] ?? [KEYS[label]?.name ?? label, () => write(target(), KEYS[label]?.writes ?? label)];
    const look = /^\d$/.test(label) ? "" : label.length > 1 ? "key-sign key-word" : "key-sign";
    return element(
      "button",
      {
        type: "button",
        class: `key ${look} ${label === "more" ? "key-more" : ""}`,
        "aria-label": name,
        "aria-pressed": label === "more" ? String(layer === 1) : null,
        // The caret stays in the field: a key never takes the focus.
        onpointerdown: (event) => event.preventDefault(),
        onclick: act,
      },
      label,
    );
  }

  show(0);
  return node;
}
