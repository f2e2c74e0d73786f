import { element } from "../widgets/element.js";
import { textField } from "../widgets/text-field.js";

/** How much a cut piece may be off and still be good; kept when the field is left. */
export function tolerance(app) {
  const { record, view } = app.state.get();
  if (!record) return null;
  const kept = () => app.state.get().record.document.tolerance?.text ?? "";
  const field = textField({
    field: {
      key: "tolerance",
      label: "A cut piece may be off by",
      kind: "length",
      may_be_blank: true,
      help: `Blank is half a mark. Now ${view?.tolerance_told ?? "as usual"}.`,
    },
    value: kept(),
    onInput: () => {},
    onFocus: (input) => app.sheet.open(input, { kind: "length", unit: app.unit(), peek: () => ({ lines: [] }) }),
  });

  async function keep() {
    if (field.value().trim() === kept()) return;
    const answer = await app.tryChange({ act: "tolerance", text: field.value().trim() });
    field.show(answer.ok ? {} : { error: answer.error });
  }

  return element("div", { onfocusout: keep }, field.node);
}
