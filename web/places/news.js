import { refusedByStore } from "../store/page/refused.js";
import { unkeptOf } from "../store/project/draft.js";
import { offlineSentence } from "../widgets/messages/status.js";
import { go } from "./go.js";
import { copy, inWords, notice } from "./notices.js";

/** @import { OfflineState } from "../offline/offline.d.ts" */
/** @import { ProjectRecord, StateKeeper } from "../store/shapes.d.ts" */
/** @import { App } from "./place.d.ts" */

/** What the page tells of its own accord: of the store, of other tabs, of use without network and newer versions. */

/**
 * @param {string} label
 * @param {string} place
 */
const leadTo = (label, place) => ({ label, run: () => go(place), stays: true, news: true });

/** Said once for each cause: it comes with each key press. */
const alreadySaid = new Set();
/** @param {Error} error */
export function storeRefused(error) {
  if (alreadySaid.has(error.name)) return;
  alreadySaid.add(error.name);
  const sentence = `${inWords(refusedByStore(error).error)} You can keep working, but anything new is lost when you close the page.`;
  notice(sentence, leadTo("Back up", "backup"));
}

/** The project that was open last is not in the store any more. */
export const projectGone = () => notice("The browser erased your Sawside data.", leadTo("Restore a backup", "backup"));

/**
 * The store was erased under the open page, which still has the open project and the tally: they are kept again.
 * @param {Pick<App, "state" | "tally" | "projects">} page
 */
export async function erased({ state, tally, projects }) {
  state.keepAgain();
  await tally.keepAgain();
  const answer = await projects.keepAgain();
  if (!answer) return;
  const now = answer.ok
    ? "The open project and the history are saved again, but photos and other projects are gone. Back up now."
    : `${inWords(answer.error)} Back up before you reload.`;
  notice(`Another tab or the browser erased your Sawside data. ${now}`, leadTo("Back up", "backup"));
}

/**
 * What was typed over a project that was deleted elsewhere can still be copied from what is said of it.
 * @param {StateKeeper} state
 * @param {ProjectRecord} record
 */
export function dropped(state, record) {
  const typed = unkeptOf(state.get(), record).join(", ");
  const sentence = `${record.document.name} was deleted in another tab.`;
  if (!typed) return notice(sentence);
  notice(`${sentence} Typed there but not saved: ${typed}`, { label: "Copy", run: () => copy(typed), stays: true });
}

/**
 * Tells when the page can be used without network, and when a newer version can be.
 * @param {() => void} acceptUpdate changes to the newer version
 * @returns {(offline: OfflineState | null) => void} called with each change
 */
export function offlineNews(acceptUpdate) {
  let phase = "";
  return (offline) => {
    if (!offline) return;
    if (offline.phase === "ready" && phase === "installing") notice(offlineSentence(offline), { news: true });
    if (offline.update)
      notice("There’s a new version.", { label: "Update", run: acceptUpdate, stays: true, news: true });
    phase = offline.phase;
  };
}
