/** The page's side of use without network: readiness that is true, updates that are offered. */
import { firstAnswer } from "./first-answer.js";
import { askWorker } from "./ask-worker.js";

const HOUR = 3_600_000;
const PAUSE = 20_000;

/**
 * Keep all of the site on the device, beginning after the first answer, so that nothing competes
 * with it. `onState({phase, loaded, total, update})` hears of every change, in files: phase
 * "unsupported" | "installing" | "ready" | "failed", the last until the network is back.
 * `acceptUpdate()` changes to the new version and loads the page anew.
 */
export function keepOffline({ onState }) {
  const container = navigator.serviceWorker;
  let state = { phase: "installing", loaded: 0, total: 0, update: false };
  let registration = null;

  const change = (more) => {
    state = { ...state, ...more };
    onState(state);
  };

  /** Say "ready" once the version in use has every file; load again what is missing. */
  async function check() {
    const { missing, total } = await askWorker(registration.active, { ask: "missing" });
    change({ loaded: total - missing.length, total });
    // The service worker puts what it loads for a page back where it belongs.
    const loaded = await Promise.allSettled(missing.map((url) => fetch(url)));
    if (!missing.length) change({ phase: "ready" });
    else if (loaded.every(({ value }) => value?.ok)) setTimeout(check, 1000);
    else retryLater();
  }

  function retryLater() {
    change({ phase: "failed" });
    const timer = setTimeout(again, PAUSE);
    addEventListener("online", again, { once: true });
    function again() {
      clearTimeout(timer);
      removeEventListener("online", again);
      start();
    }
  }

  function watch(worker) {
    worker?.addEventListener("statechange", () => {
      if (worker.state === "installed" && registration.active) change({ update: true });
      if (worker.state === "activated") check();
      if (worker.state === "redundant" && !registration.active) retryLater();
    });
  }

  async function start() {
    try {
      registration = await container.register("service-worker.js", { updateViaCache: "none" });
    } catch (error) {
      // A browser that may keep nothing, as in a private window, refuses by name.
      return error.name === "SecurityError" ? change({ phase: "unsupported" }) : retryLater();
    }
    watch(registration.installing);
    registration.onupdatefound = () => watch(registration.installing);
    if (registration.waiting && registration.active) change({ update: true });
    if (registration.active) await check();
  }

  let looked = Date.now();
  function lookForUpdate() {
    if (document.hidden || Date.now() - looked < HOUR) return;
    looked = Date.now();
    registration?.update().catch(() => {});
  }

  function acceptUpdate() {
    container.addEventListener("controllerchange", () => location.reload(), { once: true });
    registration.waiting?.postMessage({ ask: "take over" });
  }

  if (!container) queueMicrotask(() => change({ phase: "unsupported" }));
  else {
    container.addEventListener("message", ({ data }) => {
      if (data.keeping && state.phase === "installing" && !state.update) change(data.keeping);
    });
    firstAnswer().then(start);
    addEventListener("visibilitychange", lookForUpdate);
  }
  return { acceptUpdate };
}
