import { draftKey } from "../../store/page/state.js";
import { draftIn, same } from "../../store/project/draft.js";
import { identity } from "../../store/project/identity.js";
import { quietly } from "../notices.js";
import { choose, chosen } from "./printing.js";

/** @import { Document } from "../../python/contract.d.ts" */
/** @import { NotDone } from "../../store/shapes.d.ts" */
/** @import { Typed } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

/** @typedef {Record<string, Typed>} Grid as typed, by the keys of its fields */

/** @type {NotDone} */
const MEANWHILE = {
  ok: false,
  error: {
    kind: "meanwhile",
    message: "The label sheet was changed, here or in another tab.",
    remedy: "What you typed is still here. Type it again to save it anyway.",
  },
};

/**
 * The grid of the stickers: the project's own; for a project without one, what was last used on this device. It goes
 * into the project when a field is left or the labels are printed, and what is typed until then outlives the page.
 * @param {App} app
 * @param {{key: string}[]} fields what is set of a grid
 */
export function labelGrid(app, fields) {
  const { draft, ofProject, isTyped, isKept, alike, begun } = gridNow(app, fields);
  /** What a bare number means in it. */
  const unit = begun.unit ?? app.project.unit();
  let keeping = Promise.resolve();
  let refused = false;
  const typedOver = () => (isTyped() ? draft.get().was : ofProject());

  /**
   * The grid is one whole: it is not laid over another one that this tab has not seen. What it sent itself it has seen,
   * even where the page was closed before it was told that it is kept.
   */
  const act = (/** @type {Grid} */ values) => (/** @type {Document} */ document) => {
    const { labels } = document;
    const { sent } = draft.get();
    refused = !same(labels, typedOver()) && !(sent && labels && alike(labels.values, sent));
    if (refused) return MEANWHILE;
    if (isTyped()) draft.keep({ was: labels, sent: values });
    return { act: "labels", values, unit };
  };

  /** @param {Grid} values */
  async function keepNow(values) {
    if (app.state.get().record && !isKept(values)) {
      const answer = await quietly(app.project.tryChange(act(values)));
      if (!answer.ok) return;
    }
    if (isTyped() && isKept(draft.get().values ?? {})) draft.drop();
    else if (isTyped()) draft.keep({ was: ofProject() });
  }
  const keep = (/** @type {Grid} */ values) => (keeping = keeping.then(() => keepNow(values)));

  /** @param {Grid} values */
  function type(values) {
    draft.keep({ values, unit, was: refused ? ofProject() : typedOver() });
    refused = false;
    choose(app, { labels: values, labelsUnit: unit });
  }

  const keepTyped = () => isTyped() && keep(draft.get().values ?? {});
  /**
   * The project's own where it was changed elsewhere, as by an undo; else null.
   * @param {Grid} values
   */
  const changed = (values) => (isTyped() || isKept(values) ? null : (ofProject()?.values ?? null));
  return { values: begun.values ?? {}, unit, type, keep, keepTyped, changed };
}

/**
 * The grid as it is now: typed, or of the project, or used last.
 * @param {App} app
 * @param {{key: string}[]} fields
 */
function gridNow(app, fields) {
  const draft = draftIn(app.state, draftKey(`${identity(app.state.get().record)}/labels`));
  const ofProject = () => app.state.get().record?.document.labels;
  const lastUsed = () => ({ values: chosen(app).labels ?? {}, unit: chosen(app).labelsUnit ?? app.project.unit() });
  const isTyped = () => Boolean(draft.get().values);
  /**
   * @param {Grid} one
   * @param {Grid} other
   */
  const alike = (one, other) => fields.every(({ key }) => (one[key] ?? "") === (other[key] ?? ""));
  return {
    draft,
    ofProject,
    isTyped,
    alike,
    isKept: (/** @type {Grid} */ values) => alike(values, ofProject()?.values ?? {}),
    begun: isTyped() ? draft.get() : (ofProject() ?? lastUsed()),
  };
}
