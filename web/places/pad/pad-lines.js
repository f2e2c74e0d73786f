import { element } from "../../widgets/element.js";
import { tallyLines, waitingLines } from "../../widgets/project/tally-lines.js";

/** @import { TallyLineTold } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

const SHOWN_LINES = 12;

/**
 * The last lines of the tally above the entry, and the way to all of them.
 * @param {App} app
 * @param {(line: TallyLineTold) => void} onUse hears of the line of the tally that was touched
 */
export function padLines(app, onUse) {
  const lines = element("div", { class: "pad-lines" });
  const toAll = element("a", { class: "tally-all", href: "#tally" }, "History ›");
  const node = element("div", { class: "pad-tally" }, lines, toAll);

  /** The last line stands above the entry. */
  function toLast() {
    lines.scrollTop = lines.scrollHeight;
  }

  function draw() {
    const { tally, entering } = app.state.get();
    const all = tally?.lines ?? [];
    lines.replaceChildren(...tallyLines(all.slice(-SHOWN_LINES), onUse), ...waitingLines(entering));
    node.hidden = all.length + entering.length === 0;
    toAll.setAttribute("aria-label", `History, ${all.length} ${all.length === 1 ? "line" : "lines"}`);
    // Before the pad itself stands there is nothing to scroll.
    requestAnimationFrame(toLast);
  }

  draw();
  // As when the phone is turned.
  new ResizeObserver(toLast).observe(lines);
  return { node, draw };
}
