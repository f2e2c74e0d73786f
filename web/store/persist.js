/**
 * Ask the browser, once there is something to lose, not to clear what is kept when space runs out.
 * The state's `stays` is then true or false; null where the browser can't say.
 */
export function askToStay(state) {
  const { storage } = navigator;
  let asked = false;

  async function ask() {
    if (asked || !state.get().record?.revision) return;
    asked = true;
    if (!storage?.persist) return state.set({ stays: null });
    state.set({ stays: (await storage.persisted()) || (await storage.persist()) });
  }

  state.subscribe((changed) => changed.includes("record") && ask());
  ask();
}
