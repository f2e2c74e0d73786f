import { canRead } from "../widgets/aloud.js";
import { choiceField } from "../widgets/choice-field.js";
import { button, element } from "../widgets/element.js";

const ORDER = {
  key: "order",
  label: "Order",
  choices: [
    { value: "set-up", label: "By stop" },
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
    each.verdicts.filter(({ verdict }) => verdict !== "good").map((verdict) => judged(verdict, act, tool)),
    each.trial
      ? element(
          "p",
          { class: "trial" },
          `Last try: ${each.trial.difference}, ${each.trial.direction}. ${each.trial.remedy}`,
        )
      : null,
    tool("Try a set-up", () => app.go(`try/${each.entry}/${encodeURIComponent(each.part)}`)),
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

/** Pieces that a correction made wrong, with what can be done about them. */
const judged = ({ verdict, said, which }, act, tool) =>
  element(
    "div",
    { class: "judged" },
    element("p", { class: `verdict verdict-${verdict.replaceAll(" ", "-")}` }, said),
    verdict === "cut down" || verdict === "recut ends"
      ? tool("Done: cut to what is asked now", () => act({ act: "recut", which }))
      : tool("Back to the list: one spoiled", () => act({ act: "spoil", which: which[0] })),
  );
