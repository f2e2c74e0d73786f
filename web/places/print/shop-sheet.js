import { element } from "../../widgets/element.js";
import { shopSheet as sheet } from "../../widgets/project/shop-sheet.js";
import { nothingYet } from "../forms/instead.js";
import { flowing } from "./printing.js";

/** @import { App } from "../place.d.ts" */

const TITLE = "Shop sheet";

/**
 * The open project on paper, to be ticked off in the shop.
 * @param {App} app
 */
export function shopSheet(app) {
  const node = element("div", { class: "paper" });

  function draw() {
    const { view } = app.state.get();
    if (!view?.cases || view.entries.length === 0) {
      node.replaceChildren(back(), nothingYet(app, "Nothing to print yet. Save something to the project first."));
      return;
    }
    node.replaceChildren(...flowing(app, { back: back(), title: TITLE, draw }, sheet(view)));
  }

  draw();
  return {
    node,
    title: () => TITLE,
    refresh: (/** @type {string[]} */ changed) => (changed.includes("view") || changed.includes("described")) && draw(),
  };
}

const back = () => element("a", { class: "back", href: "#project" }, "‹ Project");
