/** The page's side of use without network: readiness that is true, updates that are offered. */
import { askWorker } from "./ask-worker.js";

/** @import { OfflineState, Report } from "./offline.d.ts" */

const HOUR = 3_600_000;
const PAUSE = 20_000;
/** By these names a browser refuses that may keep nothing, as in a private window or where site data are blocked. */
const FOR_GOOD = ["SecurityError", "NotSupportedError"];

/**
 * Keep all of the site on the device, beginning when `after` has resolved, so that nothing competes
 * with what is waited for. `onState({phase, loaded, total, update})` hears of every change, in files:
 * phase "unsupported" | "installing" | "ready" | "failed", which lasts until another try succeeds.
 * `acceptUpdate()` changes to the new version and loads the page anew.
 * @param {{onState(now: OfflineState): void, after: Promise<unknown>}} options
 */
export function keepOffline({ onState, after }) {
  /** @type {OfflineState} */
  let state = { phase: "installing", loaded: 0, total: 0, update: false };
  /** @param {Partial<OfflineState>} more */
  const change = (more) => {
    state = { ...state, ...more };
    onState(state);
  };

  const container = workers();
  if (!container) {
    queueMicrotask(() => change({ phase: "unsupported" }));
    return { acceptUpdate: async () => {} };
  }
  const { start, lookForUpdate, acceptUpdate } = keepWith(container, change);
  container.addEventListener(
    "message",
    ({ data }) => data.keeping && state.phase === "installing" && change(data.keeping),
  );
  addEventListener("online", () => state.phase === "failed" && start());
  whenSeenHourly(lookForUpdate);
  after.then(start);
  return { acceptUpdate };
}

/**
 * @param {ServiceWorkerContainer} container
 * @param {(more: Partial<OfflineState>) => void} change hears how it goes
 */
function keepWith(container, change) {
  /** @type {ServiceWorkerRegistration | null} */
  let registration = null;
  let retry = 0;

  /** Say "ready" once the version in use has every file; load again what is missing. */
  async function check() {
    if (!registration?.active) return;
    /** @type {Report} */
    const { missing, total, update } = await askWorker(registration.active, { ask: "report" });
    change({ loaded: total - missing.length, total, update });
    if (!missing.length) return change({ phase: "ready" });
    // The service worker puts what it loads for a page back where it belongs.
    if (await areLoaded(missing)) setTimeout(check, 1000);
    else tryLater();
  }

  function tryLater() {
    change({ phase: "failed" });
    clearTimeout(retry);
    retry = setTimeout(start, PAUSE);
  }

  /** @param {ServiceWorker | null} worker */
  function watch(worker) {
    worker?.addEventListener("statechange", () => {
      if (worker.state === "activated") check();
      if (worker.state === "redundant" && !registration?.active) tryLater();
    });
  }

  async function start() {
    try {
      registration = await container.register("service-worker.js", { updateViaCache: "none" });
    } catch (error) {
      const isForGood = error instanceof Error && FOR_GOOD.includes(error.name);
      return isForGood ? change({ phase: "unsupported" }) : tryLater();
    }
    watch(registration.installing);
    registration.onupdatefound = () => watch(registration?.installing ?? null);
    await check();
  }

  async function acceptUpdate() {
    if (!registration?.active) return;
    await askWorker(registration.active, { ask: "use newest" });
    location.reload();
  }

  return { start, acceptUpdate, lookForUpdate: () => registration?.update().catch(() => {}) };
}

/** @param {string[]} addresses */
async function areLoaded(addresses) {
  const loaded = await Promise.allSettled(addresses.map((address) => fetch(address)));
  return loaded.every((each) => each.status === "fulfilled" && each.value.ok);
}

/**
 * When the page comes into sight, and not oftener than once an hour.
 * @param {() => unknown} act
 */
function whenSeenHourly(act) {
  let acted = Date.now();
  document.addEventListener("visibilitychange", () => {
    if (document.hidden || Date.now() - acted < HOUR) return;
    acted = Date.now();
    act();
  });
}

/** What service workers are asked of; where none may be, some browsers have nothing there, and some throw. */
function workers() {
  try {
    return navigator.serviceWorker;
  } catch {
    return undefined;
  }
}
