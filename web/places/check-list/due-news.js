import { unbroken } from "../../widgets/numbers/unbroken.js";
import { notice, unsay } from "../notices.js";
import { toLine } from "./next-step.js";

/** @import { StepAhead } from "../../python/contract.d.ts" */
/** @import { Picture } from "../../store/shapes.d.ts" */
/** @import { App } from "../place.d.ts" */

/** The longest that a timer of the browser takes, in milliseconds: 24.8 days. */
const LONGEST = 2 ** 31 - 1;
/** As long until it is looked once more where the core does not say what the clock says. */
const SHORTEST = 1000;
const KIND = "due";
const MOST_TOLD = 2;

/**
 * Tells, while the page is open, of each step of the open project whose time comes: once on this device. The core says
 * which are due; here is only waited until the next one may be.
 * @param {Pick<App, "state" | "projects">} page
 */
export function dueNews({ state, projects }) {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  /** @type {string[]} what is said of now */
  let standing = [];

  function tell() {
    const { view, record, dueTold } = state.get();
    const due = (view?.steps ?? []).filter((step) => step.state === "due");
    const keys = due.map(keyOf);
    if (standing.some((key) => !keys.includes(key))) withdraw();
    if (!record) return;
    const before = dueTold[record.id] ?? [];
    const fresh = due.filter((step) => !before.includes(keyOf(step)));
    if (fresh.length === 0) return;
    const there = new Set(keysOfAll(view));
    const told = [...before.filter((key) => there.has(key)), ...fresh.map(keyOf)];
    state.set({ dueTold: { ...dueTold, [record.id]: told } });
    say(fresh);
  }

  /** @param {StepAhead[]} fresh */
  function say(fresh) {
    standing = fresh.map(keyOf);
    const lines = fresh.slice(0, MOST_TOLD).map(({ line }) => line);
    const more = fresh.length > MOST_TOLD ? `; ${fresh.length - MOST_TOLD} more` : "";
    const open = () => toLine({ state }, fresh[0]);
    notice(unbroken(`Due: ${lines.join("; ")}${more}.`), { label: "Open", run: open, stays: true, kind: KIND });
  }

  function withdraw() {
    standing = [];
    unsay(KIND);
  }

  const ahead = () => (state.get().view?.steps ?? []).filter((step) => step.state !== "due");

  function wait() {
    clearTimeout(timer);
    const left = cameMeanwhile() ? SHORTEST : untilNext();
    if (left) timer = setTimeout(projects.look, Math.min(LONGEST, Math.max(SHORTEST, left)));
  }

  /** Whether the time of a step came while the core worked out which are due. */
  function cameMeanwhile() {
    const { asked } = state.get().view ?? {};
    return ahead().some((step) => asked && step.due && step.due.at > asked && leftTo(step) <= 0);
  }

  // What waits for a step that is late has a time that has gone by, and comes due when that one is done. So has all
  // by a clock that the core does not take, as one in another century: nothing comes due.
  const untilNext = () =>
    ahead()
      .map(leftTo)
      .find((each) => each > 0);

  /** A device that slept has not counted on. */
  function back() {
    if (document.hidden) return;
    if (ahead().some((step) => leftTo(step) <= 0)) projects.look();
    else wait();
  }

  state.subscribe((changed) => {
    if (!changed.includes("view")) return;
    tell();
    wait();
  });
  document.addEventListener("visibilitychange", back);
}

/**
 * Milliseconds until a step's time; none of one that has no time.
 * @param {StepAhead} step
 */
const leftTo = ({ due }) => (due ? new Date(due.at).getTime() - Date.now() : NaN);

/**
 * A step, and for when: moved to another moment it is told again.
 * @param {{entry: string, step: string, due: StepAhead["due"]}} step
 */
const keyOf = ({ entry, step, due }) => [entry, step, due?.at].join("/");

/**
 * Of all steps of a project, those that are done too: one that is unticked is no news.
 * @param {Picture | null} view
 */
const keysOfAll = (view) =>
  (view?.check_lists ?? []).flatMap(({ entry, steps }) =>
    steps.map(({ key, due }) => keyOf({ entry, step: key, due })),
  );
