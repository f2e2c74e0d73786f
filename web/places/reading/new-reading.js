import { naming } from "../../store/pad/naming.js";
import { latest } from "../../store/page/latest.js";
import { draftKey } from "../../store/page/state.js";
import { draftIn } from "../../store/project/draft.js";
import { button, element } from "../../widgets/element.js";
import { nameDialog } from "../../widgets/messages/name-dialog.js";
import { answerHeard } from "../../widgets/numbers/answer-heard.js";
import { go } from "../go.js";
import { numberOf, readingField } from "./reading-field.js";

/** @import { Answered, Read } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

const TITLE = "New reading";

/**
 * A reading typed straight into the project, or a sum of what is there already, which follows it.
 * @param {App} app
 */
export function newReading(app) {
  const draft = draftIn(app.state, draftKey("reading"));
  const unit = () => draft.get().unit ?? app.project.unit();
  const read = latest(app.ask);
  const result = element("output", { class: "result", name: "result", tabindex: "-1", "aria-live": "off" });
  const heard = answerHeard();
  const field = readingField(app, {
    label: "Tape reading",
    help: "Or add up saved readings and answers.",
    value: draft.get().text ?? "",
    unit,
    result,
    keep: { label: "Save", run: keep },
    onTyped(text) {
      draft.keep({ text, unit: unit() });
      ask();
    },
  });
  let kept = "";

  function ask() {
    const text = field.value();
    if (text.trim() === "") return show(null);
    const names = naming(app.state.get().record, text);
    read({ do: "read", text, settings: app.project.settings(), unit: unit(), ...names }, show);
  }

  /** @param {Answered<Read> | null} answer */
  function show(answer) {
    kept = answer?.ok ? answer.kept : "";
    const acts = [button("Save to project", keep, { class: "button primary" })];
    result.replaceChildren(...(answer?.ok ? [numberOf(answer, acts)] : []));
    heard.say(answer?.ok ? answer.value : null);
    field.show(answer);
  }

  function keep() {
    app.sheet.close();
    const text = field.value();
    const give = (/** @type {string} */ name) => app.project.change({ act: "keep_reading", name, text, unit: unit() });
    nameDialog({ title: `Save ${kept}`, act: "Save", give, after: leave });
  }

  function leave() {
    draft.drop();
    go("project");
  }

  ask();
  return { node: element("div", { class: "question" }, heading(), field.node, result, heard.node), title: () => TITLE };
}

const heading = () => [element("a", { class: "back", href: "#project" }, "‹ Project"), element("h2", {}, TITLE)];
