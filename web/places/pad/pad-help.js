import { examples } from "./pad-unit.js";

/** @import { App } from "../place.d.ts" */

/**
 * What is said where nothing was typed yet: what the pad takes, and how the strip is used until it was.
 * @param {App} app
 */
export function padHelp(app) {
  const { hand, strip } = app.state.get();
  const typing = `Type a length or some math, like ${examples(app).sum}.`;
  if (!strip || hand.usedStrip) return typing;
  return `${typing} Or touch a mark on the strip and slide to adjust; ‹ and › move one mark.`;
}

/**
 * The strip was used: how it is done need not be said again.
 * @param {App} app
 */
export function stripUsed(app) {
  const { hand } = app.state.get();
  if (!hand.usedStrip) app.state.set({ hand: { ...hand, usedStrip: true } });
}
