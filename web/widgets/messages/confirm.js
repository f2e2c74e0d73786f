import { button, element } from "../element.js";

/**
 * Ask before something that can't be undone.
 * @param {{title: string, sentence: string, act: string}} options `act` is what the button says
 * @returns {Promise<boolean>} whether it is to be done
 */
export function confirm({ title, sentence, act }) {
  return new Promise((resolve) => {
    const leave = (sure) => () => {
      resolve(sure);
      dialog.close();
    };
    const closed = () => {
      resolve(false);
      dialog.remove();
    };
    const dialog = element(
      "dialog",
      { class: "dialog", "aria-labelledby": "confirm-title", onclose: closed },
      element("h2", { id: "confirm-title" }, title),
      element("p", {}, sentence),
      element(
        "div",
        { class: "button-row" },
        button(act, leave(true)),
        button("Cancel", leave(false), { class: "button primary" }),
      ),
    );
    document.body.append(dialog);
    dialog.showModal();
  });
}
