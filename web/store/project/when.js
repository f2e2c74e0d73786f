/** @import { Act } from "../../python/contract.d.ts" */

const two = (number) => String(number).padStart(2, "0");

const LAST_YEAR = 9999;

/**
 * This minute by the clock on the wall, as it is kept: 2026-11-25T17:20. By a clock that is not set, in a
 * year that can't be kept, it is not known: "".
 */
export function thisMinute() {
  const now = new Date();
  const year = now.getFullYear();
  if (!(year >= 1 && year <= LAST_YEAR)) return "";
  const day = [String(year).padStart(4, "0"), two(now.getMonth() + 1), two(now.getDate())].join("-");
  return `${day}T${two(now.getHours())}:${two(now.getMinutes())}`;
}

/**
 * A moment as one says it, by the clock on the wall: "today 17:20", "yesterday 9:05", "Nov 25".
 * @param {number} at milliseconds, as `Date.now()` has them
 */
export function dayOf(at) {
  const then = new Date(at);
  const now = new Date();
  const yesterday = new Date(now.getFullYear(), now.getMonth(), now.getDate() - 1);
  const time = `${then.getHours()}:${two(then.getMinutes())}`;
  if (then.toDateString() === now.toDateString()) return `today ${time}`;
  if (then.toDateString() === yesterday.toDateString()) return `yesterday ${time}`;
  const year = then.getFullYear() === now.getFullYear() ? {} : /** @type {const} */ ({ year: "numeric" });
  return then.toLocaleDateString("en-US", { month: "short", day: "numeric", ...year });
}

/**
 * An act with its time, for the project's log.
 * @param {Act} act
 */
export const dated = (act) => ({ ...act, when: thisMinute() });
