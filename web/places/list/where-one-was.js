/**
 * Where one was in a list when one left it: what was searched for, how far down, and by which way. It is kept with the
 * step of the browser's history, so that Back leads there again, and any other way to the list begins at its top.
 */

import { byId, firstIn } from "../../widgets/element.js";

/** @typedef {{typed?: string, down?: number, by?: string}} Was */

/** @returns {Was} */
const was = () => history.state?.list ?? {};

/** @param {Was} now */
const note = (now) => history.replaceState({ list: { ...was(), ...now } }, "");

/** What was searched for. */
export const searchedFor = () => was().typed ?? "";

/** @param {string} typed */
export const noteSearch = (typed) => note({ typed });

/**
 * Notes where one is in a list when a link in it is followed.
 * @param {HTMLElement} list
 */
export function noteLeaving(list) {
  list.addEventListener("click", ({ target }) => {
    const link = target instanceof Element ? target.closest("a") : null;
    if (link) note({ down: byId("place").scrollTop, by: link.getAttribute("href") ?? "" });
  });
}

/**
 * Goes back to where one was in a list, once it is on the screen.
 * @param {HTMLElement} list
 */
export function returnTo(list) {
  const { down, by } = was();
  if (down === undefined) return;
  byId("place").scrollTop = down;
  firstIn(list, `a[href="${by}"]`)?.focus({ preventScroll: true });
}
