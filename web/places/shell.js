import { isOldPicture } from "../store/project/old-picture.js";
import { element } from "../widgets/element.js";
import { keypadSheet } from "../widgets/keys/sheet.js";
import { statusLine } from "../widgets/messages/status.js";
import { settingsIcon } from "../widgets/pictures/icons.js";
import { frame } from "./frame.js";
import { offlineNews } from "./news.js";

export { review as accept } from "../widgets/messages/review.js";

/** What the status line tells of. */
const ON_STATUS = ["core", "offline", "view", "record"];

const by = (id) => document.getElementById(id);

/** Said in the place before anything can be drawn there. */
export const waiting = (sentence) => by("place").replaceChildren(element("p", { class: "opening" }, sentence));

/**
 * What stays on the screen while the places change: title, tabs, status, keypad sheet.
 * @param {Omit<import("./place").App, "project" | "sheet">} page
 */
export function shell(page) {
  const { state, acceptUpdate } = page;
  const sheet = keypadSheet(by("sheet"), () => state.get().strip);
  const places = frame({ ...page, sheet }, by("place"));
  const tellOffline = offlineNews(acceptUpdate);

  function refresh(changed) {
    const now = state.get();
    by("project-name").textContent = now.view?.name ?? "";
    if (ON_STATUS.some((key) => changed.includes(key))) statusLine(by("status"), { ...now, old: isOldPicture(now) });
    if (changed.includes("offline")) tellOffline(now.offline);
    places.refresh(changed);
  }

  by("to-settings").prepend(settingsIcon());
  addEventListener("hashchange", places.arrive);
  state.subscribe(refresh);
  places.draw();
  refresh(["core"]);
}
