import { button, element, present } from "../element.js";
import { lengthKeys } from "./length-keys.js";
import { goToNext } from "./next-field.js";
import { replaceAll } from "./typing.js";

/** @import { Strip } from "../../python/contract.d.ts" */
/** @import { Peek } from "../widget.d.ts" */

/**
 * @typedef {object} Options
 * @property {string} kind the kind of the field
 * @property {string} unit what a bare number means in it
 * @property {() => Peek} peek what stands above the keys
 * @property {((field: HTMLInputElement) => void) | null} [from] writes what is known already
 * @property {(() => void) | null} [whenDone] called when the person is done
 */

const ANSWERED_ELSEWHERE = [
  ...["text", "search", "datetime-local"].map((type) => `input[type="${type}"]`),
  "textarea",
  ".picker *",
].join();

/**
 * The keypad that stands in the place of the tabs while a field is being typed in. It shows how
 * the text is being read and the main answer, so that both stay in sight above the thumb.
 * @param {HTMLElement} host
 * @param {() => Strip | null} strip the marks of the person's tape
 */
export function keypadSheet(host, strip) {
  /** @type {{field: HTMLInputElement, show(): void, whenDone: (() => void) | null} | null} */
  let opened = null;

  function close() {
    const field = opened?.field;
    opened = null;
    host.hidden = true;
    document.body.classList.remove("sheet-open");
    field?.blur();
  }

  function leave() {
    const whenDone = opened?.whenDone;
    close();
    whenDone?.();
  }

  const next = () => (opened && goToNext(opened.field)) || leave();

  /**
   * @param {HTMLInputElement} field
   * @param {Options} options
   */
  function open(field, { whenDone = null, ...options }) {
    if (opened?.field === field) return;
    const show = drawn({ host, field, strip: strip(), next, leave }, options);
    opened = { field, show, whenDone };
    show();
    field.closest(".field")?.scrollIntoView({ block: "nearest" });
    // Where the row is higher than what the keys leave, as with large text: the text itself.
    field.scrollIntoView({ block: "nearest" });
  }

  /**
   * A hardware Enter in a field goes on as Next does.
   * @param {KeyboardEvent} event
   */
  function entered(event) {
    if (event.key !== "Enter" || event.target !== opened?.field) return;
    event.preventDefault();
    next();
  }

  /**
   * A field that is typed into by other means has no keypad, nor has a list to pick from: it may not stay with the one
   * before.
   * @param {FocusEvent} event
   */
  function focused({ target }) {
    const isOther = opened && target !== opened.field;
    if (isOther && target instanceof Element && target.matches(ANSWERED_ELSEWHERE)) close();
  }

  document.addEventListener("keydown", entered);
  document.addEventListener("focusin", focused);
  // A field that is taken away, as with its row, takes its keypad along.
  const watch = new MutationObserver(() => opened && !opened.field.isConnected && close());
  watch.observe(document.body, { childList: true, subtree: true });
  return { open, close, refresh: () => opened?.show() };
}

/**
 * Draws the keys of a field, and returns what shows the text above them. The keys stay where they are, whatever is said
 * above them: its lines have their room, and what keeps the answer has its own as soon as there may be one.
 * @param {{host: HTMLElement, field: HTMLInputElement, strip: Strip | null, next(): void, leave(): void}} sheet
 * @param {Options} options
 */
function drawn({ host, field, strip, next, leave }, { kind, unit, peek, from = null }) {
  const lines = element("div", { class: "sheet-peek" });
  const acts = element("div", { class: "sheet-acts" });
  const clear = beside("✕", () => replaceAll(field, ""), { "aria-label": "Clear the field" });
  const known = from && beside("Project", () => from(field), { "aria-label": "From project" });
  const done = beside("Done", leave);
  const keys = lengthKeys({ kind, unit, strip, target: () => field, acts: { Next: next } });
  host.replaceChildren(element("div", { class: "sheet-bar" }, lines, acts), keys.node);
  host.hidden = false;
  host.scrollTop = 0;
  document.body.classList.add("sheet-open");

  return function show() {
    const seen = peek();
    lines.replaceChildren(...seen.lines);
    acts.replaceChildren(...present([known, clear, "keep" in seen ? keeping(seen.keep) : null, done]));
    keys.refresh();
  };
}

/**
 * The key that keeps the answer; before there is one it only takes its room.
 * @param {Peek["keep"]} keep
 */
function keeping(keep) {
  const { label, run } = keep ?? { label: "Save", run() {} };
  return beside(label, run, { class: `button sheet-button primary ${keep ? "" : "only-room"}` });
}

/**
 * A key of the sheet. The caret stays in the field: none of them takes the focus.
 * @param {string} label
 * @param {() => void} act
 * @param {Record<string, unknown>} [attributes]
 */
const beside = (label, act, attributes) =>
  button(label, act, {
    class: "button sheet-button",
    onpointerdown: (/** @type {PointerEvent} */ event) => event.preventDefault(),
    ...attributes,
  });
