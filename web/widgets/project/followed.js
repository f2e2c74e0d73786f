import { element } from "../element.js";
import { briefly } from "../numbers/fraction.js";
import { unbroken } from "../numbers/unbroken.js";

/** @import { Follow, Judged, Other } from "../../python/contract.d.ts" */
/** @import { Shown } from "../widget.d.ts" */

/**
 * The pieces already cut first, in words, then each number that changes.
 * @param {Follow[]} follows
 * @param {Judged[]} judged
 */
export const followed = (follows, judged) => [
  judged.length ? element("h3", {}, "Pieces already cut") : null,
  judged.length ? element("ul", { class: "judged" }, judged.map(judgement)) : null,
  follows.length ? element("h3", {}, "Numbers that change") : null,
  follows.length ? element("ul", { class: "follows" }, follows.map(changedNumber)) : null,
];

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
