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
 * A minute as one says it, by the clock on the wall: "today 17:20", "yesterday 9:05", "Nov 25".
 * @param {string} when as it is kept
 */
export function dayOf(when) {
  const [day, time] = when.split("T");
  const then = new Date(`${day}T12:00`);
  if (!time || Number.isNaN(then.getTime())) return "";
  const today = new Date();
  const isDay = (/** @type {number} */ ago) =>
    new Date(today.getFullYear(), today.getMonth(), today.getDate() - ago, 12).getTime() === then.getTime();
  if (isDay(0)) return `today ${time}`;
  if (isDay(1)) return `yesterday ${time}`;
  const year = then.getFullYear() === today.getFullYear() ? {} : /** @type {const} */ ({ year: "numeric" });
  return then.toLocaleDateString("en-US", { month: "short", day: "numeric", ...year });
}

/**
 * An act with its time, for the project's log.
 * @param {Act} act
 */
export const dated = (act) => ({ ...act, when: thisMinute() });
