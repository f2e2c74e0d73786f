import { button, element } from "../../widgets/element.js";
import { form } from "../../widgets/fields/form.js";
import { formDraft, projectKey } from "../forms/form-draft.js";
import { notThere } from "../forms/instead.js";
import { overKept } from "../forms/over-kept.js";
import { onward } from "../go.js";
import { besideTheSaw } from "./beside-the-saw.js";

const words = (key, label, help) => ({ key, label, kind: "text", help });
const allowance = (key, label) => ({ key, label, kind: "length", help: null, may_be_blank: true });
const MOST = 6;
const FIELDS = [
  words("material", "Material", "The tally adds up what is of one material and size."),
  words("grain", "Grain", "Along the length, or as it is to lie."),
  words("place", "Where it goes", null),
  allowance("rough_length", "Cut longer by, at first"),
  allowance("rough_width", "Wider by"),
  allowance("rough_thickness", "Thicker by"),
];

/** What a piece is of, how its grain lies, where it goes, and what it is larger by before it is finished. */
export function aboutPiece(app, entry, part) {
  const { record, view } = app.state.get();
  const line = record?.document.entries.find((each) => each.id === entry);
  const piece = view?.pieces.find((each) => each.entry === entry && each.part === part);
  if (!line || !piece) return notThere("This piece is no longer in the project.");
  const rough = element("p", { class: "help" });
  const fields = form({
    fields: FIELDS,
    values: line.about?.[part] ?? {},
    onInput: (values) => draft.type(values),
    onFocus: (input, { kind }) =>
      app.sheet.open(input, { kind, unit: app.project.unit(), peek: () => ({ lines: [] }) }),
  });

  const over = overKept(app, FIELDS, ({ entries }) => entries.find((each) => each.id === entry)?.about?.[part] ?? {});
  const draft = formDraft(app, projectKey(app, entry, part, "about"), fields);

  async function keep() {
    app.sheet.close();
    const goOn = onward();
    const answer = await app.project.change(
      over.act(fields.values(), (about) => ({ act: "about", id: entry, part, about })),
    );
    fields.show({ errors: answer.ok ? [] : [answer.error, ...(answer.more ?? [])] });
    if (!answer.ok) return;
    draft.drop();
    goOn("saw");
  }

  function put(values) {
    fields.set(values);
    draft.type(values);
  }

  /** One touch for what was typed once, so that the tally finds one material and not two spellings. */
  const used = view.pieces.map(({ material }) => material).filter(Boolean);
  const own = (app.project.settings().materials ?? []).map(({ name }) => name);
  const known = [...new Set([...used, ...own])]
    .slice(0, MOST)
    .map((material) => button(material, () => put({ ...fields.values(), material })));

  if (piece.rough) rough.textContent = `Rough length ${piece.rough.length.text}.`;
  const place = besideTheSaw(app, () => {});
  const node = element(
    "div",
    { class: "question" },
    element("a", { class: "back", href: "#saw" }, "‹ At the saw"),
    element("h2", {}, `About ${piece.name}`),
    known.length
      ? element("div", { class: "button-row", role: "group", "aria-label": "Materials known" }, known)
      : null,
    fields.node,
    rough,
    button("Keep", keep, { class: "button primary" }),
  );
  node.addEventListener("input", ({ target }) => over.again(target.name));

  function refresh(changed) {
    if (!changed.includes("record")) return;
    over.follow(fields);
    draft.keptAs(over.kept());
  }

  return { node, refresh, leave: place.leave };
}
