import { isUnkept } from "../store/draft.js";
import { button, element } from "../widgets/element.js";
import { piece } from "../widgets/pieces.js";
import { besideTheSaw } from "./beside-the-saw.js";
import { nothingYet } from "./nothing-yet.js";
import { inOrder } from "./saw-order.js";
import { speaker } from "./saw-speaker.js";
import { sawTools } from "./saw-tools.js";

const keyOf = ({ entry, part }) => `${entry}/${part}`;

/** What a correction made wrong with pieces already cut, in words. */
const wrongOf = ({ verdicts }) =>
  verdicts
    .filter(({ verdict }) => verdict !== "good")
    .map(({ said }) => said)
    .join(" ");

/** The project's pieces one at a time, as large as the screen allows. */
export function atTheSaw(app) {
  const node = element("div", { class: "saw" });
  const sleeps = element("p", { class: "help" });
  const place = besideTheSaw(app, (sentence) => sleeps.replaceChildren(sentence));
  const speak = speaker(app, draw);
  let shown = null;

  function draw() {
    const { view, record } = app.state.get();
    const pieces = view?.cuts ? inOrder(view) : [];
    if (pieces.length === 0) {
      const sentence = "No pieces yet. Work out a piece and keep it in the project: it then waits here for the saw.";
      return node.replaceChildren(nothingYet(app, sentence));
    }
    const uncut = pieces.filter((each) => each.left > 0 || wrongOf(each));
    const each = pieces.find((one) => keyOf(one) === shown) ?? uncut[0] ?? pieces[0];
    const at = pieces.indexOf(each);
    shown = keyOf(each);
    const go = (to) => {
      shown = keyOf(to);
      draw();
    };
    const doing = (more) => app.quietly(app.tryChange({ id: each.entry, part: each.part, ...more }));
    const following = uncut.find((one) => pieces.indexOf(one) > at) ?? uncut.find((one) => one !== each);
    const key = (label, act, isOn, look = "") =>
      button(label, act, { class: `button saw-key ${look}`, disabled: !isOn, "data-key": label });
    const focused = document.activeElement?.dataset.key;
    node.replaceChildren(
      piece({
        ...each,
        told: [each.material, each.grain, each.place].filter(Boolean).join(", "),
        place: each.group,
        mark: isUnkept(app.state.get(), each.entry)
          ? "A correction is typed, but not kept: this is the kept piece."
          : "",
        wrong: wrongOf(each),
        isLast: !following && !wrongOf(each),
      }),
      sawTools(app, each),
      sleeps,
      element(
        "div",
        { class: "saw-keys" },
        key("‹ Back", () => go(pieces[at - 1]), at > 0),
        key("Undo", () => app.undo(), record?.undo.length),
        key("Next ›", () => go(pieces[at + 1]), at < pieces.length - 1),
        key("Spoiled", () => doing({ act: "spoil" }), true),
        each.left > 0 || !following
          ? key("Cut one", () => doing({ act: "cut", by: 1 }), each.left > 0, "primary saw-main")
          : key("Next uncut", () => go(following), true, "primary saw-main"),
      ),
    );
    speak(each);
    if (focused) keepFocus(focused);
  }

  /** The keys are drawn anew: who walks them with a keyboard stays on the same one, or the main one. */
  function keepFocus(label) {
    const on = [...node.querySelectorAll(".saw-key:enabled")];
    (on.find((each) => each.dataset.key === label) ?? on.at(-1))?.focus();
  }

  draw();
  node.refresh = (changed) => {
    if (changed.includes("saw")) place.light();
    if (["view", "saw"].some((key) => changed.includes(key))) draw();
  };
  node.leave = () => place.leave();
  return node;
}
