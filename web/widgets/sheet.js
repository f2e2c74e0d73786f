import { button, element } from "./element.js";
import { lengthKeys } from "./length-keys.js";

/**
 * The keypad that rises from the foot of the screen while a field is being typed in. It shows how
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

  function open(field, kind, peek) {
    if (input === field) return;
    input = field;
    const lines = element("div", { class: "sheet-peek" });
    const next = button("Next", () => step(field), { class: "button sheet-button" });
    const done = button("Done", () => (field.blur(), close()), { class: "button sheet-button" });
    for (const each of [next, done]) each.addEventListener("pointerdown", (event) => event.preventDefault());
    host.replaceChildren(
      element("div", { class: "sheet-bar" }, lines, next, done),
      lengthKeys(kind, strip(), () => field),
    );
    host.hidden = false;
    document.body.classList.add("sheet-open");
    showing = () => lines.replaceChildren(...peek().filter(Boolean));
    showing();
    field.closest(".field")?.scrollIntoView({ block: "nearest" });
  }

  function step(field) {
    const all = [...document.querySelectorAll("main input[data-keypad]")].filter((each) => each.offsetParent);
    const following = all[all.indexOf(field) + 1];
    if (following) following.focus();
    else (field.blur(), close());
  }

  return { open, close, refresh: () => showing?.() };
}
