import { button, element } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";

/** @import { Action } from "../widget.d.ts" */

const SECONDS = 10;

/**
 * Say a sentence between the head of the screen and the place, with one thing that can be done
 * about it. It covers nothing, and what stands in the place stays where it is under the thumb.
 * What the app has to tell of its own accord (`news`, or a `kind` of its own) never takes the place of
 * what was said of the person's last act, nor its Undo.
 * @param {HTMLElement} host where it is said
 * @param {HTMLElement} place what scrolls below it
 * @param {string} sentence
 * @param {Action | null} [action]
 */
export function notice(host, place, sentence, action = null) {
  const kind = action?.kind ?? (action?.news ? "news" : "said");
  const node = element("div", { class: "notice", "data-kind": kind }, element("p", {}, unbroken(sentence)));
  const close = () => keepingStill(place, () => node.remove());
  if (action?.label) {
    const act = () => {
      close();
      action.run?.();
    };
    node.append(button(action.label, act, { class: "button notice-act" }));
  }
  node.append(button("✕", close, { class: "button notice-close", "aria-label": "Close the message" }));
  keepingStill(place, () => {
    for (const old of host.querySelectorAll(`[data-kind=${kind}]`)) old.remove();
    host.append(node);
    host.scrollTop = node.offsetTop - host.offsetTop;
  });
  if (!action?.stays) setTimeout(close, SECONDS * 1000);
}

/**
 * Once something else was done, what was said before, and its Undo, would be about the wrong act; so with what of another
 * `kind` is true no more.
 * @param {HTMLElement} host
 * @param {HTMLElement} place
 * @param {string} [kind]
 */
export const unsay = (host, place, kind = "said") =>
  keepingStill(place, () => {
    for (const old of host.querySelectorAll(`[data-kind=${kind}]`)) old.remove();
  });

function keepingStill(place, change) {
  const before = place.getBoundingClientRect().top;
  change();
  place.scrollTop += place.getBoundingClientRect().top - before;
}
