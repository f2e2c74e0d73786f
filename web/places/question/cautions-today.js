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
  const seenToday = () => (app.state.get().cautions.day === today() ? app.state.get().cautions.seen : []);
  const before = new Set(seenToday());
  /** @type {Caution[]} */
  let fresh = [];

  /** @param {Caution[]} told */
  function show(told) {
    fresh = told.filter(({ short, full }) => full !== short && !before.has(full));
    noteSeen();
    node.hidden = fresh.length === 0;
    node.replaceChildren(...cautionsInFull(fresh), button("Got it", done, { class: "button quiet" }));
  }

  /** Written once: an answer comes with each key press, and mostly with the same cautions. */
  function noteSeen() {
    const seen = seenToday();
    const more = fresh.map(({ full }) => full).filter((full) => !seen.includes(full));
    if (more.length) app.state.set({ cautions: { day: today(), seen: [...seen, ...more] } });
  }

  function done() {
    for (const { full } of fresh) before.add(full);
    onDone();
  }

  return { node, show, shown: () => new Set(fresh.map(({ full }) => full)) };
}
