import { canRead, pieceInWords, readAloud, whenVoicesCome } from "../../widgets/device/aloud.js";

/**
 * Reads the cut that is shown aloud, once, where that is switched on and a voice is on the device.
 * @param {() => void} onVoices called when the browser has found its voices
 */
export function speaker(app, onVoices) {
  let last = "";
  whenVoicesCome(onVoices);
  return (piece) => {
    const text = pieceInWords(piece);
    if (!app.state.get().saw.aloud) last = "";
    else if (text !== last && piece.left > 0 && canRead()) {
      last = text;
      readAloud(text);
    }
  };
}
