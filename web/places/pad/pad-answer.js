import { lineMark } from "../../store/pad/naming.js";
import { latest } from "../../store/page/latest.js";
import { unbroken } from "../../widgets/numbers/unbroken.js";
import { keepSum } from "./keep-sum.js";
import { padCard } from "./pad-card.js";
import { padHelp } from "./pad-help.js";
import { padUnit, unitSaid } from "./pad-unit.js";

/** @import { Answered, Message, Read, TallyLineTold, Value } from "../../python/contract.d.ts" */
/** @import { Pad, State } from "../../store/shapes.d.ts" */
/** @import { Wrong } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * The large answer of the pad: to what is being typed, or, after Enter, to the line entered until
 * the next key. It is what Keep keeps; `onKept(text, id)` follows.
 * @param {App} app
 * @param {(text: string, id: string) => void} onKept
 */
export function padAnswer(app, onKept) {
  const read = latest(app.ask);
  const card = padCard(
    () => keepShown(app, onKept),
    () => padHelp(app),
  );
  /** @type {string | null} */
  let current = null;
  /** @type {string | null} */
  let refused = null;

  /**
   * Ask about `asked`; of the line `id` of the tally, by what it is called: `text` is sent in its place.
   * @param {string} asked
   * @param {string} [text]
   * @param {string | null} [id]
   */
  function ask(asked, text = asked, id = null) {
    current = asked;
    card.wait(asked, app.state.get().core?.phase === "starting");
    read(reading(app, text), (answer) => {
      if (asked !== current) return;
      remember({ asked, said: answer, id });
      show(asked, answer);
    });
  }

  const remember = (/** @type {Pad["answer"]} */ answer) => app.state.set({ pad: { ...app.state.get().pad, answer } });

  /**
   * @param {string} asked
   * @param {Answered<Read>} answer
   */
  function show(asked, answer) {
    current = asked;
    card.show(asked, answer, { ...howRead(app, answer), quiet: asked !== refused });
  }

  function empty() {
    current = null;
    card.empty();
  }

  const left = answerLeft(app.state.get());
  if (left) show(left.asked, left.said);
  else empty();

  return {
    nodes: card.nodes,
    ask,
    forget() {
      remember(null);
      empty();
    },
    /** There is a strip now, or none: what is said of it where nothing was typed. */
    help: () => current ?? empty(),
    /**
     * The answer to a line just entered.
     * @param {TallyLineTold} line
     */
    line: (line) => ask(line.text, lineMark(line), line.id),
    /**
     * Enter was pressed on what can't be read.
     * @param {Wrong} error
     */
    refuse(error) {
      refused = current;
      card.refuse(error);
    },
  };
}

/**
 * What is asked of a text: names in it may be those of lines, or of the project.
 * @param {App} app
 * @param {string} text
 * @returns {Message<"read">}
 */
function reading(app, text) {
  const names = { names: app.tally.namesIn(text), ...app.tally.projectNames(text) };
  return { do: "read", text, unit: padUnit(app), settings: app.project.settings(), ...names };
}

/**
 * How the text was read, where that says more than the text itself, and in which unit or by which name.
 * @param {App} app
 * @param {Read} read
 */
function echoOf(app, { echo, note }) {
  const told = [note, unitSaid(app)].filter(Boolean);
  if (told.length === 0 && bare(echo) === bare(app.state.get().pad.text)) return "";
  return [`Read as ${unbroken(echo)}${told.length ? "." : ""}`, ...told].join(" ");
}

/**
 * A text without what is clear from the large number under it: the unit of a plain number, and spaces.
 * @param {string} text
 */
const bare = (text) => text.replace(/[\s″"]|mm\b/g, "").replaceAll("-", "−");

/**
 * How the text was read, in a few sentences, and whether its number can be kept as it is read.
 * @param {App} app
 * @param {Answered<Read>} answer
 */
const howRead = (app, answer) => ({
  echo: answer.ok && app.state.get().pad.text ? echoOf(app, answer) : "",
  mayKeep: answer.ok && padUnit(app) === app.project.unit(),
});

/**
 * @param {App} app
 * @param {(text: string, id: string) => void} onKept
 */
function keepShown(app, onKept) {
  const { answer } = app.state.get().pad;
  if (!answer) return;
  const { asked, id } = answer;
  return keepSum(app, id ? { id } : { text: asked }, { onKept: (kept) => onKept(asked, kept) });
}

/**
 * The answer that was shown last, where it is still one to what is typed, or to a line entered.
 * @param {State} state
 */
function answerLeft({ pad: { text, answer }, tally }) {
  if (!answer || (text.trim() !== "" && answer.asked !== text)) return null;
  const lines = tally?.lines;
  const isLeft = answer.asked === text || !lines || lines.some((line) => isOf(answer, line));
  return isLeft ? answer : null;
}

/**
 * A line that was undone or deleted since, or comes to another number, has no answer here any more.
 * @param {NonNullable<Pad["answer"]>} answer
 * @param {TallyLineTold} line
 */
function isOf({ asked, said, id }, line) {
  if ((id && line.id !== id) || line.text !== asked || !line.value) return false;
  return exactly(line.value) === (said.ok ? exactly(said.value) : undefined);
}

/** @param {Value} value */
const exactly = (value) => ("exact" in value ? value.exact : undefined);
