import { latest } from "../../store/page/latest.js";
import { button, element, present } from "../../widgets/element.js";
import { form } from "../../widgets/fields/form.js";
import { answerHeard } from "../../widgets/numbers/answer-heard.js";
import { mainAnswer, otherAnswers, working } from "../../widgets/numbers/answers.js";
import { briefly } from "../../widgets/numbers/fraction.js";
import { drawing } from "../../widgets/pictures/drawing.js";
import { sortedErrors } from "../forms/field-errors.js";
import { formDraft, projectKey } from "../forms/form-draft.js";
import { arriving, notThere } from "../forms/instead.js";
import { readAnewLine } from "../forms/units.js";
import { onward } from "../go.js";
import { inLittle, unanswered } from "../question/question-answer.js";
import { besideTheSaw } from "./beside-the-saw.js";

/** @import { Answered, Field, Piece, Reckoning } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

const QUESTION = "over_or_under";
const ASKED = ["measured", "cut"];

/**
 * Try a set-up: what the test piece measures, how much over or under, and which way to move the stop.
 * @param {App} app
 * @param {string} entry
 * @param {string} part
 */
export function trySetUp(app, entry, part) {
  const { view, described } = app.state.get();
  const piece = view?.pieces.find((each) => each.entry === entry && each.part === part);
  if (!described) return arriving("Loading the test cut…", () => trySetUp(app, entry, part));
  const declared = described.reckoners.find(({ key }) => key === QUESTION);
  if (!piece || !declared) return notThere("This piece isn’t in the project anymore.");
  const asked = declared.fields.filter(({ key }) => ASKED.includes(key));
  const trial = trialOf(app, piece, asked);
  const standing = besideTheSaw(app, () => {});
  const title = `Test cut: ${piece.name}`;
  const node = element(
    "div",
    { class: "question" },
    element("a", { class: "back", href: "#saw" }, "‹ At the saw"),
    element("h2", {}, title),
    element("p", { class: "aimed" }, "Target ", briefly(piece.length, "fraction-large")),
    trial.nodes,
  );
  return { node, title: () => title, leave: standing.leave };
}

/**
 * What is asked of the test piece, and what comes of it.
 * @param {App} app
 * @param {Piece} piece
 * @param {Field[]} asked
 */
function trialOf(app, { entry, part, length }, asked) {
  // One aims at the mark: a stop can't be set between two.
  const aimed = length.plain;
  const reckon = latest(app.ask);
  const result = element("output", { class: "result", name: "result", tabindex: "-1", "aria-live": "off" });
  const heard = answerHeard();
  /** @type {Answered<Reckoning> | null} */
  let answer = null;
  const fields = form({
    fields: asked,
    values: { cut: "stop" },
    onInput(values) {
      draft.type(values);
      ask();
    },
    onFocus: (input, { kind }) =>
      app.sheet.open(input, { kind, unit: app.project.unit(), peek, whenDone: () => result.focus() }),
  });
  const draft = formDraft(app, projectKey(app, entry, part, "trial"), fields);
  const anew = readAnewLine(app, () => draft.typedIn(["measured"]));
  const errors = () => sortedErrors(answer, asked, fields.values());
  const peek = () => ({ lines: inLittle(answer, errors(), asked, "measured"), keep: null });

  function ask() {
    const values = { aimed, ...fields.values() };
    reckon({ do: "reckon", reckoner: QUESTION, values, settings: app.project.settings() }, show);
  }

  /** @param {Answered<Reckoning>} now */
  function show(now) {
    answer = now;
    fields.show({ echoes: now.ok ? now.echoes : {}, errors: errors().beside });
    anew.draw();
    heard.say(now.ok ? now.answers[0] : null);
    const keepIt = button("Save to the piece", keep, { class: "button primary" });
    result.replaceChildren(...(now.ok ? whichWay(now, keepIt) : unanswered(errors(), asked)));
    app.sheet.refresh();
  }

  async function keep() {
    const goOn = onward();
    const kept = await app.project.change({ act: "trial", id: entry, part, ...fields.values() });
    if (!kept.ok) return;
    draft.drop();
    goOn("saw");
  }

  ask();
  return { nodes: [fields.node, anew.node, result, heard.node] };
}

/**
 * Which way to move the stop stands right under how much.
 * @param {Reckoning} reckoned
 * @param {HTMLElement} act
 */
const whichWay = ({ answers: [off, ...others], drawing: drawn, working: lines, source }, act) =>
  present([mainAnswer(off, null, [act]), otherAnswers(others), drawn ? drawing(drawn) : null, working(lines, source)]);
