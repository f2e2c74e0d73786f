import { latest } from "../store/latest.js";
import { draftKey } from "../store/state.js";
import { cautions, mainAnswer, otherAnswers, working } from "../widgets/answers.js";
import { drawing } from "../widgets/drawing.js";
import { button, element } from "../widgets/element.js";
import { form } from "../widgets/form.js";
import { nameDialog } from "../widgets/name-dialog.js";

/** One question, drawn from its declaration; with `entryId`, a kept line being corrected. */
export function question(app, key, entryId) {
  const declared = app.state.get().described?.reckoners.find((each) => each.key === key);
  if (!declared) return waiting(app, key, entryId);
  const entry = app.state.get().record?.document.entries.find((each) => each.id === entryId);
  const slot = draftKey(entry ? `${app.state.get().record.id}/${entry.id}` : key);
  const draft = app.state.get()[slot] ?? { values: entry?.values ?? {} };
  const reckon = latest(app.ask);
  // A kept line goes on meaning what it meant in the unit in which it was kept.
  const meant = entry ? { unit: entry.unit } : {};
  const result = element("output", { class: "result", name: "result" });
  let said = null;
  let focused = null;

  const fields = form({
    fields: declared.fields.map(offering),
    values: draft.values,
    onInput: typed,
    onFocus: (input, field) => {
      focused = field.key;
      app.sheet.open(input, field.kind, peek, showResult);
    },
  });

  /** A field whose choices are the person's own, as the tapes of the settings. */
  function offering(field) {
    if (!field.choices_from) return field;
    const own = (app.settings()[field.choices_from] ?? []).filter((each) => each.name);
    return {
      ...field,
      choices: [{ value: "", label: "None" }, ...own.map(({ name }) => ({ value: name, label: name }))],
    };
  }

  function typed(values) {
    remember({ values });
    ask(values);
  }

  const remember = (patch) =>
    app.state.set({ [slot]: { ...app.state.get()[slot], values: fields.values(), ...patch } });

  function ask(values) {
    result.classList.add("waiting");
    const asked = JSON.stringify(values);
    reckon({ do: "reckon", reckoner: key, values, settings: app.settings(), ...meant }, (answer) => {
      remember({ asked, said: answer });
      show(answer);
    });
  }

  function show(answer) {
    said = answer;
    result.classList.toggle("waiting", !answer.ok);
    const errors = answer.ok ? [] : [answer.error, ...(answer.more ?? [])];
    const beside = errors.filter((error) => error.kind !== "missing");
    fields.show({ echoes: answer.echoes, errors: beside });
    if (answer.ok) result.replaceChildren(...answered(answer).filter(Boolean));
    else result.replaceChildren(...asks(errors));
    app.sheet.refresh();
  }

  const asks = (errors) => {
    const label = (each) => declared.fields.find((field) => field.key === each)?.label ?? each;
    const missing = errors.filter((error) => error.kind === "missing").map((error) => label(error.field));
    const elsewhere = errors.filter(
      (error) => error.kind !== "missing" && !declared.fields.some((field) => field.key === error.field),
    );
    return [
      missing.length ? element("p", { class: "help" }, `Still needed: ${missing.join(", ")}.`) : null,
      ...elsewhere.map((error) => element("p", { class: "trouble" }, `${error.message} ${error.remedy}`)),
    ].filter(Boolean);
  };

  const answered = (answer) => [
    mainAnswer(answer.answers[0], answer.tape, app.copy),
    answer.drawing ? drawing(answer.drawing) : null,
    otherAnswers(answer.answers.slice(1)),
    cautions(answer.cautions),
    working(answer.working, answer.source),
    entry
      ? button("Save the correction", correct, { class: "button primary wide" })
      : button("Keep in project", keep, { class: "button primary wide" }),
  ];

  function peek() {
    if (!said) return [];
    const error = said.ok
      ? null
      : [said.error, ...(said.more ?? [])].find((each) => each.field === focused && each.kind !== "missing");
    const main = said.ok ? said.answers[0] : null;
    return [
      error ? element("span", { class: "peek-trouble" }, `${error.message} ${error.remedy ?? ""}`) : null,
      !said.ok && !error ? asks([said.error, ...(said.more ?? [])])[0] : null,
      main
        ? element(
            "span",
            { class: "peek-answer" },
            `${main.label} `,
            element("strong", {}, main.text ?? `${main.items?.length} marks`),
          )
        : null,
    ];
  }

  const showResult = () => said?.ok && result.scrollIntoView({ block: "start" });

  function keep() {
    nameDialog({
      title: `Keep ${declared.title.toLowerCase()}`,
      act: "Keep",
      name: declared.title,
      give: (name) => app.change({ act: "keep_line", name, reckoner: key, values: fields.values() }),
    });
  }

  async function correct() {
    const answer = await app.change({ act: "correct", id: entry.id, values: fields.values() });
    if (!answer.ok) return;
    app.state.set({ [slot]: undefined });
    app.go("project");
  }

  function fill(values) {
    fields.set(values);
    typed(values);
  }

  if (draft.said && draft.asked === JSON.stringify(fields.values())) show(draft.said);
  ask(fields.values());
  return element(
    "div",
    { class: "question" },
    element("a", { class: "back", href: entry ? "#project" : "#work-out" }, entry ? "‹ Project" : "‹ All questions"),
    element("h2", {}, entry ? `${declared.title}: ${entry.name}` : declared.title),
    element("p", { class: "asks" }, declared.asks),
    fields.node,
    element(
      "div",
      { class: "button-row" },
      button("Clear", () => fill({})),
      button("Show the example", () => fill(declared.example)),
    ),
    result,
  );
}

function waiting(app, key, entryId) {
  const node = element(
    "div",
    { class: "question" },
    element("p", { class: "help" }, "The question appears as soon as the arithmetic has loaded."),
  );
  node.refresh = (changed) => changed.includes("described") && node.replaceWith(question(app, key, entryId));
  return node;
}
