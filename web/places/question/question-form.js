import { form } from "../../widgets/fields/form.js";
import { fromProject } from "../forms/from-project.js";
import { offering } from "../forms/question-fields.js";

/** @import { Line, Reckoner } from "../../python/contract.d.ts" */
/** @import { DrawnField, Peek, Typed } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

/** @typedef {{unit: string, peek(focused: string): Peek, whenDone(): void}} Opening what the keypad gets */

/**
 * There is nothing to choose where the person has no tape of their own.
 * @param {DrawnField} field
 */
const isToChoose = ({ choices_from: own, choices = [] }) => own !== "tapes" || choices.length > 1;

/**
 * The fields of a question; `opening()` is what the keypad gets for the one that is touched, besides what the field itself
 * says.
 * @param {App} app
 * @param {{declared: Reckoner, entry?: Line, onInput(values: Record<string, Typed>): void, opening(): Opening}} how
 */
export function questionForm(app, { declared, entry, onInput, opening }) {
  const here = {
    settings: app.project.settings(),
    declared: app.state.get().described?.settings ?? [],
    unit: entry?.unit ?? app.project.unit(),
  };
  const drawn = form({
    fields: declared.fields
      .map((field) => offering(field, here))
      .filter((field) => isToChoose(field) || entry?.values[field.key]),
    values: entry?.values ?? {},
    onInput,
    onFocus(input, field, part = field) {
      const { peek, ...others } = opening();
      const from = fromProject(app, part, entry?.id);
      app.sheet.open(input, { kind: field.kind, from, peek: () => peek(field.key), ...others });
    },
  });
  return {
    ...drawn,
    /**
     * What a field is called; "" where there is none.
     * @param {string} key
     */
    labelOf: (key) => declared.fields.find((field) => field.key === key)?.label ?? "",
  };
}
