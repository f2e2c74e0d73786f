import { element } from "../element.js";
import { briefly } from "../numbers/fraction.js";
import { unbroken } from "../numbers/unbroken.js";

/** @import { Follow, Judged, Other } from "../../python/contract.d.ts" */
/** @import { Shown } from "../widget.d.ts" */

/** So many are read at a glance; more fold behind how many there are. */
const MOST_OPEN = 2;

/**
 * What must be seen first: pieces already cut that are wrong now, in words, and lines that have no answer any more. Then
 * the numbers that change, and the pieces that stay good, folded where they are many.
 * @param {Follow[]} follows
 * @param {Judged[]} judged
 */
export function followed(follows, judged) {
  const [wrong, good] = [judged.filter(isWrong), judged.filter((each) => !isWrong(each))];
  const [failed, moved] = [follows.filter(({ ok }) => !ok), follows.filter(({ ok }) => ok)];
  return [
    wrong.length ? element("h3", {}, "Pieces already cut") : null,
    wrong.length ? element("ul", { class: "judged" }, wrong.map(judgement)) : null,
    failed.length ? element("h3", {}, "No answer now") : null,
    failed.length ? element("ul", { class: "follows" }, failed.map(changedNumber)) : null,
    many(moved.length === 1 ? "1 line changes" : `${moved.length} lines change`, "follows", moved.map(changedNumber)),
    many(
      good.length === 1 ? "1 cut piece to know of" : `${good.length} cut pieces to know of`,
      "judged",
      good.map(judgement),
    ),
  ];
}

/** @param {Judged} judged */
const isWrong = ({ verdict }) => verdict !== "good";

/**
 * @param {string} title how many there are
 * @param {string} look
 * @param {HTMLElement[]} rows
 */
const many = (title, look, rows) =>
  rows.length
    ? element(
        "details",
        { class: "working", open: rows.length <= MOST_OPEN },
        element("summary", {}, title),
        element("ul", { class: look }, rows),
      )
    : null;

/** @param {Judged} judged */
const judgement = ({ verdict, said }) =>
  element("li", { class: `verdict verdict-${verdict.replaceAll(" ", "-")}` }, unbroken(said));

/** @param {Follow} each */
const changedNumber = (each) =>
  element(
    "li",
    { class: "follow" },
    element("strong", { class: "follow-name" }, each.name),
    each.label ? element("span", { class: "follow-label" }, each.label) : null,
    each.error ? element("p", { class: "error" }, `${each.error.message} ${each.error.remedy ?? ""}`) : moved(each),
    each.others.length ? element("ul", { class: "follow-others" }, each.others.map(other)) : null,
  );

/**
 * From one number to the other: both in full, and by how much; once only where the answers below it change.
 * @param {Follow} follow
 */
const moved = ({ before, after, difference }) =>
  after && before?.text === after.text ? stays(after) : changes(before, after, difference);

/** @param {Shown} value */
const stays = (value) => element("p", { class: "follow-numbers" }, "still", briefly(value));

/**
 * @param {Shown | null} before
 * @param {Shown | null} after
 * @param {Shown | null} difference
 */
const changes = (before, after, difference) =>
  element(
    "p",
    { class: "follow-numbers" },
    before ? briefly(before) : element("span", {}, "none yet"),
    element("span", { class: "heard" }, " becomes "),
    element("span", { "aria-hidden": "true" }, "→"),
    after ? briefly(after, "fraction-large") : element("span", {}, "none"),
    difference ? element("span", { class: "follow-difference" }, difference.brief ?? difference.text) : null,
  );

/** @param {Other} answer */
const other = ({ label, before, after, difference }) =>
  element("li", {}, unbroken(`${label}: ${before} → ${after}${difference ? ` (${difference})` : ""}`));
