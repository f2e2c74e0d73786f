import { button } from "../../widgets/element.js";

/** @import { Piece, Verdict } from "../../python/contract.d.ts" */
/** @typedef {(more: Record<string, unknown>) => unknown} SawAct does something to the piece that is shown */

const NEEDS_A_HAND = ["cut down", "recut ends", "too short"];

/**
 * The verdicts of pieces cut that something has to be done about, what a hand can mend first.
 * @param {Pick<Piece, "verdicts">} piece
 */
export const wrongs = ({ verdicts }) =>
  verdicts.filter(({ verdict }) => verdict !== "good").sort((one, other) => needsAHand(other) - needsAHand(one));

/** @param {Verdict} verdict */
const needsAHand = ({ verdict }) => Number(NEEDS_A_HAND.includes(verdict));

/**
 * Whether the first thing to do at a piece is to mend what a correction made wrong.
 * @param {Pick<Piece, "verdicts">} each
 */
export const isToMend = (each) => NEEDS_A_HAND.includes(wrongs(each)[0]?.verdict);

/**
 * The key that says it is done, all of what was told.
 * @param {Verdict} verdict
 * @param {SawAct} act
 * @param {Record<string, unknown>} attributes
 */
export function mendingKey({ verdict, which, by, measures }, act, attributes) {
  const isRecut = verdict === "cut down" || verdict === "recut ends";
  const spoiled = verdict === "gone" ? "Scrap one of these" : "Scrap it and cut another";
  if (!isRecut) return button(spoiled, () => act({ act: "spoil", which: which[0] }), attributes);
  const much = by && measures.length === 1 ? ` by ${by}` : "";
  const down = measures.some((measure) => measure !== "ends") ? [`cut down${much}`] : [];
  const ends = measures.includes("ends") ? ["ends recut"] : [];
  return button(`Done: ${[...down, ...ends].join(", ")}`, () => act({ act: "recut", which }), attributes);
}
