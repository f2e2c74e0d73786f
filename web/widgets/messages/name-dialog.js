import { button, element } from "../element.js";

/** @import { Wrong } from "../widget.d.ts" */

/**
 * Ask for a name in a dialog that can be left with Escape or a button. It takes one submit at a time.
 * @param {object} options
 * @param {string} options.title
 * @param {string} options.act what the button says
 * @param {string} [options.name] the one to begin with
 * @param {(name: string) => Promise<{ok: true, id?: string | null} | {ok: false, error: Wrong}>} options.give takes the name; an
 *   answer with `ok: false` keeps the dialog open and shows its sentence
 * @param {(id?: string | null) => void} [options.after] called when it was taken and the dialog is gone
 * @param {string} [options.told] what must be known before it is given
 */
export function nameDialog({ title, act, name = "", told = "", give, after }) {
  const input = element("input", {
    id: "dialog-name",
    type: "text",
    maxlength: "80",
    autocomplete: "off",
    enterkeyhint: "done",
    value: name,
  });
  const wrong = element("p", { class: "error", role: "alert" });
  const close = () => dialog.close();
  let giving = false;
  const submit = async (event) => {
    event.preventDefault();
    if (giving) return;
    giving = true;
    const answer = await give(input.value.trim());
    giving = false;
    if (answer.ok) {
      close();
      after?.(answer.id);
    } else wrong.textContent = `${answer.error.message} ${answer.error.remedy ?? ""}`;
  };
  const dialog = element(
    "dialog",
    { class: "dialog", "aria-labelledby": "dialog-title", onclose: () => dialog.remove() },
    element(
      "form",
      { onsubmit: submit },
      element("h2", { id: "dialog-title" }, title),
      told ? element("p", {}, told) : null,
      element("label", { for: "dialog-name" }, "Name"),
      input,
      wrong,
      element(
        "div",
        { class: "button-row" },
        button("Cancel", close),
        element("button", { type: "submit", class: "button primary" }, act),
      ),
    ),
  );
  document.body.append(dialog);
  dialog.showModal();
  input.select();
}
