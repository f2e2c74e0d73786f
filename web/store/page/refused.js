/** @import { NotDone } from "../shapes.d.ts" */

/** By the name of the browser's error: what happened, and what can be done. */
const SAID = {
  QuotaExceededError: {
    message: "This could not be kept: the browser has no more room for Sawside.",
    remedy: "Free some space on the device, then try again. What you typed is still here.",
  },
  SecurityError: {
    message: "This browser does not let Sawside keep anything.",
    remedy: "Allow this site to store data, or leave the private window, then reload.",
  },
  VersionError: {
    message: "A newer Sawside has used this browser's store already.",
    remedy: "Close all of its tabs, then open it again while you're online.",
  },
  InvalidStateError: {
    message:
      "This could not be kept: the browser closed the store, as it does when a newer Sawside opens in another tab.",
    remedy: "What you typed is still here. Note it, then reload this page.",
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
    message: `This could not be kept: ${error.message}`,
    remedy: "Free some space on the device, then try again. What you typed is still here.",
    ...SAID[nameOf(error)],
  },
});
