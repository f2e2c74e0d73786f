import { button } from "../element.js";

/** @import { CoreState } from "../../python/core.d.ts" */
/** @import { OfflineState } from "../../offline/offline.d.ts" */

const MEGABYTE = 1e6;
const megabytes = (bytes) => (bytes / MEGABYTE).toFixed(1);

/**
 * One line on what the page is waiting for; hidden when there is nothing to say.
 * @param {HTMLElement} node
 * @param {{core: CoreState | null, offline: OfflineState | null, old: boolean}} now `old` where an old view is shown
 */
export function statusLine(node, { core, offline, old }) {
  const updating = old && core?.phase !== "failed" ? "Updating. What you see is from before your last change." : "";
  const said = [updating, sentence(core, offline)].filter(Boolean).join(" ");
  node.hidden = said === "";
  node.textContent = said;
  if (core?.again) node.append(" ", button("Try again", core.again));
  node.style.setProperty("--done", String(core?.total ? Math.min(1, core.loaded / core.total) : 0));
}

/**
 * @param {CoreState | null} core
 * @param {OfflineState | null} offline
 */
function sentence(core, offline) {
  if (!core || core.phase === "failed") return core?.message ?? "";
  if (core.phase === "starting") {
    if (core.way === "snapshot" || !core.step) return "";
    const bytes = core.total ? `, ${megabytes(core.loaded)} of ${megabytes(core.total)} MB` : "";
    return `${core.step}${bytes}. Go ahead and type.`;
  }
  if (offline?.phase === "installing") return "Ready. Still saving a copy for offline use…";
  return offline?.phase === "failed" ? offlineSentence(offline) : "";
}

/**
 * Whether the app can be opened with no network, in words.
 * @param {OfflineState | null} offline
 */
export function offlineSentence(offline) {
  if (offline?.phase === "ready") return "Ready to use offline.";
  if (offline?.phase === "installing") return "Saving a copy for offline use…";
  if (offline?.phase === "unsupported") return "This browser can’t run Sawside offline.";
  if (offline?.phase === "failed") return "The offline copy isn’t finished. Sawside will try again when you’re online.";
  return "";
}
