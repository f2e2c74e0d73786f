// Functions that the tests of accessibility run in the page.

/** What axe-core finds wrong by `tags` and by enhanced contrast, and how many checks it passed. */
async function sawsideAxe(tags) {
  const rules = { "color-contrast-enhanced": { enabled: true } };
  const result = await axe.run({ runOnly: { type: "tag", values: tags }, rules });
  const wrong = result.violations.map((each) => {
    const where = each.nodes.map((node) => node.html.slice(0, 120)).join(" | ");
    return `${each.id}: ${each.help}: ${where}`;
  });
  return { wrong, passed: result.passes.length };
}

/** Whatever can be pressed and is less than 56 px high or 44 px wide. */
function sawsideSmallTargets() {
  const pressed = "main button, main input:not([type=radio]), main select, main label.choice, nav a, .sheet button";
  return [...document.querySelectorAll(pressed)]
    .filter((each) => each.offsetParent)
    .map((each) => [each.textContent || each.name, each.getBoundingClientRect()])
    .filter(([, box]) => box.height < 56 || box.width < 44)
    .map(([name, box]) => `${name}: ${box.width} × ${box.height}`);
}

/** Words that are broken from one line to the next. */
function sawsideBrokenWords() {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const broken = new Set();
  while (walker.nextNode()) {
    const node = walker.currentNode;
    if (!node.parentElement.checkVisibility() || node.parentElement.closest("svg, .heard")) continue;
    for (const { 0: word, index } of node.data.matchAll(/[\p{L}\d]+/gu)) {
      const range = document.createRange();
      range.setStart(node, index);
      range.setEnd(node, index + word.length);
      if (new Set([...range.getClientRects()].map((box) => Math.round(box.top))).size > 1) broken.add(word);
    }
  }
  return [...broken];
}
