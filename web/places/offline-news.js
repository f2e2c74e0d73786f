import { offlineSentence } from "../widgets/messages/status.js";
import { notice } from "./notices.js";

/**
 * Tells when the page can be used without network, and when a newer version can be.
 * @param {() => void} acceptUpdate changes to the newer version
 * @returns {(offline: object) => void} called with each change
 */
export function offlineNews(acceptUpdate) {
  let phase = null;
  return (offline) => {
    if (offline.phase === "ready" && phase === "installing") notice(offlineSentence(offline), { news: true });
    if (offline.update)
      notice("A new version is here.", { label: "Use it now", run: acceptUpdate, stays: true, news: true });
    phase = offline.phase;
  };
}
