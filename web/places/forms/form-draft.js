import { correctionKey, draftIn, same } from "../../store/project/draft.js";

/** @import { Form, Typed, Wrong } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * Where what is typed of the open project waits, by the part of it that it belongs to.
 * @param {App} app
 * @param {string[]} parts
 */
export const projectKey = (app, ...parts) => correctionKey(app.state.get().record, parts.join("/"));

/**
 * Said below a field that is kept when it is left, and was not.
 * @param {string} field
 * @returns {Wrong}
 */
const notKept = (field) => ({
  field,
  message: "This isn’t saved yet.",
  remedy: "It saves when you leave the field, unless something needs fixing.",
});

/**
 * What is typed into a form and not yet kept, and nothing else of it: it outlives the page.
 * @param {App} app
 * @param {`draft:${string}`} slot
 * @param {Form} fields the form, as drawn from what is kept; what was typed before is put into it
 */
export function formDraft(app, slot, fields) {
  const draft = draftIn(app.state, slot);
  let kept = fields.values();
  const typed = () => draft.get().typed ?? {};
  if (draft.get().typed) fields.set({ ...kept, ...typed() });

  /** @param {Record<string, Typed>} values */
  function type(values) {
    const others = Object.entries(values).filter(([key, value]) => !same(value, kept[key]));
    const unit = draft.get().unit ?? app.project.unit();
    if (others.length > 0) draft.keep({ typed: Object.fromEntries(others), changed: true, unit });
    else if (draft.get().typed) draft.drop();
  }

  return {
    type,
    drop: draft.drop,
    isTyped: () => Boolean(draft.get().typed),
    /**
     * The unit as it was set when something was typed into one of these fields; null where nothing is.
     * @param {string[]} keys
     */
    typedIn: (keys) => (keys.some((key) => typed()[key]) ? (draft.get().unit ?? null) : null),
    /**
     * These were kept; what was typed after them stays.
     * @param {Record<string, Typed>} values
     */
    keptAs(values) {
      kept = { ...kept, ...values };
      type(fields.values());
    },
    /**
     * Errors to be shown, and with them which other fields hold what is not kept.
     * @param {Wrong[]} [errors]
     */
    withUnkept: (errors = []) => [...errors, ...Object.keys(typed()).map(notKept)],
  };
}
