import { lineMark } from "../../store/pad/naming.js";
import { identity } from "../../store/project/identity.js";
import { button, element } from "../../widgets/element.js";
import { WRITES } from "../../widgets/keys/key-layouts.js";
import { lengthKeys } from "../../widgets/keys/length-keys.js";
import { typeAnywhere } from "../../widgets/keys/type-anywhere.js";
import { SIGNS, write } from "../../widgets/keys/typing.js";
import { fromProject } from "../forms/from-project.js";
import { notice, quietly } from "../notices.js";
import { padAnswer } from "./pad-answer.js";
import { padError } from "./pad-error.js";
import { padLines } from "./pad-lines.js";

/** The place where the app opens: type a number or a sum, see it, enter it on the tally. */
export function pad(app) {
  const start = app.state.get().pad;
  const answer = padAnswer(app, kept);
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
    "aria-describedby": "pad-error",
    placeholder: "A length",
    value: start.text,
    oninput: typed,
    onbeforeinput: selectDone,
    onclick: touched,
    onkeydown: (event) => event.key === "Enter" && app.entering.enter(),
  });
  const clear = button("✕", cleared, { class: "button pad-clear", "aria-label": "Clear" });
  const error = padError(app);
  const foot = element("div", { class: "pad-foot" });
  let keys = null;

  /** Shows what the state says is in the entry, as it is after Enter. */
  function follow() {
    const { pad, entering } = app.state.get();
    error.draw();
    if (input.value === pad.text) return;
    input.value = pad.text;
    keys?.refresh();
    if (pad.text.trim() !== "") answer.ask(pad.text);
    if (pad.fixing && entering[0]?.error) answer.refuse(entering[0].error);
  }

  function typed() {
    const { pad } = app.state.get();
    const isBlank = input.value.trim() === "";
    app.state.set({ pad: { ...pad, text: input.value, goesOn: !isBlank && pad.goesOn, kept: null } });
    keys?.refresh();
    if (isBlank) answer.forget();
    else answer.ask(input.value);
  }

  function cleared() {
    app.entering.clear();
    if (input.value.trim() === "") answer.forget();
    input.focus();
  }

  /** What is kept is done with: the next number takes its place, a sign goes on from what was kept. */
  function kept(text, id) {
    const { pad, record } = app.state.get();
    if (pad.text === text) app.state.set({ pad: { ...pad, kept: { of: identity(record), id, text } } });
    selectDone();
  }

  const isDone = ({ kept, text }) => Boolean(kept && kept.text === text);

  /** Wherever the caret has gone since: what is written next takes the place of what is done with. */
  function selectDone() {
    if (isDone(app.state.get().pad)) input.select();
    return input;
  }

  /** A first touch selects what is done with, as in any field; a second one places the caret, to go on with it. */
  function touched() {
    const { pad } = app.state.get();
    if (!isDone(pad)) return;
    if (!pad.kept.touched) input.select();
    app.state.set({ pad: { ...pad, kept: pad.kept.touched ? null : { ...pad.kept, touched: true } } });
  }

  /** What stands for the entry kept last, by the name that it has now; nothing where that means a line. */
  function keptMark({ kept }) {
    const { view, record } = app.state.get();
    const entry = kept?.of === identity(record) ? view?.entries.find(({ id }) => id === kept?.id) : undefined;
    return entry && !app.tally.lineCalled(entry.name) ? entry.insert : undefined;
  }

  /** A one-touch step takes what is typed, or else the last line, one step on. */
  function step(how) {
    app.entering.enter();
    quietly(app.entering.step(how));
  }

  function use(line) {
    input.focus();
    write(selectDone(), lineMark(line));
  }

  /** A sign that has nothing before it goes on from the last line, which may still be on its way. */
  function sign(label) {
    const { pad, tally, entering } = app.state.get();
    const last = tally?.lines.at(-1);
    if (isDone(pad)) return write(selectDone(), (keptMark(pad) ?? "") + WRITES[label]);
    const isFirst = pad.text.trim() === "" && !pad.correcting && !pad.fixing;
    const isOnItsWay = isFirst && entering.length > 0;
    if (isOnItsWay) app.state.set({ pad: { ...pad, goesOn: true } });
    const before = isFirst && !isOnItsWay && last?.value ? lineMark(last) : "";
    write(input, before + WRITES[label]);
  }

  function takeNamed() {
    const open = fromProject(app, { kind: "length" }, undefined, taken);
    if (open) open(selectDone());
    else notice("Nothing is kept in the project yet that has a number.");
  }

  /** Why a name of the project can't be used here: a line is called so, and is nearer. */
  function taken(name) {
    const line = app.tally.lineCalled(name);
    if (!line) return "";
    const remedy = "Rename one of them to use the project’s number.";
    return `Line ${line.id} of the tally is called ${name} too, so the pad would take that one. ${remedy}`;
  }

  const acts = { Enter: () => app.entering.enter(), project: takeNamed };
  for (const label of SIGNS) acts[label] = () => sign(label);
  for (const how of ["again", "half", "double", "kerf"]) acts[how] = () => step(how);
  let drawn = null;
  /** Drawn anew only when they are others: a thumb may be on one of them. */
  function drawKeys() {
    const asked = { unit: app.project.unit(), strip: app.state.get().strip };
    if (drawn === JSON.stringify(asked)) return;
    drawn = JSON.stringify(asked);
    keys = lengthKeys({ kind: "pad", ...asked, target: selectDone, acts });
    foot.replaceChildren(keys.node);
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
  error.draw();
  drawKeys();
  tally.draw();
  const node = element(
    "div",
    { class: "pad" },
    element(
      "div",
      { class: "pad-head" },
      tally.node,
      error.node,
      element("div", { class: "pad-entry" }, input, clear),
      answer.echo,
      answer.wrong,
      element("div", { class: "pad-card" }, answer.output, answer.keep),
    ),
    foot,
  );
  typeAnywhere(input);

  function refresh(changed) {
    if (changed.includes("strip") || changed.includes("described")) drawKeys();
    if (changed.includes("tally") || changed.includes("entering")) tally.draw();
    if (changed.includes("pad") || changed.includes("entering")) follow();
    if (changed.includes("entered") && input.value.trim() === "") answer.line(app.state.get().entered);
  }

  return { node, refresh };
}
