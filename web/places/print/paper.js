import { latest } from "../../store/page/latest.js";
import { draftKey } from "../../store/page/state.js";
import { correctionKey, draftIn } from "../../store/project/draft.js";
import { entryOf } from "../../store/project/identity.js";
import { element } from "../../widgets/element.js";
import { sheetsOfPaper } from "../../widgets/pictures/sheet-of-paper.js";
import { arriving } from "../forms/instead.js";
import { inWords } from "../notices.js";
import { paperChoice, paperOf, printButton, trueSizeAdvice } from "./printing.js";

/** @import { OnPaper, Refused } from "../../python/contract.d.ts" */
/** @import { App, Place } from "../place.d.ts" */

const TITLE = "Print at true size";

/**
 * The answer of a question on paper at true size: its sheets, and its marks as a list to transfer.
 * @param {App} app
 * @param {string} key of the question
 * @param {string} entryId
 * @returns {Place}
 */
export function paper(app, key, entryId) {
  const { described, record } = app.state.get();
  if (!described?.papers) return arriving("Loading the sheets…", () => paper(app, key, entryId));
  const entry = entryOf(record, "line", entryId);
  const draft = draftIn(app.state, entry ? correctionKey(record, entry.id) : draftKey(key)).get();
  const values = draft.values ?? entry?.values ?? {};
  const unit = entry?.unit ?? draft.unit ?? app.project.unit();
  const names = record ? { document: record.document, ...(entry ? { id: entry.id } : {}) } : {};
  const ask = latest(app.ask);
  const shown = element("div", { class: "printable" });

  function draw() {
    const { settings } = app.project;
    ask({ do: "paper", reckoner: key, values, paper: paperOf(app), settings: settings(), unit, ...names }, (said) =>
      shown.replaceChildren(...(said.ok ? printable(said) : refused(said))),
    );
  }

  draw();
  const node = element(
    "div",
    { class: "paper" },
    element(
      "div",
      { class: "on-screen" },
      element("a", { class: "back", href: `#work-out/${[key, entryId].filter(Boolean).join("/")}` }, "‹ Answer"),
      element("h2", {}, TITLE),
      trueSizeAdvice(),
      paperChoice(app, draw),
    ),
    shown,
  );
  return { node, title: () => TITLE };
}

/** @param {OnPaper} said */
const printable = (said) => [
  element(
    "div",
    { class: "on-screen" },
    printButton(),
    element("h3", {}, `${said.title}, ${count(said.sheets.length, "sheet")}`),
    element("p", { class: "help" }, said.summary),
  ),
  sheetsOfPaper(said.sheets, said.paper),
  element(
    "div",
    { class: "on-screen" },
    element("h3", {}, "Or mark it straight from the tape"),
    element("p", { class: "help" }, `Measure every mark from: ${said.start.toLowerCase()}.`),
    element(
      "dl",
      { class: "answers" },
      said.marks.map(({ name, text, dropped_text: dropped }) =>
        element(
          "div",
          { class: "answer" },
          element("dt", {}, name),
          element("dd", {}, element("strong", {}, text), dropped ? element("span", { class: "aside" }, dropped) : null),
        ),
      ),
    ),
  ),
];

/**
 * @param {number} many
 * @param {string} what
 */
const count = (many, what) => `${many} ${what}${many === 1 ? "" : "s"}`;

/**
 * The field's own sentence stands beside it in the question; here is the way back to it.
 * @param {Refused} said
 */
const refused = ({ error, more = [] }) =>
  [error, ...more].map((each) => element("p", { class: "error" }, inWords(each)));
