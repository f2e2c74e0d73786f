import { drawing } from "./drawing.js";
import { element } from "./element.js";
import { fraction } from "./fraction.js";
import { unbroken } from "./unbroken.js";

/** One piece to cut, as large as the screen allows: the length, how the saw is set, the drawing. */
export function piece(each) {
  return element(
    "article",
    { class: "piece" },
    element(
      "div",
      { class: "piece-head" },
      element("h2", { class: "piece-name" }, each.name),
      element("p", { class: "piece-place" }, each.place),
      each.left > 0
        ? element("p", { class: "piece-left" }, `${each.left} of ${each.count} to cut${spoiled(each)}`)
        : null,
      each.told ? element("p", { class: "piece-told" }, each.told) : null,
    ),
    each.left > 0 || each.wrong
      ? null
      : element("p", { class: "piece-done" }, each.isLast ? "All pieces cut" : "All cut"),
    fraction(each.length, "fraction-giant"),
    each.length.dropped_text ? element("p", { class: "small-print" }, each.length.dropped_text) : null,
    each.mark ? element("p", { class: "entry-mark" }, each.mark) : null,
    each.wrong ? element("p", { class: "piece-wrong" }, unbroken(each.wrong)) : null,
    each.ends ? ends(each.ends) : null,
    each.drawing ? drawing(each.drawing) : null,
  );
}

const spoiled = ({ spoiled: n }) => (n > 0 ? `, ${n} spoiled` : "");

const ends = ({ left, right }) =>
  element(
    "dl",
    { class: "ends" },
    [
      ["Left end", left],
      ["Right end", right],
    ].map(([label, end]) =>
      element("div", {}, element("dt", {}, label), element("dd", {}, `${end.cut}${end.angle ? `, ${end.angle}` : ""}`)),
    ),
  );
