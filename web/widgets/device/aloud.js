/** A voice that is on the device itself, so that nothing is sent anywhere; none where there is none. */
const voice = () =>
  globalThis.speechSynthesis?.getVoices().find((each) => each.localService && each.lang.startsWith("en"));

/** Whether something can be read aloud here; voices may come late: see `whenVoicesCome`. */
export const canRead = () => Boolean(voice());

export const whenVoicesCome = (act) => globalThis.speechSynthesis?.addEventListener("voiceschanged", act);

/** Read `text` aloud, in the place of what is being read. */
export function readAloud(text) {
  const spoken = new SpeechSynthesisUtterance(text);
  spoken.voice = voice();
  spoken.lang = spoken.voice.lang;
  speechSynthesis.cancel();
  speechSynthesis.speak(spoken);
}

/** A piece as one says it over the saw. */
export const pieceInWords = ({ name, length, length_along: along, ends, left }) =>
  [name, length.words, along, ends ? endsInWords(ends) : null, `${left} to cut`].filter(Boolean).join(". ");

function endsInWords({ left, right }) {
  const said = ({ cut, angle }) => (angle ? `${cut}, ${angle}` : cut);
  return said(left) === said(right) ? `both ends ${said(left)}` : `left end ${said(left)}, right end ${said(right)}`;
}
