/** @import { Ends, Piece } from "../../python/contract.d.ts" */

/** A voice that is on the device itself, so that nothing is sent anywhere; none where there is none. */
const voice = () =>
  globalThis.speechSynthesis?.getVoices().find((each) => each.localService && each.lang.startsWith("en"));

/** Whether something can be read aloud here; voices may come late: see `whenVoicesCome`. */
export const canRead = () => Boolean(voice());

/** @param {() => void} act */
export const whenVoicesCome = (act) => globalThis.speechSynthesis?.addEventListener("voiceschanged", act);

/**
 * Read `text` aloud, in the place of what is being read.
 * @param {string} text
 */
export function readAloud(text) {
  const own = voice();
  if (!own) return;
  const spoken = new SpeechSynthesisUtterance(text);
  spoken.voice = own;
  spoken.lang = own.lang;
  speechSynthesis.cancel();
  speechSynthesis.speak(spoken);
}

/**
 * A piece as one says it over the saw.
 * @param {Pick<Piece, "name" | "length" | "length_along" | "ends" | "left">} piece
 */
export const pieceInWords = ({ name, length, length_along: along, ends, left }) =>
  [name, length.words, along, ends ? endsInWords(ends) : null, `${left} to cut`].filter(Boolean).join(". ");

/** @param {Ends} ends */
function endsInWords({ left, right }) {
  const said = ({ cut, angle }) => (angle ? `${cut}, ${angle}` : cut);
  return said(left) === said(right) ? `both ends ${said(left)}` : `left end ${said(left)}, right end ${said(right)}`;
}
