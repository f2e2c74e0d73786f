/** Whether the site can be reached, and when it may be again. */
import { packURL } from "./pack.js";

const PAUSE = 2000;
const PATIENCE = 10_000;

/** Whether the site answers now, whatever it says. Nothing that is kept on the device answers for it. */
export async function isInReach() {
  try {
    // An older browser, which has no such signal, waits as long as it likes.
    const signal = AbortSignal.timeout?.(PATIENCE);
    await fetch(packURL("pack.json"), { method: "HEAD", cache: "no-store", signal });
    return true;
  } catch {
    return false;
  }
}

/** Resolves when the browser says that it is online, or after a moment: it does not always say so. */
export function networkMayBeBack() {
  return new Promise((resolve) => {
    setTimeout(resolve, PAUSE);
    self.addEventListener("online", resolve, { once: true });
  });
}
