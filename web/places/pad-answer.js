import { latest } from "../store/latest.js";
import { shortAnswer } from "../widgets/answers.js";
import { button, element } from "../widgets/element.js";
import { nameDialog } from "../widgets/name-dialog.js";
import { lineMark } from "../widgets/tally-lines.js";
import { trouble } from "../widgets/trouble.js";
import { unbroken } from "../widgets/unbroken.js";

/**
 * The large answer of the pad: to what is being typed, or, after Enter, to the line entered until
 * the next key. It is what Keep keeps; `onKept()` follows.
 */
export function padAnswer(app, onKept) {
  const read = latest(app.ask);
  const wrong = trouble("pad-trouble");
  const echo = element("p", { class: "echo" });
  const output = element("output", { name: "pad-answer", class: "pad-answer", for: "pad-input" });
  const keep = button("Keep", keepReading, { class: "button primary", "aria-label": "Keep in project" });
  let current = null;
  let refused = null;

  const say = (sentence) => output.replaceChildren(element("p", { class: "help" }, unbroken(sentence)));

  /** Ask about `asked`; `text` is what is sent in its place, where that is only a line's number. */
  function ask(asked, text = asked) {
    current = asked;
    output.classList.add("waiting");
    if (app.state.get().core.phase === "starting" && !output.querySelector(".main-answer")) {
      say("Answered as soon as the arithmetic is here.");
    }
    const names = { names: app.tally.namesIn(text), ...app.tally.projectNames(text) };
    read({ do: "read", text, settings: app.settings(), ...names }, (said) => {
      if (asked !== current) return;
      remember({ asked, said });
      show(asked, said);
    });
  }

  const remember = (answer) => app.state.set({ pad: { ...app.state.get().pad, answer } });

  function show(asked, said) {
    current = asked;
    output.classList.toggle("waiting", !said.ok);
    output.dataset.for = asked;
    wrong.show(said.ok ? null : said.error, { quiet: asked !== refused });
    echo.textContent = said.ok && app.state.get().pad.text ? `read as ${unbroken(said.echo)}` : "";
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

  /** What is kept must be readable without the tally: a sum that uses its lines is kept as its value. */
  function keepReading() {
    const { asked, said } = app.state.get().pad.answer;
    const usesTally = Object.keys(app.tally.namesIn(asked)).length > 0;
    nameDialog({
      title: `Keep ${usesTally ? (said.value.brief ?? said.value.text) : said.kept}`,
      act: "Keep",
      async give(name) {
        const text = usesTally ? said.value.exact_plain : asked;
        const answer = await app.change({ act: "keep_reading", name, text });
        if (answer.ok) onKept();
        return answer;
      },
    });
  }

  return {
    output,
    echo,
    wrong,
    keep,
    show,
    ask,
    forget() {
      remember(null);
      empty();
    },
    empty,
    /** The answer to a line just entered. */
    line: (line) => ask(line.text, lineMark(line)),
    /** Enter was pressed on what can't be read. */
    refuse(error) {
      refused = current;
      wrong.show(error);
    },
  };
}
