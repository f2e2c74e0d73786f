import { element } from "../element.js";
import { brief, partSize } from "../numbers/part-size.js";
import { unbroken } from "../numbers/unbroken.js";
import { drawing } from "../pictures/drawing.js";
import { caseSheet } from "./case-sheet.js";
import { planSheet } from "./plan-sheet.js";
import { stepsSheet } from "./steps-sheet.js";

/** @import { CutGroup, End, Entry, Piece, PieceAt, View } from "../../python/contract.d.ts" */
/** @import { Child, Shown } from "../widget.d.ts" */

/**
 * A project as one list for the shop: pieces to tick off by length, their drawings, lines and readings.
 * @param {View} view
 */
export function shopSheet(view) {
  const readings = view.entries.filter((entry) => entry.kind === "reading");
  const lines = view.entries.filter((entry) => entry.kind === "line");
  const notes = view.entries.filter((entry) => entry.kind === "note");
  /** @param {PieceAt} place */
  const pieceOf = ({ entry, part }) => view.pieces.filter((piece) => piece.entry === entry && piece.part === part);
  return element(
    "article",
    { class: "shop-sheet" },
    element("h3", { class: "shop-name" }, view.name),
    section(
      "Cuts by stop",
      view.set_ups.map((group) => cutsAt(group, group.pieces.flatMap(pieceOf))),
    ),
    ...view.cases.map((told) => caseSheet(told, view.pieces)),
    view.plan ? planSheet(view.plan) : null,
    section("Parts", view.pieces.map(part)),
    section("Steps", (view.check_lists ?? []).map(stepsSheet)),
    section("Answers", lines.map(told)),
    section("Readings", readings.map(told)),
    section("Notes", notes.map(note)),
  );
}

/**
 * @param {string} title
 * @param {Child[]} rows
 */
const section = (title, rows) =>
  rows.length ? element("section", { class: "shop-section" }, element("h4", {}, title), element("ul", {}, rows)) : null;

/**
 * What is cut at one setting of the stop, a box for each piece.
 * @param {CutGroup} group
 * @param {Piece[]} pieces
 */
const cutsAt = ({ setting, waits }, pieces) =>
  element(
    "li",
    { class: "shop-row" },
    setting ? length(setting) : null,
    waits ? element("strong", {}, waits) : null,
    element(
      "ul",
      { class: "shop-cuts" },
      pieces.map((piece) =>
        element(
          "li",
          {},
          element("span", { class: "shop-title" }, piece.name),
          element("span", {}, [piece.length_along, ends(piece)].filter(Boolean).join(", ")),
          wrongOf(piece).map((said) => element("strong", {}, said)),
          boxes(piece),
        ),
      ),
    ),
  );

/**
 * A ticked box must not hide that a piece was cut to what is no longer asked.
 * @param {Piece} piece
 */
const wrongOf = ({ verdicts }) => verdicts.filter(({ verdict }) => verdict !== "good").map(({ said }) => said);

/** @param {Piece} piece */
const part = (piece) =>
  element(
    "li",
    { class: "shop-row" },
    piece.drawing ? element("div", { class: "shop-drawing" }, drawing(piece.drawing)) : null,
    element(
      "div",
      {},
      element("p", { class: "shop-title" }, `${piece.name}, ${piece.count}×`),
      element("p", {}, partSize(piece)),
      element("p", {}, [piece.material, piece.place].filter(Boolean).join(", ") || piece.from),
      ...(piece.about ?? []).map((line) => element("p", {}, unbroken(line))),
    ),
  );

/** @param {Entry} entry */
const told = (entry) =>
  element(
    "li",
    { class: "shop-row" },
    entry.headline ? length(entry.headline) : null,
    element(
      "div",
      {},
      element("p", { class: "shop-title" }, entry.name),
      element("p", {}, unbroken(entry.error ? entry.error.message : aside(entry))),
    ),
  );

/** @param {Entry} entry */
const note = (entry) => element("li", { class: "shop-note" }, entry.text);

/** @param {Entry} entry */
const aside = (entry) =>
  [entry.kind === "line" ? entry.title : null, summary(entry), entry.where, entry.when?.replace("T", " ")]
    .filter(Boolean)
    .join(", ");

/**
 * What it was worked out from, where the number beside it does not say the same.
 * @param {Entry} entry
 */
const summary = ({ summary: said, headline }) => (said === headline?.text ? null : said);

/** @param {Shown} value */
const length = (value) => element("strong", { class: "shop-length" }, brief(value));

/** @param {Piece} piece */
const ends = ({ ends: both }) => {
  if (!both) return "";
  const [left, right] = [end(both.left), end(both.right)];
  return left === right ? `both ends ${left}` : `left ${left}, right ${right}`;
};

/** @param {End} end */
const end = ({ cut, angle }) => (angle ? `${cut} ${angle}` : cut);

/**
 * A box for each piece, ticked where it is cut.
 * @param {Piece} piece
 */
const boxes = (piece) =>
  element(
    "span",
    { class: "shop-boxes", role: "img", "aria-label": `${piece.cut} of ${piece.count} cut` },
    Array.from({ length: piece.count }, (_, at) => element("span", { class: at < piece.cut ? "box ticked" : "box" })),
  );
