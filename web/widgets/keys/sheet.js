import { button, element } from "../element.js";
import { lengthKeys } from "./length-keys.js";
import { goToNext } from "./next-field.js";
import { replaceAll } from "./typing.js";

const TYPED_INTO = 'input[type="text"], input[type="search"], textarea';

/**
 * The keypad that stands in the place of the tabs while a field is being typed in. It shows how
 * the text is being read and the main answer, so that both stay in sight above the thumb.
 * @param {() => object | null} strip the marks of the person's tape
 */
export function keypadSheet(host, strip) {
  let input = null;
  let showing = null;
  let afterwards = null;

  function close() {
    const left = input;
    input = null;
    showing = null;
    host.hidden = true;
    document.body.classList.remove("sheet-open");
    left?.blur();
  }

  function leave() {
    close();
    afterwards?.();
  }

  const next = () => goToNext(input) || leave();
  // The caret stays in the field: none of these takes the focus.
  const beside = (label, act, attributes) =>
    button(label, act, {
      class: "button sheet-button",
      onpointerdown: (event) => event.preventDefault(),
      ...attributes,
    });

  /**
   * @param {HTMLInputElement} field
   * @param {object} options
   * @param {string} options.kind the kind of the field
   * @param {string} options.unit what a bare number means in it
   * @param {() => {lines: Node[], keep?: {label: string, run(): void} | null}} options.peek what
   *   stands above the keys
   * @param {((field: HTMLInputElement) => void) | null} [options.from] writes what is known already
   * @param {() => void} [options.whenDone] called when the person is done
   */
  function open(field, { kind, unit, peek, from = null, whenDone = null }) {
    if (input === field) return;
    input = field;
    afterwards = whenDone;
    const lines = element("div", { class: "sheet-peek" });
    const acts = element("div", { class: "sheet-acts" });
    const clear = beside("✕", () => replaceAll(field, ""), { "aria-label": "Clear the field" });
    const known = from && beside("Project", () => from(field), { "aria-label": "From project" });
    const done = beside("Done", leave);
    const keys = lengthKeys({ kind, unit, strip: strip(), target: () => field, acts: { Next: next } });
    host.replaceChildren(element("div", { class: "sheet-bar" }, lines, acts), keys);
    host.hidden = false;
    host.scrollTop = 0;
    document.body.classList.add("sheet-open");
    showing = () => {
      const before = host.offsetHeight;
      const seen = peek();
      lines.replaceChildren(...seen.lines);
      const keep = seen.keep && beside(seen.keep.label, seen.keep.run, { class: "button sheet-button primary" });
      acts.replaceChildren(...[known, clear, keep, done].filter(Boolean));
      keys.refresh?.();
      if (host.offsetHeight > before) field.scrollIntoView({ block: "nearest" });
    };
    showing();
    field.closest(".field")?.scrollIntoView({ block: "nearest" });
  }

  /** A hardware Enter in a field goes on as Next does. */
  function entered(event) {
    if (event.key !== "Enter" || event.target !== input) return;
    event.preventDefault();
    next();
  }

  /** A field that is typed into by other means has no keypad: it may not stay with the one before. */
  function focused({ target }) {
    if (input && target !== input && target.matches(TYPED_INTO)) close();
  }

  document.addEventListener("keydown", entered);
  document.addEventListener("focusin", focused);
  // A field that is taken away, as with its row, takes its keypad along.
  const watch = new MutationObserver(() => input && !input.isConnected && close());
  watch.observe(document.body, { childList: true, subtree: true });
  return { open, close, refresh: () => showing?.() };
}
