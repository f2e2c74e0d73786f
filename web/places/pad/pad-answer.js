import { lineMark } from "../../store/pad/line-mark.js";
import { latest } from "../../store/page/latest.js";
import { unbroken } from "../../widgets/numbers/unbroken.js";
import { keepSum } from "./keep-sum.js";
import { padCard } from "./pad-card.js";
import { padUnit, unitSaid } from "./pad-unit.js";

/**
 * The large answer of the pad: to what is being typed, or, after Enter, to the line entered until
 * the next key. It is what Keep keeps; `onKept(text, id)` follows.
 */
export function padAnswer(app, onKept) {
  const read = latest(app.ask);
  const card = padCard(() => keepShown(app, onKept));
  let current = null;
  let refused = null;

  /** Ask about `asked`; of the line `id` of the tally, by what it is called: `text` is sent in its place. */
  function ask(asked, text = asked, id = null) {
    current = asked;
    card.wait(app.state.get().core.phase === "starting");
    read(reading(app, text), (answer) => {
      if (asked !== current) return;
      remember({ asked, said: answer, id });
      show(asked, answer);
    });
  }

  const remember = (answer) => app.state.set({ pad: { ...app.state.get().pad, answer } });

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
    /** The answer to a line just entered. */
    line: (line) => ask(line.text, lineMark(line), line.id),
    /** Enter was pressed on what can't be read. */
    refuse(error) {
      refused = current;
      card.refuse(error);
    },
  };
}

/** What is asked of a text: names in it may be those of lines, or of the project. */
function reading(app, text) {
  const names = { names: app.tally.namesIn(text), ...app.tally.projectNames(text) };
  return { do: "read", text, unit: padUnit(app), settings: app.project.settings(), ...names };
}

function echoOf(app, { echo, note }) {
  const told = [note, unitSaid(app)].filter(Boolean);
  return [`read as ${unbroken(echo)}${told.length ? "." : ""}`, ...told].join(" ");
}

/** How the text was read, in a few sentences, and whether its number can be kept as it is read. */
const howRead = (app, answer) => ({
  echo: answer.ok && app.state.get().pad.text ? echoOf(app, answer) : "",
  mayKeep: answer.ok && padUnit(app) === app.project.unit(),
});

function keepShown(app, onKept) {
  const { asked, id } = app.state.get().pad.answer;
  return keepSum(app, id ? { id } : { text: asked }, { onKept: (kept) => onKept(asked, kept) });
}

/** The answer that was shown last, where it is still one to what is typed, or to a line entered. */
function answerLeft({ pad: { text, answer }, tally }) {
  if (!answer || (text.trim() !== "" && answer.asked !== text)) return null;
  const lines = tally?.lines;
  const isLeft = answer.asked === text || !lines || lines.some((line) => isOf(answer, line));
  return isLeft ? answer : null;
}

/** A line that was undone or deleted since, or comes to another number, has no answer here any more. */
const isOf = ({ asked, said, id }, line) =>
  (!id || line.id === id) && line.text === asked && line.value && line.value.exact === said.value?.exact;
