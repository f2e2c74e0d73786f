import { offlineSentence } from "../widgets/messages/status.js";
import { notice } from "./notices.js";

/** @import { OfflineState } from "../offline/offline.d.ts" */

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
      notice("A new version is here.", { label: "Use it now", run: acceptUpdate, stays: true, news: true });
    phase = offline.phase;
  };
}
