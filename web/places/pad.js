import { latest } from "../store/latest.js";
import { mainAnswer } from "../widgets/answers.js";
import { button, element } from "../widgets/element.js";
import { lengthKeys } from "../widgets/length-keys.js";
import { nameDialog } from "../widgets/name-dialog.js";
import { trouble } from "../widgets/trouble.js";

/** The place where the app opens: type a number or a sum, see it. */
export function pad(app) {
  const { text, answer } = app.state.get().pad;
  const read = latest(app.ask);
  const wrong = trouble("pad-trouble");
  const echo = element("p", { class: "echo" });
  const output = element("output", { name: "pad-answer", class: "pad-answer", for: "pad-input" });
  const input = element("input", {
    id: "pad-input",
    name: "pad",
    class: "pad-input",
    type: "text",
    inputmode: "none",
    autocomplete: "off",
    spellcheck: "false",
    "aria-label": "Length or sum",
    "aria-describedby": "pad-trouble",
    placeholder: "What does the tape say?",
    value: text,
    oninput: typed,
  });
  const keep = button("Keep", keepReading, { class: "button primary", "aria-label": "Keep in project" });
  const clear = button("✕", () => ((input.value = ""), typed(), input.focus()), { class: "button pad-clear", "aria-label": "Clear" });
  const keys = element("div", { class: "pad-foot" });
  const drawKeys = () => keys.replaceChildren(lengthKeys("length", app.state.get().strip, () => input));

  function typed() {
    app.state.set({ pad: { ...app.state.get().pad, text: input.value } });
    ask();
  }

  function ask() {
    const asked = input.value;
    if (asked.trim() === "") return show(asked, null);
    output.classList.add("waiting");
    read({ do: "read", text: asked, settings: app.settings() }, (said) => {
      app.state.set({ pad: { text: input.value, answer: { asked, said } } });
      show(asked, said);
    });
  }

  function show(asked, said) {
    output.classList.toggle("waiting", Boolean(said && !said.ok));
    output.dataset.for = asked;
    wrong.show(said && !said.ok ? said.error : null);
    echo.textContent = said?.ok ? `read as ${said.echo}` : "";
    keep.disabled = !said?.ok;
    if (said?.ok) output.replaceChildren(mainAnswer({ ...said.value, label: "" }, said.tape, app.copy, keep));
    else if (asked.trim() === "") output.replaceChildren(element("p", { class: "help" }, "Type a length or a sum: 31 5/8, 7-13/16 + 3, 2 × 18 mm."));
  }

  function keepReading() {
    const text = input.value;
    nameDialog({
      title: `Keep ${text}`,
      act: "Keep",
      give: (name) => app.change({ act: "keep_reading", name, text }),
    });
  }

  if (answer?.asked === text) show(text, answer.said);
  else show("", null);
  ask();
  drawKeys();
  const node = element(
    "div",
    { class: "pad" },
    element("div", { class: "pad-entry" }, input, clear),
    echo,
    wrong,
    output,
    keys,
  );
  node.refresh = (changed) => changed.includes("strip") && drawKeys();
  return node;
}
