/** @import { StateKeeper } from "../shapes.d.ts" */

/**
 * Ask the browser, once there is something to lose, not to clear what is kept when space runs out.
 * The state's `stays` is then true or false; null where the browser can't say.
 * @param {StateKeeper} state
 */
export function askToStay(state) {
  const { storage } = navigator;
  let asked = false;

  async function ask() {
    if (asked || !state.get().record?.revision) return;
    asked = true;
    try {
      state.set({ stays: (await storage.persisted()) || (await storage.persist()) });
    } catch {
      // A browser that has no such promise, or refuses to be asked, can't say.
      state.set({ stays: null });
    }
  }

  state.subscribe((changed) => changed.includes("record") && ask());
  ask();
}
