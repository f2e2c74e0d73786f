import { element } from "../../widgets/element.js";
import { textField } from "../../widgets/fields/text-field.js";
import { mainAnswer } from "../../widgets/numbers/answers.js";
import { fromProject } from "../forms/from-project.js";
import { echoed } from "../forms/in-project.js";

/** @import { Answered, Read } from "../../python/contract.d.ts" */
/** @import { Child } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * The large number of a reading; what can be done with it stands below.
 * @param {Read} answer
 * @param {Child[]} acts
 */
export const numberOf = ({ value, tape }, acts) => mainAnswer({ ...value, label: "" }, tape, acts);

/**
 * The field that a reading is typed into: how it is read stands beside it, its number above the keys.
 * @param {App} app
 * @param {object} how
 * @param {string} how.label
 * @param {string | null} [how.help]
 * @param {string} how.value what stands in it at first
 * @param {() => string} how.unit what a bare number means in it
 * @param {string} [how.own] the entry that is being corrected
 * @param {(text: string) => void} how.onTyped
 * @param {{label: string, run(): void, isOff?(): boolean}} how.keep the key beside the number, none where it is off
 * @param {HTMLElement} how.result where its answer stands, which is gone to when the person is done
 */
export function readingField(app, { label, help = null, value, unit, own, onTyped, keep, result }) {
  /** @type {Answered<Read> | null} */
  let read = null;
  const field = textField({
    field: { key: "text", label, kind: "length", help },
    value,
    onInput: onTyped,
    onFocus: (input) =>
      app.sheet.open(input, {
        kind: "length",
        unit: unit(),
        peek,
        from: fromProject(app, { kind: "length" }, own),
        whenDone: () => result.focus(),
      }),
  });
  const peek = () => ({
    lines: read?.ok ? [element("span", { class: "peek-answer" }, element("strong", {}, read.kept))] : [],
    keep: read?.ok && !keep.isOff?.() ? keep : null,
  });

  /**
   * What the core said of the text.
   * @param {Answered<Read> | null} answer
   */
  function show(answer) {
    read = answer;
    field.show(answer?.ok ? { echo: echoed(answer.echo, answer.names) } : { error: answer?.error });
    app.sheet.refresh();
  }

  return { ...field, show };
}
