import { button, element, firstIn } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";
import { followed } from "../project/followed.js";

/** @import { Change } from "../../python/contract.d.ts" */

/**
 * Show what a change brings before it is kept: each number that moves, each piece already cut.
 * @param {Pick<Change, "said" | "follows" | "judged">} changed
 * @returns {Promise<boolean>} whether it is accepted; leaving the dialog takes it back
 */
export function review({ said, follows, judged }) {
  return new Promise((resolve) => {
    const before = document.activeElement;
    const leave = (accepted) => () => {
      resolve(accepted);
      dialog.close();
    };
    const dialog = element(
      "dialog",
      {
        class: "dialog review",
        "aria-labelledby": "review-title",
        onclose: () => {
          resolve(false);
          dialog.remove();
          if (before instanceof HTMLElement) before.focus({ preventScroll: true });
        },
      },
      element("h2", { id: "review-title", tabindex: "-1" }, "What this changes"),
      element("p", { class: "review-said" }, unbroken(said)),
      element("div", { class: "review-list" }, followed(follows, judged)),
      element(
        "div",
        { class: "button-row" },
        button("Cancel", leave(false)),
        button("Accept", leave(true), { class: "button primary" }),
      ),
    );
    document.body.append(dialog);
    dialog.showModal();
    firstIn(dialog, "h2")?.focus();
  });
}
