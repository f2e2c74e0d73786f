// Functions that the tests of accessibility run in the page.

/** What axe-core finds wrong by `tags` and by enhanced contrast, and how many checks it passed. */
async function sawsideAxe(tags) {
  const rules = { "color-contrast-enhanced": { enabled: true } };
  const result = await axe.run({ runOnly: { type: "tag", values: tags }, rules });
  for (const each of result.violations) if (each.id === "target-size") each.nodes = await sawsideStillSmall(each.nodes);
  const violations = result.violations.filter((each) => each.nodes.length > 0);
  const wrong = violations.map((each) => {
    const where = each.nodes.map((node) => node.html.slice(0, 120)).join(" | ");
    return `${each.id}: ${each.help}: ${where}`;
  });
  return { wrong, passed: result.passes.length };
}

/** Those of axe-core's too small targets that are so too where nothing that stays in sight, as the bar, lies over them. */
async function sawsideStillSmall(nodes) {
  const small = [];
  for (const node of nodes) {
    const target = document.querySelector(node.target[0]);
    target.scrollIntoView({ block: "center" });
    const again = await axe.run(target, { runOnly: { type: "rule", values: ["target-size"] } });
    if (again.violations.length > 0) small.push(node);
  }
  document.querySelector("#place").scrollTop = 0;
  return small;
}

/** Whatever can be pressed and is less than `least` px high or 44 px wide. */
function sawsideSmallTargets(least = 56) {
  const inPlace = "main button, main input:not([type=radio]), main select, main label.choice";
  const around = "nav a, .sheet button, .notice button, dialog button";
  return [...document.querySelectorAll(`${inPlace}, ${around}`)]
    .filter((each) => each.checkVisibility())
    .map((each) => [each.textContent || each.name, each.getBoundingClientRect()])
    .filter(([, box]) => box.height < least || box.width < 44)
    .map(([name, box]) => `${name}: ${box.width} × ${box.height}`);
}

/** What of `selectors` is not on the screen, or only in part: cut off by what scrolls it, or covered. */
function sawsideOutOfSight(selectors) {
  const seen = (node) => {
    const box = node.getBoundingClientRect();
    const room = (node.closest(".saw-body") ?? document.querySelector(".saw")).getBoundingClientRect();
    const [left, right] = [Math.max(0, room.left), Math.min(innerWidth, room.right)];
    const isInside = box.top >= room.top - 1 && box.bottom <= room.bottom + 1 && room.bottom <= innerHeight;
    const isBeside = box.left >= left - 1 && box.right <= right + 1 && node.scrollWidth <= node.clientWidth + 1;
    return box.height > 0 && isInside && (node instanceof SVGElement || isBeside);
  };
  return selectors.filter((selector) => {
    const nodes = [...document.querySelectorAll(selector)].filter((node) => node.checkVisibility());
    return nodes.length === 0 || !nodes.every(seen);
  });
}

/** Pairs of things that stand one over the other; what is scrolled away stands nowhere. */
function sawsideOverlaps() {
  const body = document.querySelector(".saw-body");
  const foot = getComputedStyle(body).overflowY === "visible" ? Infinity : body.getBoundingClientRect().bottom;
  const boxOf = (node) => {
    const { left, right, top, bottom } = node.getBoundingClientRect();
    return { left, right, top, bottom: body.contains(node) ? Math.min(bottom, foot) : bottom };
  };
  const things = [...document.querySelectorAll(".saw :is(h2, p, dt, dd, svg, button, label, legend, .fraction-seen)")]
    .filter((node) => node.checkVisibility())
    .map((node) => [node, boxOf(node)]);
  const overlaps = (one, other) =>
    Math.min(one.right, other.right) - Math.max(one.left, other.left) > 1 &&
    Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > 1;
  return things.flatMap(([node, box], at) =>
    things
      .slice(at + 1)
      .filter(([other, its]) => !node.contains(other) && overlaps(box, its))
      .map(([other]) => `${node.textContent || node.tagName} / ${other.textContent || other.tagName}`),
  );
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
