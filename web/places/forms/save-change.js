import { button, element } from "../../widgets/element.js";

const UNCHANGED = "Nothing to save: you haven’t changed anything.";

/**
 * The button that saves a correction: off, and saying why, as long as there is nothing to save.
 * @param {string} label
 * @param {() => unknown} save
 * @param {string} [id] of what says why
 */
export function saveChange(label, save, id = "save-why") {
  const why = element("p", { class: "help save-why", id });
  const key = button(label, () => why.textContent || save(), { class: "button primary", "aria-describedby": id });

  /**
   * @param {boolean} isChanged
   * @param {string} [wrong] what has to be fixed first
   */
  function show(isChanged, wrong = "") {
    why.textContent = isChanged ? wrong : UNCHANGED;
    why.hidden = why.textContent === "";
    key.setAttribute("aria-disabled", String(!why.hidden));
  }

  show(false);
  return { key, why, show, isOff: () => !why.hidden };
}
