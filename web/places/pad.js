import { latest } from "../store/latest.js";
import { shortAnswer } from "../widgets/answers.js";
import { button, element } from "../widgets/element.js";
import { lengthKeys } from "../widgets/length-keys.js";
import { nameDialog } from "../widgets/name-dialog.js";
import { tallyLines } from "../widgets/tally-lines.js";
import { trouble } from "../widgets/trouble.js";
import { write } from "../widgets/typing.js";

const SHOWN_LINES = 12;

/** The place where the app opens: type a number or a sum, see it, enter it on the tally. */
export function pad(app) {
  const start = app.state.get().pad;
  const read = latest(app.ask);
  const lines = element("div", { class: "pad-tally" });
  const wrong = trouble("pad-trouble");
  const echo = element("p", { class: "echo" });
  const toTally = element("a", { class: "tally-all", href: "#tally" });
  const output = element("output", { name: "pad-answer", class: "pad-answer", for: "pad-input" });
  const input = element("input", {
    id: "pad-input",
    name: "pad",
    class: "pad-input",
    type: "text",
    inputmode: "none",
    enterkeyhint: "enter",
    autocomplete: "off",
    spellcheck: "false",
    "aria-label": "Length or sum",
    "aria-describedby": "pad-trouble",
    placeholder: "What does the tape say?",
    value: start.text,
    oninput: typed,
    onkeydown: (event) => event.key === "Enter" && enter(),
  });
  const keep = button("Keep", keepReading, { class: "button primary", "aria-label": "Keep in project" });
  const clear = button("✕", () => put("", null), { class: "button pad-clear", "aria-label": "Clear" });
  const banner = element(
    "p",
    { class: "pad-correcting", hidden: !start.correcting },
    "Correcting a line: Enter puts it in its place.",
  );
  const keys = element("div", { class: "pad-foot" });

  function typed() {
    app.state.set({ pad: { ...app.state.get().pad, text: input.value } });
    ask();
  }

  /** Another text in the entry; `correcting` is the line of the tally that it corrects. */
  function put(text, correcting) {
    app.state.set({ pad: { ...app.state.get().pad, text, correcting } });
    banner.hidden = !correcting;
    input.value = text;
    ask();
    input.focus();
  }

  function ask() {
    const asked = input.value;
    if (asked.trim() === "") return show(asked, null);
    output.classList.add("waiting");
    if (app.state.get().core.phase === "starting" && !output.querySelector(".main-answer")) {
      output.replaceChildren(element("p", { class: "help" }, "Answered as soon as the arithmetic is here."));
    }
    read({ do: "read", text: asked, settings: app.settings(), names: app.tally.namesIn(asked) }, (said) => {
      app.state.set({ pad: { ...app.state.get().pad, answer: { asked, said } } });
      show(asked, said);
    });
  }

  function show(asked, said) {
    output.classList.toggle("waiting", Boolean(said && !said.ok));
    output.dataset.for = asked;
    wrong.show(said && !said.ok ? said.error : null);
    wrong.classList.toggle("unfinished", said?.error?.at >= asked.trimEnd().length - 1);
    echo.textContent = said?.ok ? `read as ${said.echo}` : "";
    keep.disabled = !said?.ok;
    if (said?.ok) output.replaceChildren(shortAnswer(said.value, said.tape));
    else if (asked.trim() === "")
      output.replaceChildren(
        element("p", { class: "help" }, "Type a length or a sum: 31 5/8, 7-13/16 + 3, 2 × 18 mm."),
      );
  }

  /** What is kept must be readable without the tally: a sum that uses its lines is kept as its value. */
  function keepReading() {
    const { said } = app.state.get().pad.answer;
    const usesTally = Object.keys(app.tally.namesIn(input.value)).length > 0;
    const text = usesTally ? said.value.exact_plain : input.value;
    nameDialog({
      title: `Keep ${said.value.text}`,
      act: "Keep",
      give: (name) => app.change({ act: "keep_reading", name, text }),
    });
  }

  async function enter() {
    const { correcting } = app.state.get().pad;
    const text = input.value;
    if (text.trim() === "") return;
    const act = correcting ? { act: "correct", id: correcting, text } : { act: "enter", text };
    const answer = await app.tally.act(act);
    if (answer.ok) put("", null);
    else wrong.show(answer.error);
  }

  /** A one-touch step takes what is typed, or else the last line, one step on. */
  async function step(how) {
    if (input.value.trim() !== "") await enter();
    if (input.value.trim() === "") app.tellTally(app.tally.act({ act: "step", how }));
  }

  function use(mark) {
    input.focus();
    write(input, mark);
  }

  function drawTally() {
    const all = app.state.get().tally?.lines ?? [];
    lines.replaceChildren(...tallyLines(all.slice(-SHOWN_LINES), use));
    toTally.hidden = all.length === 0;
    toTally.textContent = `Tally, ${all.length} ${all.length === 1 ? "line" : "lines"} ›`;
    lines.scrollTop = lines.scrollHeight;
  }

  const acts = { Enter: enter };
  for (const how of ["again", "half", "double", "kerf"]) acts[how] = () => step(how);
  const drawKeys = () =>
    keys.replaceChildren(lengthKeys({ kind: "pad", strip: app.state.get().strip, target: () => input, acts }));

  if (start.answer?.asked === start.text) show(start.text, start.answer.said);
  else show("", null);
  ask();
  drawKeys();
  drawTally();
  const node = element(
    "div",
    { class: "pad" },
    element(
      "div",
      { class: "pad-head" },
      lines,
      banner,
      element("div", { class: "pad-entry" }, input, keep, clear),
      element("div", { class: "pad-under" }, toTally, echo),
      wrong,
      output,
    ),
    keys,
  );
  node.refresh = (changed) => {
    if (changed.includes("strip")) drawKeys();
    if (changed.includes("tally")) drawTally();
  };
  return node;
}
