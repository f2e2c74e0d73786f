/** The page's side of use without network: readiness that is true, updates that are offered. */
import { askWorker } from "./ask-worker.js";

const HOUR = 3_600_000;
const PAUSE = 20_000;
/** By these names a browser refuses that may keep nothing, as in a private window or where site data are blocked. */
const FOR_GOOD = ["SecurityError", "NotSupportedError"];

/**
 * Keep all of the site on the device, beginning when `after` has resolved, so that nothing competes
 * with what is waited for. `onState({phase, loaded, total, update})` hears of every change, in files:
 * phase "unsupported" | "installing" | "ready" | "failed", which lasts until another try succeeds.
 * `acceptUpdate()` changes to the new version and loads the page anew.
 */
export function keepOffline({ onState, after }) {
  const container = workers();
  let state = { phase: "installing", loaded: 0, total: 0, update: false };
  let registration = null;
  let retry = 0;

  const change = (more) => {
    state = { ...state, ...more };
    onState(state);
  };

  /** Say "ready" once the version in use has every file; load again what is missing. */
  async function check() {
    const { missing, total, update } = await askWorker(registration.active, { ask: "report" });
    change({ loaded: total - missing.length, total, update });
    if (!missing.length) return change({ phase: "ready" });
    // The service worker puts what it loads for a page back where it belongs.
    const loaded = await Promise.allSettled(missing.map((url) => fetch(url)));
    if (loaded.every(({ value }) => value?.ok)) setTimeout(check, 1000);
    else tryLater();
  }

  function tryLater() {
    change({ phase: "failed" });
    clearTimeout(retry);
    retry = setTimeout(start, PAUSE);
  }

  function watch(worker) {
    worker?.addEventListener("statechange", () => {
      if (worker.state === "activated") check();
      if (worker.state === "redundant" && !registration.active) tryLater();
    });
  }

  async function start() {
    try {
      registration = await container.register("service-worker.js", { updateViaCache: "none" });
    } catch (error) {
      return FOR_GOOD.includes(error.name) ? change({ phase: "unsupported" }) : tryLater();
    }
    watch(registration.installing);
    registration.onupdatefound = () => watch(registration.installing);
    if (registration.active) await check();
  }

  let looked = Date.now();
  function lookForUpdate() {
    if (document.hidden || Date.now() - looked < HOUR) return;
    looked = Date.now();
    registration?.update().catch(() => {});
  }

  async function acceptUpdate() {
    await askWorker(registration.active, { ask: "use newest" });
    location.reload();
  }

  if (container) {
    container.addEventListener(
      "message",
      ({ data }) => data.keeping && state.phase === "installing" && change(data.keeping),
    );
    addEventListener("online", () => state.phase === "failed" && start());
    document.addEventListener("visibilitychange", lookForUpdate);
    after.then(start);
  } else queueMicrotask(() => change({ phase: "unsupported" }));
  return { acceptUpdate };
}

/** What service workers are asked of; where none may be, some browsers have nothing there, and some throw. */
function workers() {
  try {
    return navigator.serviceWorker;
  } catch {
    return undefined;
  }
}
