import { aloud, inWords, notice, unsay } from "./notices.js";

/**
 * What a place can do to the project: to the document `here.of` that was open when it was drawn, and to no other.
 * @param {{state: object, projects: object}} page
 * @param {{of: string | null}} here
 * @returns {import("./place").OpenProject}
 */
export function projectActs({ state, projects }, here) {
  const settings = () => state.get().record?.document.settings ?? {};
  const undoStep = (step) => aloud(projects.undoStep(step, here.of));

  async function change(act, { undoable = true, ...how } = {}) {
    const answer = await projects.change(act, { ...how, of: here.of });
    if (answer.ok) notice(answer.said, undoable ? { label: "Undo", run: () => undoStep(answer.step) } : null);
    else notice(inWords(answer.error));
    return answer;
  }

  async function tryChange(act, how) {
    const answer = await projects.change(act, { ...how, of: here.of });
    if (answer.ok) unsay();
    return answer;
  }

  return {
    settings,
    unit: () =>
      settings().unit ?? state.get().described?.settings.find((field) => field.key === "unit").default ?? "in",
    change,
    tryChange,
    changeBy: (message, how) => projects.changeBy(message, { ...how, of: here.of }),
    undo: () => aloud(projects.undo(here.of)),
    undoStep,
    redo: () => aloud(projects.redo(here.of)),
  };
}
