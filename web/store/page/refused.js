/** @import { NotDone } from "../shapes.d.ts" */

/** By the name of the browser's error: what happened, and what can be done. */
const SAID = {
  QuotaExceededError: {
    message: "Couldn’t save: the browser is out of space.",
    remedy: "Free up some space on your device, then try again. What you typed is still here.",
  },
  SecurityError: {
    message: "This browser won’t let Sawside save anything.",
    remedy: "Allow site data, or leave private browsing, then reload.",
  },
  VersionError: {
    message: "A newer version of Sawside has already used this browser’s data.",
    remedy: "Close all its tabs, then open it again while you’re online.",
  },
  InvalidStateError: {
    message:
      "Couldn’t save: the browser closed Sawside’s storage. That happens when a newer version opens in another tab.",
    remedy: "What you typed is still here. Write it down, then reload this page.",
  },
};

/** Where site data are blocked Chromium gives the one name that says nothing, with a sentence that says why. */
const nameOf = ({ name, message }) => (name === "UnknownError" && /denied/.test(message) ? "SecurityError" : name);

/**
 * A change that the browser's store refused, told as the core tells a refusal.
 * @param {Error | DOMException} error
 * @returns {NotDone}
 */
export const refusedByStore = (error) => ({
  ok: false,
  error: {
    kind: "store",
    message: `Couldn’t save: ${error.message}`,
    remedy: "Free up some space on your device, then try again. What you typed is still here.",
    ...SAID[nameOf(error)],
  },
});
