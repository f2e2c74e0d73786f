import { button, element } from "../element.js";
import { partSize } from "../numbers/part-size.js";
import { drawing } from "../pictures/drawing.js";
import { showTouched } from "../pictures/part-touch.js";

/** @import { Case, CasePart, Piece } from "../../python/contract.d.ts" */

/** How high a view gets, so that its part stays in sight below it. */
export const HIGH = 300;

/**
 * A case from one side at a time; a part that is touched is shown in every view and told below, with what opens its line.
 * @param {Case} told
 * @param {object} how
 * @param {Piece[]} how.pieces those of the project
 * @param {{view: string, part: string}} how.shown what is looked at, kept by who draws it
 * @param {(part: CasePart) => void} how.open
 */
export function caseDrawing({ name, parts, views, note }, { pieces, shown, open }) {
  const picture = element("div", { class: "case-picture" });
  const about = element("div", { class: "case-part", "aria-live": "polite" });
  const opener = button("Open its line", openTouched);
  const tabs = views.map(({ key, title }) => button(title, () => look(key), { "data-view": key }));
  const partOf = (/** @type {string} */ key) => parts.find((each) => each.key === key);

  /** @param {string} key */
  function labelOf(key) {
    const part = partOf(key);
    const piece = part && pieceOf(part, pieces);
    return piece ? `${piece.name}, ${piece.count}×, ${partSize(piece)}` : "";
  }

  /** @param {string} key */
  function look(key) {
    const view = views.find((each) => each.key === key) ?? views[0];
    shown.view = view.key;
    for (const tab of tabs) tab.setAttribute("aria-pressed", String(tab.dataset.view === view.key));
    picture.replaceChildren(drawing(view.drawing, { high: HIGH, parts: { labelOf, open: touch } }));
    touch(shown.part);
  }

  /** @param {string} key */
  function touch(key) {
    shown.part = key;
    showTouched(picture, key);
    const part = partOf(key);
    const piece = part && pieceOf(part, pieces);
    opener.hidden = !piece;
    about.replaceChildren(
      ...(piece ? partTold(part, piece) : [element("p", { class: "help" }, "Touch a part to see its size.")]),
    );
  }

  /**
   * @param {CasePart} part
   * @param {Piece} piece
   */
  function partTold(part, piece) {
    const isSeen = picture.querySelector(`.part-touch[data-part="${part.key}"]`);
    return [
      element(
        "p",
        { class: "part-name" },
        element("span", { class: "case-letter" }, part.letter),
        `${piece.count} × ${piece.name}`,
      ),
      element("p", { class: "part-size" }, partSize(piece)),
      isSeen ? "" : element("p", { class: "help" }, "Not seen in this view."),
    ];
  }

  /** The part after or before the one that is told, or the first. @param {number} by */
  function step(by) {
    const at = parts.findIndex((each) => each.key === shown.part);
    touch(parts[at < 0 ? 0 : (at + by + parts.length) % parts.length].key);
  }

  function openTouched() {
    const part = partOf(shown.part);
    if (part) open(part);
  }

  look(shown.view);
  return element(
    "div",
    { class: "case-drawing", role: "group", "aria-label": `Drawing of ${name}` },
    element("div", { class: "button-row case-views", role: "group", "aria-label": "View" }, tabs),
    picture,
    about,
    element(
      "div",
      { class: "button-row" },
      button("‹", () => step(-1), { "aria-label": "Part before" }),
      button("›", () => step(1), { "aria-label": "Next part" }),
      opener,
    ),
    note ? element("p", { class: "help" }, note) : null,
  );
}

/**
 * @param {CasePart} part
 * @param {Piece[]} pieces
 */
export const pieceOf = ({ entry, part }, pieces) => pieces.find((each) => each.entry === entry && each.part === part);
