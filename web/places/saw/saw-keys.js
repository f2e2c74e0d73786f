import { button } from "../../widgets/element.js";
import { isToMend, mendingKey, wrongs } from "./saw-mending.js";

/** @import { Piece } from "../../python/contract.d.ts" */
/** @import { SawAct } from "./saw-mending.js" */

/** @typedef {(() => unknown) | null | undefined} Way what a key does; nothing where it is off */

/**
 * The keys under the thumb; the main one is what comes next at this piece.
 * @param {Piece} each the piece
 * @param {SawAct} act an act on it
 * @param {{back: Way, next: Way, following: Way, undo: Way, list: Way}} ways `back`, `next` and `following` lead to
 *   other pieces, `list` to all of them, `undo` takes the last act back; null where there is none
 */
export function sawKeys(each, act, { back, next, following, undo, list }) {
  /**
   * @param {string} label
   * @param {Way} run
   * @param {Record<string, unknown>} [more]
   */
  const key = (label, run, { look = "", ...more } = {}) =>
    button(label, () => run?.(), { class: `button saw-key ${look}`, disabled: !run, "data-key": label, ...more });
  return [
    key("‹ Back", back),
    key("List", list, { "aria-label": "List of all pieces" }),
    key("Undo", undo),
    key("Next ›", next),
    key("Scrap", () => act({ act: "spoil" })),
    main(),
  ];

  function main() {
    const look = "primary saw-main";
    if (isToMend(each))
      return mendingKey(wrongs(each)[0], act, { class: `button saw-key ${look}`, "data-key": "mend" });
    if (each.left > 0 || !following) return cutKey(each, act, `saw-key ${look}`);
    return key("Next uncut", following, { look });
  }
}

/**
 * The one that is pressed for each piece.
 * @param {Piece} piece
 * @param {SawAct} act
 * @param {string} look
 */
export const cutKey = ({ left }, act, look) =>
  button("Cut one", () => act({ act: "cut", by: 1 }), {
    class: `button ${look}`,
    disabled: left === 0,
    "data-key": "Cut one",
  });
