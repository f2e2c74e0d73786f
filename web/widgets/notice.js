import { button, element } from "./element.js";

const SECONDS = 10;

/** Say a sentence at the head of the screen, with one thing that can be done about it. */
export function notice(host, sentence, action = null) {
  const node = element("div", { class: "notice" }, element("p", {}, sentence));
  const close = () => node.remove();
  if (action) {
    const act = () => {
      close();
      action.run();
    };
    node.append(button(action.label, act, { class: "button notice-act" }));
  }
  node.append(button("✕", close, { class: "button notice-close", "aria-label": "Close the message" }));
  host.replaceChildren(node);
  if (!action?.stays) setTimeout(close, SECONDS * 1000);
}
