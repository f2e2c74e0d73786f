import { detailsKey } from "../store/draft.js";
import { element } from "../widgets/element.js";
import { form } from "../widgets/form.js";
import { formDraft } from "./form-draft.js";
import { overKept } from "./over-kept.js";
import { readingPhoto } from "./reading-photo.js";

const DETAILS = ["where", "tape", "side", "fineness", "off"];
const SIDES = [
  { value: "", label: "On the mark" },
  { value: "light", label: "Light" },
  { value: "heavy", label: "Heavy" },
];

const tapeField = (tapes) => ({
  key: "tape",
  label: "Tape",
  kind: "choice",
  choices: [{ value: "", label: "Any" }, ...tapes.map(({ name }) => ({ value: name, label: name }))],
  help: "Your tapes are in Settings; what one reads wrong is put right.",
});

const fieldsOf = (app) => {
  const marks = app.state.get().described?.settings.find(({ key }) => key === "mark").choices ?? [];
  const tapes = (app.settings().tapes ?? []).filter(({ name }) => name);
  return [
    { key: "where", label: "Where", kind: "text", help: "At the floor, at the back, on the left." },
    ...(tapes.length ? [tapeField(tapes)] : []),
    { key: "side", label: "The tape read", kind: "choice", choices: SIDES },
    {
      key: "fineness",
      label: "Read to",
      kind: "choice",
      choices: [{ value: "", label: "As usual" }, ...marks.filter(({ value }) => value)],
      help: "How finely it was read: “How sure” counts with it.",
    },
    {
      key: "off",
      label: "May be off by",
      kind: "length",
      may_be_blank: true,
      help: "What you say yourself. Blank is half of what it was read to.",
    },
  ];
};

/** What belongs to a reading beside its number: where, with what, how finely, how sure, when, earlier ones, a photo. */
export function readingDetails(app, id) {
  const entry = () => app.state.get().record?.document.entries.find((each) => each.id === id) ?? {};
  const kept = () => Object.fromEntries(DETAILS.map((key) => [key, entry()[key] ?? ""]));
  const earlier = element("div", { class: "earlier" });
  const photo = readingPhoto(app, id);
  let typed = kept();
  const fields = fieldsOf(app);
  const over = overKept(app, fields, ({ entries }) => entries.find((each) => each.id === id) ?? {});
  const drawn = form({
    fields,
    values: typed,
    onInput: (values) => {
      typed = values;
      draft.type(values);
    },
    onFocus: (input, { kind }) => app.sheet.open(input, { kind, unit: entry().unit, peek: () => ({ lines: [] }) }),
  });

  const draft = formDraft(app, detailsKey(app.state.get().record, id), drawn);
  typed = drawn.values();
  drawn.show({ errors: draft.withUnkept() });

  /** A choice is kept at once, what is typed when its field is left. */
  async function keep() {
    if (!over.isDue(typed)) return follow();
    const answer = await app.change(over.act({ ...typed }, (mine) => ({ act: "describe", id, ...mine })));
    if (answer.ok) {
      drawn.show({});
      return follow();
    }
    if (answer.error.kind === "taken back") {
      drawn.set(kept());
      draft.drop();
    }
    typed = drawn.values();
    drawn.show({ errors: draft.withUnkept([answer.error]) });
  }

  function follow() {
    over.follow(drawn);
    typed = drawn.values();
    draft.keptAs(over.kept());
  }

  function draw() {
    const { when, earlier: before = [] } = entry();
    const { off_told: off } = app.state.get().view?.entries.find((each) => each.id === id) ?? {};
    const line = (each) => element("li", {}, [each.text, moment(each.when)].filter(Boolean).join(", "));
    earlier.replaceChildren(
      ...[
        off ? element("p", { class: "help" }, `“How sure” counts up to ${off}.`) : null,
        when ? element("p", { class: "help" }, `Measured ${moment(when)}.`) : null,
        before.length ? element("h3", {}, "Earlier") : null,
        before.length ? element("ol", {}, [...before].reverse().map(line)) : null,
      ].filter(Boolean),
    );
  }

  draw();
  const node = element(
    "section",
    {
      class: "reading-details",
      "aria-label": "About this reading",
      onchange: keep,
      onfocusout: keep,
      oninput: ({ target }) => over.again(target.name),
    },
    drawn.node,
    photo,
    earlier,
  );
  node.refresh = () => {
    draw();
    follow();
    photo.refresh();
  };
  return node;
}

const moment = (when) => (when ?? "").replace("T", " ");
