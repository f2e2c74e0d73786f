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
  const updating = old && core?.phase !== "failed" ? "Updating what you see from before your last change." : "";
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
    return `${core.step}${bytes}. You can type already.`;
  }
  if (offline?.phase === "installing") return "Answering. Still keeping a copy for when there is no network…";
  return offline?.phase === "failed" ? offlineSentence(offline) : "";
}

/**
 * Whether the app can be opened with no network, in words.
 * @param {OfflineState | null} offline
 */
export function offlineSentence(offline) {
  if (offline?.phase === "ready") return "Ready without network.";
  if (offline?.phase === "installing") return "Keeping a copy for when there is no network…";
  if (offline?.phase === "unsupported") return "This browser can't keep the app for use without network.";
  if (offline?.phase === "failed")
    return "The copy for use without network is not whole yet; it will be tried again when the network is back.";
  return "";
}
