import { canRead, pieceInWords, readAloud, whenVoicesCome } from "../../widgets/device/aloud.js";
import { keepAwake } from "../../widgets/device/keep-awake.js";

/** @import { Piece } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * What holds as long as one stands at the saw: the screen stays on, the light that was chosen.
 * @param {App} app
 * @param {(sentence: string) => void} say what the browser can't do
 */
export function besideTheSaw(app, say) {
  const awake = keepAwake(say);
  const light = () => {
    document.body.dataset.light = app.state.get().saw.light;
  };
  light();
  return {
    light,
    leave() {
      awake.leave();
      document.body.dataset.light = "";
    },
  };
}

/**
 * Reads the cut that is shown aloud, once, where that is switched on and a voice is on the device.
 * @param {App} app
 * @param {() => void} onVoices called when the browser has found its voices
 */
export function speaker(app, onVoices) {
  let last = "";
  whenVoicesCome(onVoices);
  return (/** @type {Piece} */ piece) => {
    const text = pieceInWords(piece);
    if (!app.state.get().saw.aloud) last = "";
    else if (text !== last && piece.left > 0 && canRead()) {
      last = text;
      readAloud(text);
    }
  };
}
