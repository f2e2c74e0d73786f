import { element } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";

/** @import { CuttingPlan, ToBuy } from "../../python/contract.d.ts" */

/**
 * What is to be bought, how many of each and what that costs; nothing where all of it is on hand.
 * @param {Pick<CuttingPlan, "buy" | "cost">} plan
 * @param {object} [how]
 * @param {HTMLElement[]} [how.acts] what is done with the list
 * @param {"h3" | "h5"} [how.heading]
 */
export const planBuy = ({ buy, cost }, { acts = [], heading = "h3" } = {}) =>
  buy.length
    ? element(
        "section",
        { class: "plan-buy", "aria-label": "Buy list" },
        element(heading, {}, "Buy"),
        element("ul", {}, buy.map(row)),
        cost ? element("p", { class: "plan-cost" }, `Total ${cost}`) : null,
        acts.length ? element("div", { class: "button-row" }, acts) : null,
      )
    : null;

/** @param {ToBuy} line */
const row = ({ count, said, each, cost }) =>
  element(
    "li",
    {},
    element("span", { class: "plan-said" }, unbroken(said)),
    element(
      "span",
      { class: "plan-price" },
      [each && count > 1 ? `${each} each` : "", cost].filter(Boolean).join(", "),
    ),
  );
