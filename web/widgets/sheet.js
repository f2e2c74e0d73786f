import { button, element } from "./element.js";
import { lengthKeys } from "./length-keys.js";

/**
 * The keypad that stands in the place of the tabs while a field is being typed in. It shows how
 * the text is being read and the main answer, so that both stay in sight above the thumb.
 * @param {() => object | null} strip the marks of the person's tape
 */
export function keypadSheet(host, strip) {
  let input = null;
  let showing = null;

  function close() {
    host.hidden = true;
    document.body.classList.remove("sheet-open");
    input = null;
    showing = null;
  }

  let afterwards = null;
  function leave() {
    input?.blur();
    close();
    afterwards?.();
  }

  /** `peek()` makes what stands above the keys; `whenDone()` is called when the person is done. */
  function open(field, kind, peek, whenDone = null) {
    if (input === field) return;
    input = field;
    afterwards = whenDone;
    const lines = element("div", { class: "sheet-peek" });
    const done = button("Done", leave, {
      class: "button sheet-button",
      onpointerdown: (event) => event.preventDefault(),
    });
    host.replaceChildren(
      element("div", { class: "sheet-bar" }, lines, done),
      lengthKeys({ kind, strip: strip(), target: () => field, acts: { Next: next } }),
    );
    host.hidden = false;
    document.body.classList.add("sheet-open");
    showing = () => lines.replaceChildren(...peek().filter(Boolean));
    showing();
    field.closest(".field")?.scrollIntoView({ block: "nearest" });
  }

  function next() {
    const all = [...document.querySelectorAll("main input[data-keypad]")].filter((each) => each.offsetParent);
    const following = all[all.indexOf(input) + 1];
    if (following) following.focus();
    else leave();
  }

  return { open, close, refresh: () => showing?.() };
}
