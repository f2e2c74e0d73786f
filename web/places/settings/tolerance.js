import { projectKey } from "../forms/form-draft.js";
import { keptForm } from "../forms/kept-form.js";

/** @import { DrawnField } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

const KEY = "tolerance";

/**
 * How much a cut piece may be off and still be good; null where there is no project.
 * @param {App} app
 */
export function tolerance(app) {
  const { record, view } = app.state.get();
  if (!record) return null;
  /** @type {DrawnField} */
  const field = {
    key: KEY,
    label: "Cutting tolerance",
    kind: "length",
    may_be_blank: true,
    help: `Leave it blank for half a mark. Now ${view?.tolerance_told ?? "the default"}.`,
  };
  return keptForm(app, {
    fields: [field],
    slot: projectKey(app, KEY),
    keptIn: (document) => ({ [KEY]: document.tolerance?.text }),
    unit: app.project.unit,
    make: (mine) => ({ act: KEY, text: mine[KEY] }),
    send: app.project.tryChange,
    fieldOf: () => KEY,
  });
}
