import { canRead } from "../../widgets/device/aloud.js";
import { button, element } from "../../widgets/element.js";
import { choiceField } from "../../widgets/fields/choice-field.js";
import { pieceInFull } from "../../widgets/project/piece-at-the-saw.js";
import { go } from "../go.js";
import { cutKey } from "./saw-keys.js";
import { isToMend, mendingKey, wrongs } from "./saw-mending.js";
import { boardCuts, planTools } from "./saw-plan.js";

/** @import { SawState } from "../../store/shapes.d.ts" */
/** @import { App } from "../place.d.ts" */
/** @import { SawAct } from "./saw-mending.js" */
/** @import { PieceInTurn } from "./saw-pieces.js" */

const WIDE = "saw-tool saw-wide";
const ORDER = {
  key: "order",
  label: "Order",
  choices: [
    { value: "set-up", label: "By stop" },
    { value: "board", label: "By board" },
    { value: "part", label: "By part" },
  ],
};
const BY_PLAN = { value: "plan", label: "By plan" };
const LIGHT = {
  key: "light",
  label: "Light",
  choices: [
    { value: "", label: "Match device" },
    { value: "sun", label: "Sun" },
    { value: "dark", label: "Dark" },
  ],
};

/**
 * Below the piece: all that is told of it, what the main key has no room for, the set-up tried, and how this
 * place looks and sounds.
 * @param {App} app
 * @param {PieceInTurn} each
 * @param {SawAct} act
 */
export function sawTools(app, each, act) {
  const { saw, view } = app.state.get();
  const set = (/** @type {Partial<SawState>} */ patch) => app.state.set({ saw: { ...app.state.get().saw, ...patch } });
  const isPlanned = Boolean(view?.plan);
  const order = choiceField({
    field: isPlanned ? { ...ORDER, choices: [...ORDER.choices, BY_PLAN] } : ORDER,
    value: isPlanned || saw.order !== BY_PLAN.value ? saw.order : ORDER.choices[0].value,
    onInput: (value) => {
      set({ order: value });
      app.projects.look();
    },
  });
  const light = choiceField({ field: LIGHT, value: saw.light, onInput: (value) => set({ light: value }) });
  /**
   * @param {string} label
   * @param {() => unknown} run
   * @param {Record<string, unknown>} [attributes]
   */
  const tool = (label, run, attributes = {}) => button(label, run, { class: "button saw-tool", ...attributes });
  return element(
    "div",
    { class: "saw-tools" },
    each.board ? boardCuts(each.board) : null,
    pieceInFull(each),
    isToMend(each) && each.left > 0 ? cutKey(each, act, WIDE) : null,
    wrongs(each)
      .slice(isToMend(each) ? 1 : 0)
      .map((wrong) => mendingKey(wrong, act, { class: `button ${WIDE}` })),
    each.trial
      ? element(
          "p",
          { class: "trial" },
          `Last test cut: ${each.trial.difference}, ${each.trial.direction}. ${each.trial.remedy}`,
        )
      : null,
    planTools(app, each.board, tool),
    tool("Test cut", () => go(`try/${each.entry}/${encodeURIComponent(each.part)}`)),
    tool("About this piece", () => go(`about/${each.entry}/${encodeURIComponent(each.part)}`)),
    tool("Uncut one", () => act({ act: "cut", by: -1 }), { disabled: each.cut === 0 }),
    canRead()
      ? tool(saw.aloud ? "Reading cuts aloud" : "Read aloud", () => set({ aloud: !saw.aloud }), {
          "aria-pressed": String(Boolean(saw.aloud)),
        })
      : null,
    order.node,
    light.node,
  );
}
