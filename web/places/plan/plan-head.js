import { button, element } from "../../widgets/element.js";
import { sentences, unbroken } from "../../widgets/numbers/unbroken.js";
import { onward } from "../go.js";
import { inWords } from "../notices.js";
import { planShown } from "./plan-shown.js";

/** @import { App } from "../place.d.ts" */

/**
 * What the plan comes to and what can be done with it, and how far the search is. Nothing here is drawn anew, so that
 * who is on a key stays on it and a reader hears only what is said otherwise.
 * @param {App} app
 */
export function planHead(app) {
  const said = element("p", { class: "plan-verdict" });
  const aside = element("p", {});
  const stale = element("p", { class: "plan-stale" });
  const wrong = element("p", { class: "error", role: "alert" });
  const progress = element("p", { class: "help", "aria-live": "polite" });
  const use = button("Use this plan", () => keep(app), { class: "button primary" });
  const cut = button("At the saw", () => toTheSaw(app), { class: "button primary" });
  const again = button("Plan again", () => app.planning.start());
  const stop = button("Stop", () => app.planning.stop());
  const keys = [use, cut, again, stop];
  const row = element("div", { class: "button-row plan-keys" }, keys);
  const node = element("div", { class: "plan-head" }, said, aside, stale, wrong, progress, row);

  function draw() {
    const { planning } = app.state.get();
    const { plan, act, isKept } = planShown(app.state.get());
    const isRunning = Boolean(planning?.isRunning);
    say(said, plan?.said);
    say(aside, sentences([plan?.waste ?? "", plan?.note ?? ""]));
    say(stale, isKept ? plan?.stale : "");
    say(wrong, planning?.error ? inWords(planning.error) : "");
    // One that is hidden would not be read when it is shown.
    if (progress.textContent !== (planning?.progress ?? "")) progress.textContent = planning?.progress ?? "";
    const focused = keys.find((key) => key === document.activeElement);
    use.hidden = !act;
    cut.hidden = !isKept || Boolean(plan?.stale);
    again.hidden = isRunning;
    again.textContent = plan ? "Plan again" : "Plan the cuts";
    again.classList.toggle("primary", use.hidden && cut.hidden);
    stop.hidden = !isRunning;
    if (focused?.hidden) keys.find((key) => !key.hidden)?.focus();
  }
  return { node, draw };
}

/**
 * The plan goes into the project, as any change; it is then shown as the project's own.
 * @param {App} app
 */
async function keep(app) {
  const { act } = planShown(app.state.get());
  if (!act) return;
  app.planning.stop();
  await app.project.change(act);
}

/**
 * The pieces by the boards of the plan.
 * @param {App} app
 */
async function toTheSaw({ state, projects }) {
  const goOn = onward();
  state.set({ saw: { ...state.get().saw, order: "plan", piece: undefined } });
  await projects.look();
  goOn("saw");
}

/**
 * @param {HTMLElement} node
 * @param {string | undefined} text
 */
function say(node, text = "") {
  const whole = unbroken(text);
  if (node.textContent !== whole) node.textContent = whole;
  node.hidden = !whole;
}
