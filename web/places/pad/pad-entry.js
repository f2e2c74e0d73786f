import { identity } from "../../store/project/identity.js";
import { button, element } from "../../widgets/element.js";
import { examples } from "./pad-unit.js";

/** @import { App } from "../place.d.ts" */

/** @import { Pad } from "../../store/shapes.d.ts" */

/**
 * Whether what stands in the pad was kept, and so is done with.
 * @param {Pad} pad
 */
const isDone = ({ kept, text }) => Boolean(kept && kept.text === text);

/**
 * What is typed into, and what becomes of it once it was kept: it is done with. The next number takes its place, a
 * sign goes on from what was kept.
 * @param {App} app
 * @param {{onTyped(): void, onCleared(): void}} heard `onCleared` where nothing is left in it
 */
export function padEntry(app, { onTyped, onCleared }) {
  const input = inputOf(app.state.get().pad.text, {
    placeholder: examples(app).length,
    oninput: onTyped,
    onbeforeinput: selectDone,
    onclick: touched,
    onkeydown: (/** @type {KeyboardEvent} */ event) => event.key === "Enter" && app.entering.enter(),
  });

  /**
   * @param {string} text
   * @param {string} id
   */
  function keptAs(text, id) {
    const { pad, record } = app.state.get();
    if (pad.text === text) app.state.set({ pad: { ...pad, kept: { of: identity(record), id, text } } });
    selectDone();
  }

  /** Wherever the caret has gone since: what is written next takes the place of what is done with. */
  function selectDone() {
    if (isDone(app.state.get().pad)) input.select();
    return input;
  }

  /** A first touch selects what is done with, as in any field; a second one places the caret, to go on with it. */
  function touched() {
    const { pad } = app.state.get();
    const { kept } = pad;
    if (!kept || !isDone(pad)) return;
    if (!kept.touched) input.select();
    app.state.set({ pad: { ...pad, kept: kept.touched ? null : { ...kept, touched: true } } });
  }

  function cleared() {
    app.entering.clear();
    if (input.value.trim() === "") onCleared();
    input.focus();
  }

  const clear = button("✕", cleared, { class: "button pad-clear", "aria-label": "Clear" });
  const node = element("div", { class: "pad-entry" }, input, clear);
  return { node, input, keptAs, selectDone, isDone: () => isDone(app.state.get().pad) };
}

/**
 * @param {string} value
 * @param {Record<string, any> & {placeholder: string}} more what hears of events, each of its own kind
 */
const inputOf = (value, more) =>
  element("input", {
    id: "pad-input",
    name: "pad",
    class: "pad-input",
    type: "text",
    inputmode: "none",
    enterkeyhint: "enter",
    autocomplete: "off",
    spellcheck: "false",
    "aria-label": "Length or sum",
    "aria-describedby": "pad-error",
    value,
    ...more,
  });
