const SLEEPS = "This browser can’t keep the screen on. Set a longer screen timeout on your phone.";

/**
 * Keep the screen on until `leave()`; taken anew whenever the page comes back into sight.
 * @param {(sentence: string) => void} say hears what came of it; "" when the screen stays on
 */
export function keepAwake(say) {
  /** @type {WakeLockSentinel | null} */
  let lock = null;
  let left = false;

  async function take() {
    if (document.hidden || left || lock?.released === false) return;
    try {
      lock = await navigator.wakeLock.request("screen");
      say("");
      if (left) lock.release();
    } catch {
      say(SLEEPS);
    }
  }

  document.addEventListener("visibilitychange", take);
  take();
  return {
    leave() {
      left = true;
      document.removeEventListener("visibilitychange", take);
      lock?.release();
    },
  };
}
