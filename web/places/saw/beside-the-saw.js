import { keepAwake } from "../../widgets/device/keep-awake.js";

/**
 * What holds as long as one stands at the saw: the screen stays on, the light that was chosen.
 * @param {(sentence: string) => void} say what the browser can't do
 * @returns {{light(), leave()}}
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
