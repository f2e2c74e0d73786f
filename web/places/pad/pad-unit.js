import { readAnew, unitNamed } from "../forms/units.js";

/** @import { Pad } from "../../store/shapes.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * What a bare number in the pad means: in a line that is being corrected what it meant there, else as it is set.
 * @param {App} app
 */
export function padUnit(app) {
  const { pad, tally } = app.state.get();
  const line = pad.correcting && tally?.tally?.lines.find(({ id }) => id === pad.correcting);
  return line ? line.unit : app.project.unit();
}

/**
 * A length and a sum as one might type them here, to show what the pad takes.
 * @param {App} app
 */
export const examples = (app) =>
  padUnit(app) === "mm" ? { length: "803", sum: "803 + 57" } : { length: "31 5/8", sum: "31 5/8 + 2 1/4" };

/**
 * The unit in which what is being typed was begun; what was kept is done with, and what was lent has its own.
 * @param {App} app
 * @param {Pad} pad the pad as it was before it was typed in
 */
export function begunIn(app, pad) {
  const isNew = pad.text.trim() === "" || (pad.kept && pad.kept.text === pad.text);
  return (!isNew || pad.correcting ? pad.unit : null) ?? app.project.unit();
}

/**
 * Says in which unit the pad reads, where that is not the one that it was typed in, or that is set; else "".
 * @param {App} app
 */
export function unitSaid(app) {
  const { pad } = app.state.get();
  const [read, set] = [padUnit(app), app.project.unit()];
  if (read !== set) return `Plain numbers here are ${unitNamed(app, read)}, as they were when you entered this line.`;
  return pad.correcting ? "" : readAnew(app, pad.unit);
}
