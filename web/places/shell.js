import { isOldPicture } from "../store/project/identity.js";
import { byId, element } from "../widgets/element.js";
import { keypadSheet } from "../widgets/keys/sheet.js";
import { statusLine } from "../widgets/messages/status.js";
import { settingsIcon } from "../widgets/pictures/icons.js";
import { dueNews } from "./check-list/due-news.js";
import { frame } from "./frame.js";
import { offlineNews } from "./news.js";

export { review as accept } from "../widgets/messages/review.js";

/** @import { App } from "./place.d.ts" */

/** What the status line tells of. */
const ON_STATUS = ["core", "offline", "view", "record"];

/**
 * Said in the place before anything can be drawn there.
 * @param {string} sentence
 */
export const waiting = (sentence) => byId("place").replaceChildren(element("p", { class: "opening" }, sentence));

/**
 * What stays on the screen while the places change: title, tabs, status, keypad sheet.
 * @param {Omit<App, "project" | "sheet">} page
 */
export function shell(page) {
  const { state, acceptUpdate } = page;
  const sheet = keypadSheet(byId("sheet"), () => state.get().strip);
  const places = frame({ ...page, sheet }, byId("place"));
  const tellOffline = offlineNews(acceptUpdate);

  /** @param {string[]} changed */
  function refresh(changed) {
    const now = state.get();
    if (ON_STATUS.some((key) => changed.includes(key))) statusLine(byId("status"), { ...now, old: isOldPicture(now) });
    if (changed.includes("offline")) tellOffline(now.offline);
    document.body.dataset.hand = now.hand.side;
    places.refresh(changed);
  }

  byId("to-settings").prepend(settingsIcon());
  addEventListener("hashchange", places.arrive);
  state.subscribe(refresh);
  dueNews(page);
  places.draw();
  refresh(["core"]);
}
