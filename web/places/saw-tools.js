import { canRead } from "../widgets/aloud.js";
import { choiceField } from "../widgets/choice-field.js";
import { button, element } from "../widgets/element.js";

const WIDE = "button saw-tool saw-wide";
const ORDER = {
  key: "order",
  label: "Order",
  choices: [
    { value: "set-up", label: "By stop" },
    { value: "board", label: "By board" },
    { value: "part", label: "By part" },
  ],
};
const LIGHT = {
  key: "light",
  label: "Light",
  choices: [
    { value: "", label: "As the device" },
    { value: "sun", label: "Sun" },
    { value: "dark", label: "Dark" },
  ],
};

/** Below the piece: what is wrong with pieces cut, the set-up tried, and how this place looks and sounds. */
export function sawTools(app, each) {
  const { saw } = app.state.get();
  const set = (patch) => app.state.set({ saw: { ...app.state.get().saw, ...patch } });
  const act = (more) => app.quietly(app.tryChange({ id: each.entry, part: each.part, ...more }));
  const order = choiceField({
    field: ORDER,
    value: saw.order,
    onInput: (value) => {
      set({ order: value });
      app.projects.look();
    },
  });
  const light = choiceField({ field: LIGHT, value: saw.light, onInput: (value) => set({ light: value }) });
  const tool = (label, run, attributes = {}) => button(label, run, { class: "button saw-tool", ...attributes });
  return element(
    "div",
    { class: "saw-tools" },
    each.verdicts.filter(({ verdict }) => verdict !== "good").map((verdict) => mending(verdict, act, tool)),
    each.trial
      ? element(
          "p",
          { class: "trial" },
          `Last try: ${each.trial.difference}, ${each.trial.direction}. ${each.trial.remedy}`,
        )
      : null,
    tool("Try a set-up", () => app.go(`try/${each.entry}/${encodeURIComponent(each.part)}`)),
    tool("About this piece", () => app.go(`about/${each.entry}/${encodeURIComponent(each.part)}`)),
    tool("Not cut", () => act({ act: "cut", by: -1 }), { disabled: each.cut === 0 }),
    canRead()
      ? tool(saw.aloud ? "Reads each cut aloud" : "Read aloud", () => set({ aloud: !saw.aloud }), {
          "aria-pressed": String(Boolean(saw.aloud)),
        })
      : null,
    order.node,
    light.node,
  );
}

/** What can be done about pieces that a correction made wrong, as it is done. */
function mending({ verdict, which, difference }, act, tool) {
  const by = difference ? ` by ${difference.text}` : "";
  const isRecut = verdict === "cut down" || verdict === "recut ends";
  if (!isRecut) return tool("One spoiled: cut it anew", () => act({ act: "spoil", which: which[0] }), { class: WIDE });
  const done = verdict === "cut down" ? `Done: cut down${by}` : "Done: ends cut anew";
  return tool(done, () => act({ act: "recut", which }), { class: WIDE });
}
