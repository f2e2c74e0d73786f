import { draftKey } from "../../store/page/state.js";
import { correctionKey, draftIn, pieceKey } from "../../store/project/draft.js";
import { identity } from "../../store/project/identity.js";

/** @import { Answered, Line, Reckoning } from "../../python/contract.d.ts" */
/** @import { Form, Typed } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * What was filled in, in one order: two forms that say the same are the same.
 * @param {Record<string, Typed>} values
 */
export const filled = (values) =>
  JSON.stringify(
    Object.entries(values)
      .filter(([, value]) => value !== "")
      .sort(),
  );

/**
 * Whether a name of the project stands in what is filled in.
 * @param {Record<string, Typed>} values
 */
const hasNames = (values) => /\[[^"[\]{}]+\]/.test(JSON.stringify(values));

/**
 * What is typed into a question and not yet kept; with `entry`, the correction of a kept line.
 * @param {App} app
 * @param {string} key of the question
 * @param {Line | undefined} entry
 * @param {Form} fields the form, as drawn from what is kept
 * @param {string} [of] the entry that a piece is begun from
 */
export function questionDraft(app, key, entry, fields, of) {
  const { record } = app.state.get();
  const begun = of ? pieceKey(record, of) : draftKey(key);
  const draft = draftIn(app.state, entry ? correctionKey(record, entry.id) : begun);
  const kept = filled(fields.values());
  const { values: typed } = draft.get();
  if (typed) fields.set(typed);

  /**
   * What is typed, kept or not, goes on meaning what it meant in the unit in which it was begun.
   * @returns {string}
   */
  const unit = () => entry?.unit ?? draft.get().unit ?? app.project.unit();

  return {
    unit,
    drop: draft.drop,
    /** Whether names that were picked in another project stand for numbers of this one now. */
    isOfAnother: () => Boolean(!entry && draft.get().names && draft.get().names !== identity(record)),
    isUntouched: () => filled(fields.values()) === kept,
    /** @param {Record<string, Typed>} values */
    typed(values) {
      const changed = filled(values) !== kept;
      const names = hasNames(values) ? identity(record) : undefined;
      draft.keep({ values, changed, unit: changed ? unit() : undefined, names });
    },
    /**
     * The answer is kept only to be drawn at once, when the question is opened again.
     * @param {Record<string, Typed>} values
     * @param {Answered<Reckoning>} said
     */
    answered: (values, said) => draft.keep({ asked: filled(values), said }),
    /**
     * None where it is of a version that told less.
     * @returns {Answered<Reckoning> | null}
     */
    lastAnswer() {
      const { asked, said } = draft.get();
      return said && asked === filled(fields.values()) && (!said.ok || said.fixes) ? said : null;
    },
  };
}
