import { pickedChoice } from "./picked-choice.js";
import { segmentedChoice } from "./segmented-choice.js";

/** @import { ChoiceOptions, FieldWidget } from "../widget.d.ts" */

const FEW = 4;
/** Letters that the narrowest phone has room for beside a label, with those that the space between two takes. */
const ROOM = 30;
const BETWEEN = 3;

/**
 * One of several: few short words side by side in the row, all else picked from a list that the row opens.
 * @param {ChoiceOptions} options
 * @returns {FieldWidget<string>}
 */
export function choiceField(options) {
  const { choices = [] } = options.field;
  const wide = choices.reduce((sum, { label }) => sum + label.length + BETWEEN, 0);
  const isPictured = choices.some(({ picture }) => picture);
  const isShort = choices.length <= FEW && wide <= ROOM && !isPictured;
  return isShort ? segmentedChoice(options) : pickedChoice(options);
}
