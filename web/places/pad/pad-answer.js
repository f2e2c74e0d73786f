import { lineMark } from "../../store/pad/naming.js";
import { latest } from "../../store/page/latest.js";
import { button, element } from "../../widgets/element.js";
import { fieldError } from "../../widgets/fields/field-error.js";
import { shortAnswer } from "../../widgets/numbers/answers.js";
import { unbroken } from "../../widgets/numbers/unbroken.js";
import { keepSum } from "./keep-sum.js";

/**
 * The large answer of the pad: to what is being typed, or, after Enter, to the line entered until
 * the next key. It is what Keep keeps; `onKept(text, id)` follows.
 */
export function padAnswer(app, onKept) {
  const read = latest(app.ask);
  const wrong = fieldError("pad-error");
  const echo = element("p", { class: "echo" });
  const output = element("output", { name: "pad-answer", class: "pad-answer", for: "pad-input" });
  const keep = button("Keep", keepReading, { class: "button primary", "aria-label": "Keep in project" });
  let current = null;
  let refused = null;

  const say = (sentence) => output.replaceChildren(element("p", { class: "help" }, unbroken(sentence)));

  /** Ask about `asked`; of the line `id` of the tally, by what it is called: `text` is sent in its place. */
  function ask(asked, text = asked, id = null) {
    current = asked;
    output.classList.add("waiting");
    if (app.state.get().core.phase === "starting" && !output.querySelector(".main-answer")) {
      say("Answered as soon as the arithmetic is here.");
    }
    const names = { names: app.tally.namesIn(text), ...app.tally.projectNames(text) };
    read({ do: "read", text, settings: app.project.settings(), ...names }, (said) => {
      if (asked !== current) return;
      remember({ asked, said, id });
      show(asked, said);
    });
  }

  const remember = (answer) => app.state.set({ pad: { ...app.state.get().pad, answer } });

  function show(asked, said) {
    current = asked;
    output.classList.toggle("waiting", !said.ok);
    output.dataset.for = asked;
    wrong.show(said.ok ? null : said.error, { quiet: asked !== refused });
    const isTyped = said.ok && app.state.get().pad.text;
    echo.textContent = isTyped ? [`read as ${unbroken(said.echo)}`, said.note].filter(Boolean).join(". ") : "";
    keep.disabled = !said.ok;
    if (said.ok) output.replaceChildren(shortAnswer(said.value, said.tape));
  }

  function empty() {
    current = null;
    output.classList.remove("waiting");
    output.dataset.for = "";
    wrong.show(null);
    echo.textContent = "";
    keep.disabled = true;
    say("Type a length or a sum: 31 5/8, 7-13/16 + 3, 2 × 18 mm.");
  }

  function keepReading() {
    const { asked, id } = app.state.get().pad.answer;
    return keepSum(app, id ? { id } : { text: asked }, { onKept: (kept) => onKept(asked, kept) });
  }

  return {
    output,
    echo,
    wrong: wrong.node,
    keep,
    show,
    ask,
    forget() {
      remember(null);
      empty();
    },
    empty,
    /** The answer to a line just entered. */
    line: (line) => ask(line.text, lineMark(line), line.id),
    /** Enter was pressed on what can't be read. */
    refuse(error) {
      refused = current;
      wrong.show(error);
    },
  };
}
