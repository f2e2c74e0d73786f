import { latest } from "../../store/page/latest.js";
import { element } from "../../widgets/element.js";
import { form } from "../../widgets/fields/form.js";
import { sureAnswer } from "./sure-answer.js";

/**
 * How sure a number of an entry is: which one, what tapes may be off by, and what the core says of it.
 * The address names the number, so that going back finds it again.
 */
export function sure(app, id, answer = "") {
  const which = element("div");
  const rule = element("div");
  const result = element("output", { class: "result" });
  const entry = () => app.state.get().view?.entries.find((each) => each.id === id);
  const request = latest(app.ask);
  let asked = { answer, tape: app.state.get().sure.tape };
  let drawn = "";

  function ask() {
    const { record } = app.state.get();
    if (record) request({ do: "sure", document: record.document, id, ...asked }, show);
  }

  /** A number or a rule that is no more gives way to the usual one. */
  function show(said) {
    if (!said.ok && asked[said.error.field]) {
      asked = { ...asked, [said.error.field]: "" };
      return ask();
    }
    if (said.ok) drawFields(said);
    result.replaceChildren(
      ...(said.ok
        ? sureAnswer(said)
        : [element("p", { class: "error" }, `${said.error.message} ${said.error.remedy}`)]),
    );
  }

  /** Drawn anew only when others are offered: what was tapped keeps the focus. */
  function drawFields({ fields, asked: values }) {
    const now = JSON.stringify(fields);
    if (now === drawn) return;
    drawn = now;
    for (const [key, place] of Object.entries({ answer: which, tape: rule })) {
      const own = fields.filter((field) => field.key === key);
      const onInput = (typed) => choose(key, typed[key]);
      place.replaceChildren(form({ fields: own, values, onInput }).node);
    }
  }

  function choose(key, value) {
    asked = { ...asked, [key]: value };
    app.state.set({ sure: { tape: asked.tape } });
    history.replaceState(null, "", `#sure/${id}/${encodeURIComponent(asked.answer)}`);
    ask();
  }

  ask();
  const node = element(
    "div",
    { class: "question" },
    element("a", { class: "back", href: `#project/${id}` }, "‹ Project"),
    element("h2", {}, `How sure: ${entry()?.name ?? ""}`),
    which,
    result,
    rule,
  );
  return { node, refresh: (changed) => changed.includes("record") && ask() };
}
