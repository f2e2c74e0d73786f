import { latest } from "../../store/page/latest.js";
import { element } from "../../widgets/element.js";
import { form } from "../../widgets/fields/form.js";
import { sheetsOfPaper } from "../../widgets/pictures/sheet-of-paper.js";
import { arriving } from "../forms/instead.js";
import { labelGrid } from "./label-grid.js";
import { paperChoice, paperOf, printButton } from "./printing.js";

/** Labels for the project's pieces, on the person's own sheet of stickers. */
export function labels(app) {
  const { described } = app.state.get();
  if (!described?.labels) return arriving("The labels appear as soon as the arithmetic has loaded.", () => labels(app));
  const ask = latest(app.ask);
  const said = element("p", { class: "help", role: "status" });
  const shown = element("div", { class: "printable" });
  const print = printButton();
  const grid = labelGrid(app, described.labels);
  const fields = form({
    fields: described.labels,
    values: grid.values,
    onInput: (values) => {
      grid.type(values);
      draw();
    },
    onFocus: (input, { kind }) => app.sheet.open(input, { kind, unit: grid.unit, peek: () => ({ lines: [] }) }),
  });

  function draw() {
    const { record } = app.state.get();
    if (!record)
      return show({ ok: false, error: { message: "There is no project yet.", remedy: "Keep a piece first." } });
    ask(
      { do: "labels", document: record.document, paper: paperOf(app), values: fields.values(), unit: grid.unit },
      show,
    );
  }

  function show(answer) {
    const errors = answer.ok ? [] : [answer.error, ...(answer.more ?? [])];
    const own = described.labels.map((field) => field.key);
    fields.show({ errors });
    said.textContent = answer.ok
      ? answer.said
      : errors
          .filter((error) => !own.includes(error.field))
          .map((error) => `${error.message} ${error.remedy}`)
          .join(" ");
    print.disabled = !answer.ok;
    if (answer.ok) shown.replaceChildren(sheetsOfPaper(answer.sheets, answer.paper));
  }

  print.addEventListener("click", () => grid.keep(fields.values()));
  draw();
  const node = element(
    "div",
    { class: "paper" },
    element(
      "div",
      { class: "on-screen" },
      element("a", { class: "back", href: "#project" }, "‹ Project"),
      element("h2", {}, "Labels for the pieces"),
      element(
        "p",
        { class: "help" },
        "Measure your sheet of stickers, and print once on plain paper to see that it fits.",
      ),
      paperChoice(app, draw),
      element("div", { onfocusout: grid.keepTyped }, fields.node),
      said,
      print,
    ),
    shown,
  );

  function refresh(changed) {
    if (!changed.includes("view")) return;
    const elsewhere = grid.changed(fields.values());
    if (elsewhere) fields.set(elsewhere);
    draw();
  }

  return { node, refresh, leave: grid.keepTyped };
}
