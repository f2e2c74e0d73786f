const two = (number) => String(number).padStart(2, "0");

/** This minute by the clock on the wall, as it is kept: 2026-11-25T17:20. */
export function thisMinute() {
  const now = new Date();
  const day = [now.getFullYear(), two(now.getMonth() + 1), two(now.getDate())].join("-");
  return `${day}T${two(now.getHours())}:${two(now.getMinutes())}`;
}

/** An act with its time, for the project's log. */
export const dated = (act) => ({ ...act, when: thisMinute() });
