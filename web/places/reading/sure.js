import { latest } from "../../store/page/latest.js";
import { element } from "../../widgets/element.js";
import { form } from "../../widgets/fields/form.js";
import { answerHeard } from "../../widgets/numbers/answer-heard.js";
import { inWords } from "../notices.js";
import { sureAnswer } from "./sure-answer.js";

/** @import { Answered, Sure } from "../../python/contract.d.ts" */
/** @import { Typed } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

/** @type {("answer" | "tape")[]} */
const ASKED = ["answer", "tape"];

/**
 * How sure a number of an entry is: which one, what tapes may be off by, and what the core says of it.
 * The address names the number, so that going back finds it again.
 * @param {App} app
 * @param {string} id
 * @param {string} [answer]
 */
export function sure(app, id, answer = "") {
  const result = element("output", { class: "result", "aria-live": "off" });
  const heard = answerHeard();
  const fields = sureFields(choose);
  const entry = app.state.get().view?.entries.find((each) => each.id === id);
  const request = latest(app.ask);
  /** @type {Record<"answer" | "tape", string>} */
  let asked = { answer, tape: app.state.get().sure.tape };

  function ask() {
    const { record } = app.state.get();
    if (record) request({ do: "sure", document: record.document, id, ...asked }, show);
  }

  /**
   * A number or a rule that is no more gives way to the usual one.
   * @param {Answered<Sure>} told
   */
  function show(told) {
    const lost = !told.ok && ASKED.find((key) => key === told.error.field && asked[key]);
    if (lost) {
      asked = { ...asked, [lost]: "" };
      return ask();
    }
    if (told.ok) fields.draw(told);
    heard.say(told.ok ? { ...told.value, label: told.label } : null);
    result.replaceChildren(...(told.ok ? sureAnswer(told) : [element("p", { class: "error" }, inWords(told.error))]));
  }

  /**
   * @param {string} key
   * @param {string} value
   */
  function choose(key, value) {
    asked = { ...asked, [key]: value };
    app.state.set({ sure: { tape: asked.tape } });
    history.replaceState(null, "", `#sure/${id}/${encodeURIComponent(asked.answer)}`);
    ask();
  }

  ask();
  const back = element("a", { class: "back", href: `#project/${id}` }, "‹ Project");
  const title = `How accurate: ${entry?.name ?? ""}`;
  return {
    node: element(
      "div",
      { class: "question" },
      back,
      element("h2", {}, title),
      fields.which,
      result,
      heard.node,
      fields.rule,
    ),
    title: () => title,
    refresh: (/** @type {string[]} */ changed) => changed.includes("record") && ask(),
  };
}

/**
 * The choices above and below the answer, drawn again only when others are offered: what was tapped keeps the focus.
 * @param {(key: string, value: string) => void} choose
 */
function sureFields(choose) {
  const which = element("div");
  const rule = element("div");
  let drawn = "";

  /** @param {Sure} sure */
  function draw({ fields, asked }) {
    const now = JSON.stringify(fields);
    if (now === drawn) return;
    drawn = now;
    for (const [key, place] of Object.entries({ answer: which, tape: rule })) {
      const own = fields.filter((field) => field.key === key);
      const onInput = (/** @type {Record<string, Typed>} */ typed) => choose(key, String(typed[key]));
      place.replaceChildren(form({ fields: own, values: { ...asked }, onInput }).node);
    }
  }

  return { which, rule, draw };
}
