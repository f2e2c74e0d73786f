import { element } from "../widgets/element.js";
import { tallyLines } from "../widgets/tally-lines.js";

const SHOWN_LINES = 12;

/**
 * The last lines of the tally above the entry, and the way to all of them.
 * @param {(mark: string) => void} onUse hears of the line that was touched
 */
export function padLines(app, onUse) {
  const lines = element("div", { class: "pad-lines" });
  const toAll = element("a", { class: "tally-all", href: "#tally" }, "Tally ›");
  const node = element("div", { class: "pad-tally" }, lines, toAll);

  node.draw = () => {
    const all = app.state.get().tally?.lines ?? [];
    lines.replaceChildren(...tallyLines(all.slice(-SHOWN_LINES), onUse));
    node.hidden = all.length === 0;
    toAll.setAttribute("aria-label", `Tally, ${all.length} ${all.length === 1 ? "line" : "lines"}`);
    // The last line stands above the entry; before the pad itself stands there is nothing to scroll.
    requestAnimationFrame(() => {
      lines.scrollTop = lines.scrollHeight;
    });
  };

  return node;
}
