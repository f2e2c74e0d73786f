import { aloud, inWords, notice, unsay } from "./notices.js";

/** @import { OpenProject } from "./place.d.ts" */
/** @import { StateKeeper } from "../store/shapes.d.ts" */

/**
 * What a place can do to the project: to the document `here.of` that was open when it was drawn, and to no other.
 * @param {{state: StateKeeper, projects: ReturnType<typeof import("../store/project/project.js").projectKeeper>}} page
 * @param {{of: string | null}} here
 * @returns {OpenProject}
 */
export function projectActs({ state, projects }, here) {
  /** Where no project was open there may be one by now: the one that what was done before this has begun. */
  const of = () => here.of ?? undefined;
  const settings = () => state.get().record?.document.settings ?? {};
  const undoStep = (/** @type {number} */ step) => aloud(projects.undoStep(step, of()));

  /** @type {OpenProject["change"]} */
  async function change(act, { undoable = true, ...how } = {}) {
    const answer = await projects.change(act, { ...how, of: of() });
    if (!answer.ok) notice(inWords(answer.error));
    else notice(answer.said, undoable ? undoing(answer.step) : null);
    return answer;
  }

  /**
   * The way to take back what was done; none where all was as it is already.
   * @param {number | undefined} step
   */
  const undoing = (step) => (step === undefined ? null : { label: "Undo", run: () => undoStep(step) });

  /** @type {OpenProject["tryChange"]} */
  async function tryChange(act, how) {
    const answer = await projects.change(act, { ...how, of: of() });
    if (answer.ok) unsay();
    return answer;
  }

  return {
    settings,
    unit: () =>
      settings().unit ?? state.get().described?.settings.find((field) => field.key === "unit")?.default ?? "in",
    change,
    tryChange,
    changeBy: (message, how) => projects.changeBy(message, { ...how, of: of() }),
    undo: () => aloud(projects.undo(of())),
    undoStep,
    redo: () => aloud(projects.redo(of())),
  };
}
