import { button, element } from "../widgets/element.js";
import { piece } from "../widgets/pieces.js";

/** The project's pieces one at a time, as large as the screen allows. */
export function atTheSaw(app) {
  const node = element("div", { class: "saw" });
  let shown = null;

  function draw() {
    const pieces = app.state.get().view?.pieces ?? [];
    if (pieces.length === 0) {
      node.replaceChildren(
        element(
          "p",
          { class: "help" },
          "No pieces yet. Work out a piece and keep it in the project: it then waits here for the saw.",
        ),
      );
      return;
    }
    const name = (each) => `${each.entry}/${each.part}`;
    let at = pieces.findIndex((each) => name(each) === shown);
    if (at < 0)
      at = Math.max(
        0,
        pieces.findIndex((each) => each.left > 0),
      );
    const each = pieces[at];
    shown = name(each);
    const move = (by) => {
      shown = name(pieces[at + by]);
      draw();
    };
    const cut = (by) => app.change({ act: "cut", id: each.entry, part: each.part, by });
    node.replaceChildren(
      element("p", { class: "piece-place" }, `Piece ${at + 1} of ${pieces.length}`),
      piece(each),
      element(
        "div",
        { class: "saw-keys" },
        button("‹ Back", () => move(-1), { class: "button saw-key", disabled: at === 0 }),
        button("Next ›", () => move(1), { class: "button saw-key", disabled: at === pieces.length - 1 }),
        button("Not cut", () => cut(-1), { class: "button saw-key", disabled: each.cut === 0 }),
        button("Cut one", () => cut(1), { class: "button saw-key primary", disabled: each.left === 0 }),
      ),
    );
  }

  draw();
  node.refresh = (changed) => changed.includes("view") && draw();
  return node;
}
