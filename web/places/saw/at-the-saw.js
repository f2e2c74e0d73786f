import { isUnkept } from "../../store/project/draft.js";
import { isOldPicture } from "../../store/project/identity.js";
import { lastAtTheSaw } from "../../store/project/one-step.js";
import { element } from "../../widgets/element.js";
import { piece } from "../../widgets/project/pieces.js";
import { nothingYet } from "../forms/instead.js";
import { quietly } from "../notices.js";
import { besideTheSaw } from "./beside-the-saw.js";
import { sawKeys } from "./saw-keys.js";
import { wrongs } from "./saw-mending.js";
import { inOrder } from "./saw-order.js";
import { speaker } from "./saw-speaker.js";
import { sawTools } from "./saw-tools.js";

const keyOf = ({ entry, part }) => `${entry}/${part}`;

/** What a correction made wrong with pieces already cut, in words. */
const wrongOf = (each) =>
  wrongs(each)
    .map(({ said }) => said)
    .join(" ");
const NONE = "No pieces yet. Work out a piece and keep it in the project: it then waits here for the saw.";

/** The project's pieces one at a time, as large as the screen allows. */
export function atTheSaw(app) {
  const body = element("div", { class: "saw-body" });
  const keys = element("div", { class: "saw-keys" });
  const node = element("div", { class: "saw" }, body, keys);
  const sleeps = element("p", { class: "help" });
  const place = besideTheSaw(app, (sentence) => sleeps.replaceChildren(sentence));
  const speak = speaker(app, draw);
  let shown = app.state.get().saw.piece;

  /** Who comes back finds the piece that was left. */
  function hold() {
    const { saw } = app.state.get();
    if (saw.piece !== shown) app.state.set({ saw: { ...saw, piece: shown } });
  }

  function markOf({ entry }) {
    const now = app.state.get();
    if (isOldPicture(now)) return "This size is from before your last change.";
    return isUnkept(now, entry) ? "A correction is typed, but not kept: this is the kept piece." : "";
  }

  function draw() {
    const { view, record } = app.state.get();
    // A view that an older version kept lacks what is drawn here; the core tells it anew in a moment.
    const pieces = view?.set_ups ? inOrder(view) : [];
    if (pieces.length === 0) {
      keys.replaceChildren();
      return body.replaceChildren(nothingYet(app, NONE));
    }
    const uncut = pieces.filter((each) => each.left > 0 || wrongOf(each));
    const each = pieces.find((one) => keyOf(one) === shown) ?? uncut[0] ?? pieces[0];
    const at = pieces.indexOf(each);
    shown = keyOf(each);
    const go = (to) =>
      to &&
      (() => {
        shown = keyOf(to);
        draw();
        body.scrollTop = 0;
      });
    const following = uncut.find((one) => pieces.indexOf(one) > at) ?? uncut.find((one) => one !== each);
    const act = (more) => {
      hold();
      const whole = { id: each.entry, part: each.part, ...more };
      // Whether a piece or a blank is spoiled is to be read, not guessed.
      return more.act === "spoil"
        ? app.project.change(whole, { undoable: false })
        : quietly(app.project.tryChange(whole));
    };
    const undoable = lastAtTheSaw(record?.undo ?? []);
    const focused = document.activeElement?.dataset.key;
    body.replaceChildren(
      piece({
        ...each,
        place: each.group,
        mark: markOf(each),
        wrong: wrongOf(each),
        isLast: !following && !wrongOf(each),
      }),
      sawTools(app, each, act),
      sleeps,
    );
    keys.replaceChildren(
      ...sawKeys(each, act, {
        back: go(pieces[at - 1]),
        next: go(pieces[at + 1]),
        following: go(following),
        undo: undoable === null ? null : () => app.project.undoStep(undoable),
      }),
    );
    if (!isOldPicture(app.state.get())) speak(each);
    if (focused) keepFocus(focused);
  }

  /** The keys are drawn anew: who walks them with a keyboard stays on the same one, or the main one. */
  function keepFocus(label) {
    const on = [...node.querySelectorAll(".saw-key:enabled")];
    (on.find((each) => each.dataset.key === label) ?? on.at(-1))?.focus();
  }

  draw();
  return {
    node,
    refresh(changed) {
      if (changed.includes("saw")) place.light();
      if (["view", "saw"].some((key) => changed.includes(key))) draw();
    },
    leave() {
      hold();
      place.leave();
    },
  };
}
