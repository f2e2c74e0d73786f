import { isUnkept } from "../store/draft.js";
import { button, element } from "../widgets/element.js";
import { piece } from "../widgets/pieces.js";

const keyOf = ({ entry, part }) => `${entry}/${part}`;

/** The project's pieces one at a time, as large as the screen allows. */
export function atTheSaw(app) {
  const node = element("div", { class: "saw" });
  let shown = null;

  function draw() {
    const pieces = app.state.get().view?.pieces ?? [];
    if (pieces.length === 0) {
      const sentence = "No pieces yet. Work out a piece and keep it in the project: it then waits here for the saw.";
      return node.replaceChildren(element("p", { class: "help" }, sentence));
    }
    const uncut = pieces.filter((each) => each.left > 0);
    const each = pieces.find((one) => keyOf(one) === shown) ?? uncut[0] ?? pieces[0];
    const at = pieces.indexOf(each);
    shown = keyOf(each);
    const go = (to) => {
      shown = keyOf(to);
      draw();
    };
    const cut = (by) => app.quietly(app.tryChange({ act: "cut", id: each.entry, part: each.part, by }));
    const following = uncut.find((one) => pieces.indexOf(one) > at) ?? uncut[0];
    const key = (label, act, isOn, look = "") =>
      button(label, act, { class: `button saw-key ${look}`, disabled: !isOn, "data-key": label });
    const focused = document.activeElement?.dataset.key;
    node.replaceChildren(
      piece({
        ...each,
        place: `Piece ${at + 1} of ${pieces.length}`,
        mark: isUnkept(app.state.get(), each.entry)
          ? "A correction is typed, but not kept: this is the kept piece."
          : "",
        isLast: !following,
      }),
      element(
        "div",
        { class: "saw-keys" },
        key("‹ Back", () => go(pieces[at - 1]), at > 0),
        key("Next ›", () => go(pieces[at + 1]), at < pieces.length - 1),
        key("Not cut", () => cut(-1), each.cut > 0),
        each.left > 0 || !following
          ? key("Cut one", () => cut(1), each.left > 0, "primary")
          : key("Next uncut", () => go(following), true, "primary"),
      ),
    );
    if (focused) keepFocus(focused);
  }

  /** The keys are drawn anew: who walks them with a keyboard stays on the same one, or the main one. */
  function keepFocus(label) {
    const on = [...node.querySelectorAll(".saw-key:enabled")];
    (on.find((each) => each.dataset.key === label) ?? on.at(-1))?.focus();
  }

  draw();
  node.refresh = (changed) => changed.includes("view") && draw();
  return node;
}
