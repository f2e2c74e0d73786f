import { button, element } from "../widgets/element.js";
import { WRITES } from "../widgets/key-layouts.js";
import { lengthKeys } from "../widgets/length-keys.js";
import { takesKeys } from "../widgets/takes-keys.js";
import { lineMark } from "../widgets/tally-lines.js";
import { SIGNS, write } from "../widgets/typing.js";
import { fromProject } from "./from-project.js";
import { padAnswer } from "./pad-answer.js";
import { padLines } from "./pad-lines.js";

const goingOn = (text, line) => (SIGNS.includes(text.trim()[0]) ? lineMark(line) : "") + text;

/** The place where the app opens: type a number or a sum, see it, enter it on the tally. */
export function pad(app) {
  const start = app.state.get().pad;
  // What is kept is done with: the next number takes its place, a sign goes on from it.
  const answer = padAnswer(app, () => input.select());
  const tally = padLines(app, use);
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
    placeholder: "A length",
    value: start.text,
    oninput: typed,
    onkeydown: (event) => event.key === "Enter" && enter(),
  });
  const clear = button("✕", cleared, { class: "button pad-clear", "aria-label": "Clear" });
  const banner = element("p", { class: "pad-correcting" });
  const foot = element("div", { class: "pad-foot" });
  let keys = null;
  let queue = Promise.resolve();

  /** Another text in the entry; `correcting` is the line of the tally that it corrects. */
  function put(text, correcting) {
    app.state.set({ pad: { ...app.state.get().pad, text, correcting } });
    input.value = text;
    drawBanner();
    keys?.refresh?.();
  }

  function typed() {
    put(input.value, app.state.get().pad.correcting);
    if (input.value.trim() === "") answer.forget();
    else answer.ask(input.value);
  }

  function cleared() {
    put("", null);
    answer.forget();
    input.focus();
  }

  function drawBanner() {
    const { correcting } = app.state.get().pad;
    banner.hidden = !correcting;
    banner.textContent = `Correcting line ${correcting}: Enter puts it in its place, ✕ leaves it as it was.`;
  }

  /** Enter the line; what was typed after it while it was on its way stays. */
  async function enterNow() {
    const text = input.value;
    if (text.trim() === "") return true;
    const { correcting } = app.state.get().pad;
    const made = await app.tally.act(correcting ? { act: "correct", id: correcting, text } : { act: "enter", text });
    if (!made.ok) {
      answer.refuse(made.error);
      return false;
    }
    const line = correcting ? made.lines.find(({ id }) => id === correcting) : made.lines.at(-1);
    const since = input.value.startsWith(text) ? goingOn(input.value.slice(text.length), line) : input.value;
    put(since, null);
    if (since) answer.ask(since);
    else answer.line(line);
    return true;
  }

  const enter = () => (queue = queue.then(enterNow, enterNow));

  /** A one-touch step takes what is typed, or else the last line, one step on. */
  async function step(how) {
    if (!(await enter())) return;
    const made = await app.quietly(app.tally.act({ act: "step", how }));
    if (made.ok) answer.line(made.lines.at(-1));
  }

  function use(mark) {
    input.focus();
    write(input, mark);
  }

  /** A sign that has nothing before it goes on from the last line. */
  function sign(label) {
    const { text, correcting } = app.state.get().pad;
    const last = app.state.get().tally?.lines.at(-1);
    const goesOn = last?.value && !correcting && text.trim() === "";
    write(input, goesOn ? goingOn(WRITES[label], last) : WRITES[label]);
  }

  function takeNamed() {
    const open = fromProject(app, { kind: "length" }, undefined, taken);
    if (open) open(input);
    else app.notice("Nothing is kept in the project yet that has a number.");
  }

  /** Why a name of the project can't be used here: a line is called so, and is nearer. */
  function taken(name) {
    const line = app.tally.lineCalled(name);
    if (!line) return "";
    const remedy = "Rename one of them to use the project’s number.";
    return `Line ${line.id} of the tally is called ${name} too, so the pad would take that one. ${remedy}`;
  }

  const acts = { Enter: enter, project: takeNamed };
  for (const label of SIGNS) acts[label] = () => sign(label);
  for (const how of ["again", "half", "double", "kerf"]) acts[how] = () => step(how);
  let drawn = null;
  /** Drawn anew only when they are others: a thumb may be on one of them. */
  function drawKeys() {
    const asked = { unit: app.unit(), strip: app.state.get().strip };
    if (drawn === JSON.stringify(asked)) return;
    drawn = JSON.stringify(asked);
    keys = lengthKeys({ kind: "pad", ...asked, target: () => input, acts });
    foot.replaceChildren(keys);
  }

  const lines = app.state.get().tally?.lines;
  // A line that was undone or deleted since, or comes to another number, has no answer here any more.
  const isOf = ({ asked, said, id }, line) =>
    (!id || line.id === id) && line.text === asked && line.value && line.value.exact === said.value?.exact;
  const stands = (each) => each.asked === start.text || !lines || lines.some((line) => isOf(each, line));
  if (start.answer && (start.text.trim() === "" || start.answer.asked === start.text) && stands(start.answer)) {
    answer.show(start.answer.asked, start.answer.said);
  } else answer.empty();
  if (start.text.trim() !== "") answer.ask(start.text);
  drawBanner();
  drawKeys();
  tally.draw();
  const node = element(
    "div",
    { class: "pad" },
    element(
      "div",
      { class: "pad-head" },
      tally,
      banner,
      element("div", { class: "pad-entry" }, input, clear),
      answer.echo,
      answer.wrong,
      element("div", { class: "pad-card" }, answer.output, answer.keep),
    ),
    foot,
  );
  takesKeys(input);
  node.refresh = (changed) => {
    if (changed.includes("strip") || changed.includes("described")) drawKeys();
    if (changed.includes("tally")) tally.draw();
  };
  return node;
}
