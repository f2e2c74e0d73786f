import { button, element } from "../../widgets/element.js";
import { choiceField } from "../../widgets/fields/choice-field.js";

/** @import { Print } from "../../store/shapes.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * What the person chose for printing, kept on this device.
 * @param {App} app
 * @returns {Print}
 */
export const chosen = (app) => app.state.get().print ?? {};
/**
 * @param {App} app
 * @param {Print} patch
 */
export const choose = (app, patch) => app.state.set({ print: { ...chosen(app), ...patch } });

/**
 * The paper last chosen, or the first that the core offers; "" until it has described any.
 * @param {App} app
 */
export const paperOf = (app) => chosen(app).paper ?? papers(app)[0]?.key ?? "";

/** @param {App} app */
const papers = (app) => app.state.get().described?.papers ?? [];

/**
 * The choice of paper; `onChange` is called when another is chosen.
 * @param {App} app
 * @param {(paper: string) => void} onChange
 */
export function paperChoice(app, onChange) {
  const choices = papers(app).map(({ key, label }) => ({ value: key, label }));
  const field = { key: "paper", label: "Paper", choices };
  return choiceField({
    field,
    value: paperOf(app),
    onInput: (paper) => {
      choose(app, { paper });
      onChange(paper);
    },
  }).node;
}

export const printButton = () => button("Print", () => window.print(), { class: "button primary wide" });

/**
 * What flows over as many pages as it takes: the choice of paper and the key above it, which are not printed.
 * @param {App} app
 * @param {{back: HTMLElement, title: string, draw(): void}} head
 * @param {HTMLElement} whole
 */
export function flowing(app, { back, title, draw }, whole) {
  const paper = paperOf(app);
  return [
    element("div", { class: "on-screen" }, back, element("h2", {}, title), paperChoice(app, draw), printButton()),
    element("div", { class: "printable" }, element("div", { class: paper ? `flows-on-${paper}` : "" }, whole)),
  ];
}

/** What to set in the browser's print window, and what to distrust. */
export const trueSizeAdvice = () =>
  element(
    "aside",
    { class: "cautions", "aria-label": "Before you print" },
    element("p", {}, "Print at 100% (actual size), not “fit to page,” on the same paper size."),
    element("p", {}, "Before you use a mark, check the scale bar on every sheet with a good rule."),
  );
