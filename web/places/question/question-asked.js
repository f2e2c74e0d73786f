import { latest } from "../../store/page/latest.js";
import { answeredNow } from "../../store/page/pinned-and-recent.js";
import { isUnkept } from "../../store/project/draft.js";
import { element } from "../../widgets/element.js";
import { allEchoed, askInProject } from "../forms/in-project.js";
import { unitNote } from "../forms/units.js";
import { go, inLine } from "../go.js";
import { notice } from "../notices.js";
import { inPlace } from "./in-place.js";
import { questionDraft } from "./question-draft.js";
import { questionFoot } from "./question-foot.js";
import { questionForm } from "./question-form.js";
import { keeping } from "./question-keep.js";
import { hasSteps, messageOf } from "./question-message.js";
import { questionPicture } from "./question-picture.js";
import { questionResult } from "./question-result.js";

/** @import { Answered, Line, Reckoner, Reckoning } from "../../python/contract.d.ts" */
/** @import { Typed } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

const OTHERS = "These names were picked in another project. Here they stand for this project’s numbers.";

/**
 * The fields of a question, and its answer, which follows what is typed. The drawing stands above the fields; it comes
 * behind them for who walks with the keyboard, as what it opens are the fields.
 * @param {App} app
 * @param {object} what
 * @param {Reckoner} what.declared the question
 * @param {Line} [what.entry] the kept line that is being corrected
 * @param {string} [what.of] the entry that this one was begun from
 * @param {string} [what.from] the place that it was begun for
 */
export function questionAsked(app, { declared, entry, of, from }) {
  const note = element("p", { class: "help", hidden: true });
  const others = element("p", { class: "help", hidden: true }, OTHERS);
  const opening = () => ({ unit: draft.unit(), peek: result.peek, whenDone: result.goTo });
  const fields = questionForm(app, { declared, entry, onInput: typed, opening });
  const draft = questionDraft(app, declared.key, entry, fields, of);
  const { values, open, labelOf } = fields;
  const keeper = keeping(app, { declared, entry, from, draft, values, after: kept });
  const result = questionResult(app, { declared, entry, keeper, values, openField: open, clearing });
  const picture = questionPicture(declared.asks, { labelOf, open }, result.openPart);
  const reckon = latest(askInProject(app, keeper.correction));
  /** The part whose row is gone to with the answer that is on its way. */
  let part = "";

  /** @param {Record<string, Typed>} now */
  function typed(now) {
    draft.typed(now);
    ask();
  }

  function ask() {
    const asked = values();
    result.wait();
    reckon(messageOf(app, { declared, entry, values: asked, unit: draft.unit() }), (answer) => {
      draft.answered(asked, answer);
      if (answer.ok) answeredNow(app.state, declared.key);
      show(answer);
      if (answer.ok && part) picture.open(part);
      part = "";
    });
  }

  /** @param {Answered<Reckoning>} answer */
  function show(answer) {
    inPlace(fields.node, () => draw(answer));
    app.sheet.refresh();
  }

  /** @param {Answered<Reckoning>} answer */
  function draw(answer) {
    result.show(answer);
    if (answer.ok) picture.show(answer);
    else picture.wait();
    const { beside: errors, wanted: needed } = result.errors();
    fields.show({ echoes: answer.ok ? allEchoed(answer) : {}, errors, needed });
    unitNote(note, draft.unit(), app);
    others.hidden = !draft.isOfAnother();
    foot.hidden = answer.ok && (clearing() !== null || isAsKept());
  }

  /** Nothing leads back to a kept line that was not changed, and no example is filled in over it. */
  const isAsKept = () => Boolean(entry && !isUnkept(app.state.get(), entry.id));

  /** A kept line has at its foot what leads back to it, and a form as it began what fills it in. */
  function clearing() {
    return entry || draft.isUntouched() ? null : clear;
  }

  function clear() {
    const before = values();
    result.goTo();
    fill({});
    notice("Fields cleared.", { label: "Undo", run: () => fill(before) });
  }

  /**
   * What was begun from an entry is done with: the next is begun anew. So is what has steps: they're ticked in its line.
   * @param {string | null} [id] of the new line
   */
  function kept(id) {
    const leadsTo =
      from || (id && result.nextStep() ? inLine(`work-out/${declared.key}/${id}`, result.nextStep()) : "");
    if (of || leadsTo) draft.drop();
    if (leadsTo) go(leadsTo);
    else result.goTo();
  }

  /** @param {Record<string, Typed>} now */
  function fill(now) {
    draft.drop();
    picture.clear();
    fields.set(now);
    typed(values());
    foot.closest("main")?.scrollTo(0, 0);
  }

  const foot = questionFoot({ declared, entry, unit: draft.unit, fill, clear });
  const last = draft.lastAnswer();
  if (last) show(last);
  ask();
  /** @param {string} key */
  function goToPart(key) {
    part = key;
  }

  /**
   * What is ticked of its steps, and which are due by now.
   * @param {string[]} changed
   */
  function refresh(changed) {
    if (changed.includes("record") && hasSteps(app, entry)) ask();
  }

  return { open, goToPart, refresh, nodes: [note, others, fields.node, ...result.nodes, picture.node, foot] };
}
