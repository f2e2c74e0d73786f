import { freshId } from "../page/fresh-id.js";
import { identity } from "./identity.js";
import { oneStep } from "./one-step.js";
import { NOTHING_LEFT } from "./refusals.js";
import { actOf } from "./undo-redo.js";
import { dated } from "./when.js";

/** @import { Ask, Document, Message } from "../../python/contract.d.ts" */
/** @import { Changed, Doing, NotDone, ProjectRecord, Replacing, Step, Unchanged, Wanted } from "../shapes.d.ts" */

/**
 * What a change comes to: each gives, for what is wanted, the way from the latest record to the core's answer.
 * @param {Ask} ask
 */
export function workedOut(ask) {
  /**
   * @param {ProjectRecord} latest
   * @param {Doing} act one that holds a whole document puts it in the place of the other
   * @returns {Promise<Changed>}
   */
  async function worked(latest, act) {
    if (isReplacing(act)) return replaced(latest, act);
    const answer = await ask({ do: "change", document: latest.document, act: dated(act) });
    return answer.ok ? { ...answer, did: act.act } : answer;
  }

  /** @param {(record: ProjectRecord) => Step[]} stepsOf */
  const lastOf = (stepsOf) => async (/** @type {ProjectRecord} */ latest) => {
    const last = stepsOf(latest).at(-1);
    return last ? worked(latest, actOf(last)) : NOTHING_LEFT;
  };

  return {
    /** @param {Wanted} wanted */
    act: (wanted) => async (/** @type {ProjectRecord} */ latest) => {
      const act = typeof wanted === "function" ? wanted(latest.document) : wanted;
      return isAnswer(act) ? act : worked(latest, act);
    },
    /** @param {(document: Document) => Message<"take_csv" | "merge">} message one that answers as a change does */
    message: (message) => async (/** @type {ProjectRecord} */ latest) => ask(message(latest.document)),
    undo: lastOf(({ undo }) => undo),
    redo: lastOf(({ redo }) => redo),
    /** @param {number} id of the step */
    undoStep: (id) => async (/** @type {ProjectRecord} */ latest) => {
      const step = oneStep(latest.undo, id);
      return isAnswer(step) ? step : worked(latest, actOf(step));
    },
  };
}

/**
 * @param {object} value
 * @returns {value is Unchanged | NotDone}
 */
const isAnswer = (value) => "ok" in value;

/**
 * @param {Doing} act
 * @returns {act is Replacing}
 */
const isReplacing = (act) => Boolean(act.document);

/**
 * Drafts belong to a document: they stay with the old one, and come back with it.
 * @param {ProjectRecord} latest
 * @param {Replacing} act
 * @returns {Changed}
 */
const replaced = (latest, { document, documentId = freshId(), said = "Done." }) => ({
  ok: true,
  document,
  documentId,
  undo: { document: latest.document, documentId: identity(latest) },
  said,
  follows: [],
  judged: [],
});
