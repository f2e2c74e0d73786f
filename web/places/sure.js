import { button, element } from "../widgets/element.js";
import { fraction } from "../widgets/fraction.js";

/** How sure a number is: what it may be off by, which reading makes most of it, whether a fit covers it. */
export function sure(app, id) {
  const answer = element("div", { class: "sure" });
  const entry = () => app.state.get().view?.entries.find((each) => each.id === id);

  async function ask() {
    const { record } = app.state.get();
    if (!record) return;
    const said = await app.ask({ do: "sure", document: record.document, id });
    answer.replaceChildren(
      ...(said.ok
        ? told(app, said)
        : [element("p", { class: "trouble" }, `${said.error.message} ${said.error.remedy}`)]),
    );
  }

  ask();
  const node = element(
    "div",
    { class: "question" },
    element("a", { class: "back", href: `#project/${id}` }, "‹ Project"),
    element("h2", {}, `How sure: ${entry()?.name ?? ""}`),
    answer,
  );
  node.refresh = (changed) => changed.includes("record") && ask();
  return node;
}

function told(app, { value, label, worst, likely, readings, measure_again: again, fit, said }) {
  return [
    element(
      "div",
      { class: "main-answer" },
      element("p", { class: "answer-label" }, label),
      fraction(value, "fraction-huge"),
      element("p", {}, said),
    ),
    fit ? element("p", { class: fit.covers ? "fit" : "fit trouble" }, `${fit.label}: ${fit.said}`) : null,
    again
      ? element(
          "p",
          { class: "again" },
          again.said,
          button(`Measure ${again.name} again`, () => app.go(`reading/${again.id}`), { class: "button primary wide" }),
        )
      : null,
    element("dl", { class: "answers" }, between("Likely", likely), between("At worst", worst)),
    readings.length ? element("h3", {}, "Where it comes from") : null,
    element("ul", { class: "sure-readings" }, readings.map(share)),
  ].filter(Boolean);
}

const between = (label, { low, high, by }) =>
  element(
    "div",
    { class: "answer" },
    element("dt", {}, `${label}, within ${by.text}`),
    element("dd", {}, fraction(low, "fraction-large"), element("span", {}, "to"), fraction(high, "fraction-large")),
  );

const share = ({ name, text, by, moves, share: part }) =>
  element(
    "li",
    { class: "answer" },
    element("span", {}, `${name}: ${text} ± ${by}`),
    element("span", { class: "aside" }, `moves it by ${moves.text}, ${part}`),
  );
