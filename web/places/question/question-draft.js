import { draftKey } from "../../store/page/state.js";
import { correctionKey, draftIn, pieceKey } from "../../store/project/draft.js";

/** What was filled in, in one order: two forms that say the same are the same. */
const filled = (values) =>
  JSON.stringify(
    Object.entries(values)
      .filter(([, value]) => value !== "")
      .sort(),
  );

/**
 * What is typed into a question and not yet kept; with `entry`, the correction of a kept line.
 * @param {object} fields the form, as drawn from what is kept
 * @param {string} [of] the entry that a piece is begun from
 */
export function questionDraft(app, key, entry, fields, of) {
  const { record } = app.state.get();
  const begun = of ? pieceKey(record, of) : draftKey(key);
  const draft = draftIn(app.state, entry ? correctionKey(record, entry.id) : begun);
  const kept = filled(fields.values());
  if (draft.get().values) fields.set(draft.get().values);

  /** What is typed, kept or not, goes on meaning what it meant in the unit in which it was begun. */
  const unit = () => entry?.unit ?? draft.get().unit ?? app.project.unit();

  return {
    unit,
    drop: draft.drop,
    typed(values) {
      const changed = filled(values) !== kept;
      draft.keep({ values, changed, unit: changed ? unit() : undefined });
    },
    /** The answer is kept only to be drawn at once, when the question is opened again. */
    answered: (values, said) => draft.keep({ asked: filled(values), said }),
    lastAnswer: () => (draft.get().asked === filled(fields.values()) ? draft.get().said : null),
  };
}
