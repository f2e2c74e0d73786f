import { element } from "../../widgets/element.js";
import { planSheet as sheet } from "../../widgets/project/plan-sheet.js";
import { nothingYet } from "../forms/instead.js";
import { planShown } from "../plan/plan-shown.js";
import { flowing } from "./printing.js";

/** @import { App } from "../place.d.ts" */

const TITLE = "Cutting plan on paper";

/**
 * The cutting plan alone on paper, with the list to take to the yard: the one that is shown, used yet or not.
 * @param {App} app
 */
export function planSheet(app) {
  const node = element("div", { class: "paper" });

  function draw() {
    const { view } = app.state.get();
    const { plan } = planShown(app.state.get());
    if (!plan) return node.replaceChildren(back(), nothingYet(app, "No cutting plan to print yet."));
    const name = element("h3", { class: "shop-name" }, view?.name);
    const whole = element("article", { class: "shop-sheet" }, name, sheet(plan));
    node.replaceChildren(...flowing(app, { back: back(), title: TITLE, draw }, whole));
  }

  draw();
  return {
    node,
    title: () => TITLE,
    refresh: (/** @type {string[]} */ changed) =>
      ["view", "planning", "described"].some((key) => changed.includes(key)) && draw(),
  };
}

const back = () => element("a", { class: "back", href: "#plan" }, "‹ Cutting plan");
