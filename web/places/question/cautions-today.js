import { button, element } from "../../widgets/element.js";
import { cautionsInFull } from "../../widgets/numbers/cautions.js";

/** @import { Caution } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

/** The day by this device's clock. */
const today = () => new Date().toLocaleDateString("sv");

/**
 * The cautions of an answer in full, each once a day on this device; after that its short line is enough.
 * @param {App} app
 * @param {() => void} onDone called when they were read
 */
export function cautionsToday(app, onDone) {
  const node = element("aside", { class: "cautions", "aria-label": "Cautions in full", hidden: true });
  const { day, seen } = app.state.get().cautions;
  const before = new Set(day === today() ? seen : []);
  /** @type {Caution[]} */
  let fresh = [];

  /** @param {Caution[]} told */
  function show(told) {
    fresh = told.filter(({ short, full }) => full !== short && !before.has(full));
    if (fresh.length)
      app.state.set({ cautions: { day: today(), seen: [...before, ...fresh.map(({ full }) => full)] } });
    node.hidden = fresh.length === 0;
    node.replaceChildren(...cautionsInFull(fresh), button("Got it", done, { class: "button quiet" }));
  }

  function done() {
    for (const { full } of fresh) before.add(full);
    onDone();
  }

  return { node, show, shown: () => new Set(fresh.map(({ full }) => full)) };
}
