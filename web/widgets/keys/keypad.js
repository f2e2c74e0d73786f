import { element, firstIn } from "../element.js";
import { key, relabel } from "./key.js";
import { LAYOUTS, NONE, WHILE_BLANK, WRITES } from "./key-layouts.js";
import { backspace, write } from "./typing.js";

/** @import { Keys } from "../widget.d.ts" */

const SIGNS = Object.values(WRITES);

/**
 * Large keys that write into the field `target()`; `refresh` is called when that says something else.
 * @param {keyof typeof LAYOUTS} layout
 * @param {() => HTMLInputElement} target
 * @param {Record<string, () => void>} acts what the keys that do not write do, by their label
 * @returns {Keys}
 */
export function keypad(layout, target, acts = {}) {
  const { columns, layers } = LAYOUTS[layout];
  const node = element("div", { class: `keypad keypad-${columns}`, role: "group", "aria-label": "Keypad" });
  /** @type {Record<string, () => void>} */
  const own = {
    "⌫": () => backspace(target(), SIGNS),
    more: () => turn(1),
    123: () => turn(0),
    ...acts,
  };
  /** @type {() => void} */
  let refresh = () => {};
  let shown = 0;

  /** @param {string} label */
  function press(label) {
    const isRare = shown !== 0 && label !== "⌫";
    if (own[label]) own[label]();
    else write(target(), WRITES[label] ?? label);
    if (isRare) turn(0);
  }

  /**
   * The label by which a key of a layout goes now.
   * @param {string} label
   */
  function now(label) {
    const other = WHILE_BLANK[label];
    return other && own[other] && shown === 0 && target().value.trim() === "" ? other : label;
  }

  /** @param {number} layer */
  function show(layer) {
    shown = layer;
    const drawn = drawnKeys(layers[layer], now, press);
    node.replaceChildren(...drawn.nodes);
    refresh = drawn.refresh;
  }

  /**
   * Show another layer; who walks the keys with a keyboard stays on them.
   * @param {number} layer
   */
  function turn(layer) {
    if (layer === shown) return;
    const walked = node.contains(document.activeElement);
    show(layer);
    if (walked) firstIn(node, ".key-turn")?.focus();
  }

  show(0);
  return { node, refresh: () => refresh() };
}

/**
 * The keys of one layer. `refresh` relabels in its place each that goes by another label now: a thumb may be on it.
 * @param {string[]} labels
 * @param {(label: string) => string} now
 * @param {(label: string) => void} press
 */
function drawnKeys(labels, now, press) {
  const drawn = labels.map((label) => {
    if (label === NONE) return { node: element("span"), refresh() {} };
    const node = key(now(label), () => press(now(label)));
    return { node, refresh: () => relabel(node, now(label)) };
  });
  return {
    nodes: drawn.map(({ node }) => node),
    refresh() {
      for (const each of drawn) each.refresh();
    },
  };
}
