import { button } from "../../widgets/element.js";
import { isToMend, mendingKey, wrongs } from "./saw-mending.js";

/** @import { Piece } from "../../python/contract.d.ts" */
/** @import { SawAct } from "./saw-mending.js" */

/** @typedef {(() => unknown) | null | undefined} Way what a key does; nothing where it is off */

/**
 * The keys under the thumb; the main one is what comes next at this piece.
 * @param {Piece} each the piece
 * @param {SawAct} act an act on it
 * @param {{back: Way, next: Way, following: Way, undo: Way}} ways `back`, `next` and `following` lead to other pieces, `undo` takes the last act back;
 *   null where there is none
 */
export function sawKeys(each, act, { back, next, following, undo }) {
  /**
   * @param {string} label
   * @param {Way} run
   * @param {string} [look]
   */
  const key = (label, run, look = "") =>
    button(label, () => run?.(), { class: `button saw-key ${look}`, disabled: !run, "data-key": label });
  return [
    key("‹ Back", back),
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
    return key("Next uncut", following, look);
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
