import { openDB } from "idb";

/** @import { IDBPDatabase } from "idb" */

/**
 * Opens the store, and opens another when it was closed under an open page.
 * @param {object} options
 * @param {() => void} options.onBlocked called while another tab holds an older store open
 * @param {() => void} options.onErased called when the store was erased under the page, or may have been
 * @returns {() => Promise<IDBPDatabase>} the open store
 */
export function opener({ onBlocked, onErased }) {
  /** @type {Promise<IDBPDatabase> | null} */
  let open = null;
  const forget = () => {
    open = null;
  };
  const gone = () => {
    forget();
    onErased();
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
      // Another tab wants a newer version, or none at all: let go, so that it isn't blocked.
      blocking(_current, wanted, event) {
        if (event.target instanceof IDBDatabase) event.target.close();
        if (wanted === null) gone();
      },
      // The system has closed it, most likely to clear it.
      terminated: gone,
    });
    open.catch(forget);
    return open;
  };
}
