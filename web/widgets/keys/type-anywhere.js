/**
 * What is typed on a hardware keyboard, or pasted, while nothing else has the focus goes into
 * `input`, for as long as it is on the page.
 * @param {HTMLInputElement} input
 */
export function typeAnywhere(input) {
  /** @param {KeyboardEvent} event */
  function pressed(event) {
    if (!input.isConnected) return document.removeEventListener("keydown", pressed);
    const { target } = event;
    const isFree = target === document.body || (target instanceof Element && target.matches("main"));
    const isPaste = (event.ctrlKey || event.metaKey) && event.key === "v";
    const isText = event.key.length === 1 && !event.ctrlKey && !event.metaKey && !event.altKey;
    if (isFree && (isText || isPaste)) input.focus();
  }
  document.addEventListener("keydown", pressed);
}
