/**
 * What is typed on a hardware keyboard, or pasted, while nothing else has the focus goes into
 * `input`, for as long as it is on the page.
 */
export function typeAnywhere(input) {
  function pressed(event) {
    if (!input.isConnected) return document.removeEventListener("keydown", pressed);
    const isFree = event.target === document.body || event.target.matches("main");
    const isPaste = (event.ctrlKey || event.metaKey) && event.key === "v";
    const isText = event.key.length === 1 && !event.ctrlKey && !event.metaKey && !event.altKey;
    if (isFree && (isText || isPaste)) input.focus();
  }
  document.addEventListener("keydown", pressed);
}
