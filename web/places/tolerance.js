import { element } from "../widgets/element.js";
import { form } from "../widgets/form.js";
import { formDraft, projectKey } from "./form-draft.js";
import { overKept } from "./over-kept.js";

const KEY = "tolerance";

/** How much a cut piece may be off and still be good; kept when the field is left. */
export function tolerance(app) {
  const { record, view } = app.state.get();
  if (!record) return null;
  const field = {
    key: KEY,
    label: "A cut piece may be off by",
    kind: "length",
    may_be_blank: true,
    help: `Blank is half a mark. Now ${view?.tolerance_told ?? "as usual"}.`,
  };
  const over = overKept(app, [field], (document) => ({ [KEY]: document.tolerance?.text }));
  const drawn = form({
    fields: [field],
    values: over.kept(),
    onInput: (values) => draft.type(values),
    onFocus: (input) => app.sheet.open(input, { kind: "length", unit: app.unit(), peek: () => ({ lines: [] }) }),
  });
  const draft = formDraft(app, projectKey(app, KEY), drawn);
  drawn.show({ errors: draft.withUnkept() });

  function follow() {
    over.follow(drawn);
    draft.keptAs(over.kept());
  }

  async function keep() {
    const typed = drawn.values();
    if (!over.isDue(typed)) return follow();
    const answer = await app.tryChange(over.act(typed, (mine) => ({ act: KEY, text: mine[KEY] })));
    if (answer.ok) follow();
    drawn.show({ errors: answer.ok ? [] : [{ ...answer.error, field: KEY }] });
  }

  const again = ({ target }) => over.again(target.name);
  const node = element("div", { onfocusout: keep, oninput: again }, drawn.node);
  node.refresh = follow;
  return node;
}
