import { lineMark } from "../../store/pad/naming.js";
import { element } from "../../widgets/element.js";
import { typeAnywhere } from "../../widgets/keys/type-anywhere.js";
import { write } from "../../widgets/keys/typing.js";
import { padAnswer } from "./pad-answer.js";
import { padEntry } from "./pad-entry.js";
import { padError } from "./pad-error.js";
import { padKeys } from "./pad-keys.js";
import { padLines } from "./pad-lines.js";
import { begunIn } from "./pad-unit.js";

/** @import { TallyLineTold } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * The place where the app opens: type a number or a sum, see it, enter it on the tally.
 * @param {App} app
 */
export function pad(app) {
  const entry = padEntry(app, { onTyped: typed, onCleared: () => answer.forget() });
  const { input } = entry;
  const answer = padAnswer(app, entry.keptAs);
  const lines = padLines(app, use);
  const error = padError(app);
  const keys = padKeys(app, entry);

  /** Shows what the state says is in the entry, as it is after Enter. */
  function follow() {
    const { pad, entering } = app.state.get();
    error.draw();
    if (input.value === pad.text) return;
    input.value = pad.text;
    keys.refresh();
    if (pad.text.trim() !== "") answer.ask(pad.text);
    if (pad.fixing && entering[0]?.error) answer.refuse(entering[0].error);
  }

  function typed() {
    const { pad } = app.state.get();
    const isBlank = input.value.trim() === "";
    app.state.set({
      pad: { ...pad, text: input.value, goesOn: !isBlank && pad.goesOn, kept: null, unit: begunIn(app, pad) },
    });
    keys.refresh();
    if (isBlank) answer.forget();
    else answer.ask(input.value);
  }

  /** @param {TallyLineTold} line */
  function use(line) {
    input.focus();
    write(entry.selectDone(), lineMark(line));
  }

  if (input.value.trim() !== "") answer.ask(input.value);
  typeAnywhere(input);
  const head = element("div", { class: "pad-head" }, lines.node, error.node, entry.node, answer.nodes);
  return {
    node: element("div", { class: "pad" }, head, keys.node),
    refresh(/** @type {string[]} */ changed) {
      if (["strip", "described", "pad"].some((key) => changed.includes(key))) keys.draw();
      if (changed.includes("strip")) answer.help();
      if (changed.includes("tally") || changed.includes("entering")) lines.draw();
      if (changed.includes("pad") || changed.includes("entering")) follow();
      const { entered } = app.state.get();
      if (changed.includes("entered") && entered && input.value.trim() === "") answer.line(entered);
    },
  };
}
