// What is seen of an answered question before anything is scrolled. Run as a function in its page.
() => {
  const place = document.querySelector("#place");
  place.scrollTop = 0;
  const answer = document.querySelector("output[name=result] .main-answer");
  const box = answer.getBoundingClientRect();
  const room = place.getBoundingClientRect();
  const at = document.elementFromPoint((box.left + box.right) / 2, (box.top + box.bottom) / 2);
  const isWhole = box.height > 0 && box.top >= room.top && box.bottom <= Math.min(room.bottom, innerHeight);
  // Buttons of one choice are one control: one is pressed.
  const groups = new Set();
  const isFirstOfGroup = ({ type, name }) => type !== "radio" || (!groups.has(name) && groups.add(name));
  const pressed = 'a[href], button, input, select, textarea, summary, [tabindex="0"]';
  const before = [...place.querySelectorAll(pressed)]
    .filter((each) => each.checkVisibility({ visibilityProperty: true }))
    .filter((each) => each.compareDocumentPosition(answer) & Node.DOCUMENT_POSITION_FOLLOWING)
    .filter(isFirstOfGroup);
  const words = document.querySelector("output[name=result]").innerText.split(/\s+/).filter(Boolean);
  return {
    in_sight: isWhole && answer.contains(at),
    screens: place.scrollHeight / place.clientHeight,
    controls: before.length,
    words: words.length,
  };
};
