import { element } from "../../widgets/element.js";
import { form } from "../../widgets/fields/form.js";
import { formDraft } from "./form-draft.js";
import { overKept } from "./over-kept.js";

/** @import { Act, Document } from "../../python/contract.d.ts" */
/** @import { Changed, Wanted } from "../../store/shapes.d.ts" */
/** @import { DrawnField, Typed } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * A form whose fields are kept as they are left: a choice at once, what is typed when its field is left. Only what was
 * typed here is sent (over-kept.js); what is not kept yet outlives the page (form-draft.js).
 * @param {App} app
 * @param {object} how
 * @param {DrawnField[]} how.fields
 * @param {`draft:${string}`} how.slot where what is typed waits
 * @param {(document: Document) => Record<string, any>} how.keptIn what a document has of the fields, by key
 * @param {() => string} how.unit what a bare number means in them
 * @param {(mine: Record<string, Typed>, document: Document) => Act} how.make the act that keeps what is of this tab
 * @param {(act: Wanted) => Promise<Changed>} how.send does it
 * @param {(field: string | null | undefined) => string | null | undefined} [how.fieldOf] the field that an error of the core is about
 * @returns {{node: HTMLElement, follow(): void}} `follow` shows what is kept now, as by another tab
 */
export function keptForm(app, { fields, slot, keptIn, unit, make, send, fieldOf = (field) => field }) {
  const over = overKept(app, fields, keptIn);
  const drawn = form({
    fields,
    values: over.kept(),
    onInput: (values) => draft.type(values),
    onFocus: (input, { kind }) => app.sheet.open(input, { kind, unit: unit(), peek: () => ({ lines: [] }) }),
  });
  const draft = formDraft(app, slot, drawn);
  drawn.show({ errors: draft.withUnkept() });

  function follow() {
    over.follow(drawn);
    draft.keptAs(over.kept());
  }

  async function keep() {
    const typed = drawn.values();
    if (!over.isDue(typed)) return follow();
    const answer = await send(over.act(typed, make));
    const isTakenBack = !answer.ok && answer.error.kind === "taken back";
    if (isTakenBack) drawn.set(over.kept());
    if (isTakenBack) draft.drop();
    if (answer.ok) over.sent(typed);
    if (answer.ok || isTakenBack) {
      follow();
      return drawn.show({});
    }
    const errors = [answer.error, ...(answer.more ?? [])].map((each) => ({ ...each, field: fieldOf(each.field) }));
    drawn.show({ errors: draft.withUnkept(errors) });
  }

  const again = (/** @type {Event} */ { target }) => target instanceof HTMLInputElement && over.again(target.name);
  return { node: element("div", { onchange: keep, onfocusout: keep, oninput: again }, drawn.node), follow };
}
