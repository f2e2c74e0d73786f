import { openDB } from "idb";

/**
 * Opens the store, and opens it anew when the system cleared and closed it under an open page.
 * @param {() => void} onBlocked called while another tab holds an older store open
 * @returns {() => Promise<object>} the open store
 */
export function opener(onBlocked) {
  let open = null;
  const forget = () => {
    open = null;
  };
  return () => {
    if (open) return open;
    open = openDB("sawside", 2, {
      upgrade(store, from) {
        if (from < 1) {
          store.createObjectStore("page");
          store.createObjectStore("projects", { keyPath: "id" });
        }
        store.createObjectStore("photos");
      },
      blocked: onBlocked,
      // Another tab wants a newer version: let go, so that it isn't blocked.
      blocking: (_current, _wanted, event) => event.target.close(),
      terminated: forget,
    });
    open.catch(forget);
    return open;
  };
}
