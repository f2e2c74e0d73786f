import { button, element } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";

/** @import { Action } from "../widget.d.ts" */

const SECONDS = 10;

/**
 * Say a sentence between the head of the screen and the place, with one thing that can be done
 * about it. It covers nothing, and what stands in the place stays where it is under the thumb.
 * What the app has to tell of its own accord (`news`) never takes the place of what was said of
 * the person's last act, nor its Undo. One stands at a time: news waits until that is closed, but for what
 * must come `first`.
 * @param {HTMLElement} host where it is said
 * @param {HTMLElement} place what scrolls below it
 * @param {string} sentence
 * @param {Action | null} [action]
 */
export function notice(host, place, sentence, action = null) {
  const kind = action?.news ? "news" : "said";
  const node = element(
    "div",
    { class: "notice", "data-kind": kind, "data-first": action?.first },
    element("p", {}, unbroken(sentence)),
  );
  const close = () =>
    keepingStill(place, () => {
      node.remove();
      oneAtATime(host);
    });
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
    if (!action?.stays) whenInSight.set(node, () => setTimeout(close, SECONDS * 1000));
    oneAtATime(host);
  });
}

/** What is begun once a sentence is in sight: its time. */
const whenInSight = new WeakMap();

/** @param {HTMLElement} host */
function oneAtATime(host) {
  const all = [...host.querySelectorAll(".notice")];
  const shown = ["[data-first]", "[data-kind=said]", "*"]
    .map((look) => all.find((each) => each.matches(look)))
    .find(Boolean);
  if (!shown) return;
  for (const each of all) each.toggleAttribute("hidden", each !== shown);
  host.scrollTop = 0;
  whenInSight.get(shown)?.();
  whenInSight.delete(shown);
}

/**
 * Once something else was done, what was said before, and its Undo, would be about the wrong act.
 * @param {HTMLElement} host
 * @param {HTMLElement} place
 */
export const unsay = (host, place) =>
  keepingStill(place, () => {
    for (const old of host.querySelectorAll("[data-kind=said]")) old.remove();
    oneAtATime(host);
  });

function keepingStill(place, change) {
  const before = place.getBoundingClientRect().top;
  change();
  place.scrollTop += place.getBoundingClientRect().top - before;
}
