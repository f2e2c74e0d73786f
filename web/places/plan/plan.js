import { element, present } from "../../widgets/element.js";
import { nothingYet } from "../forms/instead.js";
import { planHead } from "./plan-head.js";
import { planResult } from "./plan-result.js";
import { planShown } from "./plan-shown.js";
import { wood } from "./wood.js";

/** @import { App } from "../place.d.ts" */

const TITLE = "Cutting plan";
const NONE = "No pieces yet. Solve for a piece and save it to the project; then plan its cuts here.";

/**
 * What to buy for the pieces of the project, and which comes out of which board. Without a plan one is looked for.
 * @param {App} app
 */
export function plan(app) {
  const { state, planning } = app;
  const head = planHead(app);
  const result = planResult(app);
  const body = element("div", { class: "plan-body" });
  const node = element(
    "div",
    { class: "project plan" },
    element("a", { class: "back", href: "#project" }, "‹ Project"),
    element("h2", { tabindex: "-1" }, TITLE),
    body,
  );
  const hasPieces = () => Boolean(state.get().view?.pieces.length);
  let isBegun = false;

  /** Once the project is here: who comes to plan has not to ask for it. */
  function begin() {
    if (isBegun || !hasPieces()) return;
    isBegun = true;
    const { isRunning } = state.get().planning ?? {};
    if (!planShown(state.get()).plan && !isRunning) planning.start();
  }

  function draw() {
    if (!hasPieces()) return body.replaceChildren(...present([nothingYet(app, NONE), wood(app)]));
    if (!head.node.isConnected) body.replaceChildren(head.node, result.node);
    head.draw();
    result.draw();
  }

  draw();
  begin();
  return {
    node,
    title: () => TITLE,
    refresh(/** @type {string[]} */ changed) {
      if (["view", "record", "planning", "described"].some((key) => changed.includes(key))) draw();
      begin();
    },
  };
}
