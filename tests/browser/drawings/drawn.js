// What of a drawing can't be read: text cut off by its edge, crossed by a line or lying on other text. Drawings are
// measured as they are on the screen, in the units of their viewBox. A text is where its letters are: the box that
// the browser gives it without the room above and below. No line may enter it, its own dimension's
// neither: that one is interrupted by it.
export function faultsOf(svg) {
  const view = svg.viewBox.baseVal;
  const texts = [...svg.querySelectorAll("text")].filter((text) => text.textContent.trim());
  const boxes = texts.map((text) => ({ text, ...lettersOf(text) }));
  const faults = [];
  for (const box of boxes) {
    const said = JSON.stringify(box.text.textContent);
    if (box.left < view.x || box.right > view.x + view.width || box.top < view.y || box.bottom > view.y + view.height)
      faults.push(`${said} is cut off`);
    for (const other of boxes)
      if (other !== box && boxes.indexOf(other) > boxes.indexOf(box) && isOn(box, other))
        faults.push(`${said} lies on ${JSON.stringify(other.text.textContent)}`);
    const crossing = linesOf(svg).filter(({ node, ends }) => enters(ends, box));
    for (const name of new Set(crossing.map(({ node }) => node.getAttribute("class")))) faults.push(`${said} is crossed by ${name}`);
  }
  return faults;
}

function lettersOf(text) {
  const { x, y, width, height } = text.getBBox();
  const lines = Math.max(1, text.querySelectorAll("tspan").length);
  const spare = (height / lines) * 0.15;
  return { left: x, right: x + width, top: y + spare, bottom: y + height - spare };
}

const isOn = (one, other) =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;

/** Every straight stroke that is drawn, a curve in short ones. */
function linesOf(svg) {
  const found = [];
  for (const node of svg.querySelectorAll("polygon, polyline, path, circle")) {
    const { stroke, fill } = getComputedStyle(node);
    const isArrow = node.classList.contains("dimension-arrow");
    if (stroke === "none" && !(isArrow && fill !== "none")) continue;
    const points = pointsOf(node);
    points.slice(1).forEach((point, at) => found.push({ node, ends: [points[at], point] }));
  }
  return found;
}

function pointsOf(node) {
  if (node.points) {
    const points = [...node.points].map(({ x, y }) => [x, y]);
    return node.tagName === "polygon" ? [...points, points[0]] : points;
  }
  const long = node.getTotalLength();
  return Array.from({ length: 33 }, (_, step) => node.getPointAtLength((long * step) / 32)).map(({ x, y }) => [x, y]);
}

/** Whether a stroke comes into a box (Liang and Barsky's clipping). */
function enters([[x0, y0], [x1, y1]], { left, right, top, bottom }) {
  let [from, to] = [0, 1];
  for (const [way, room] of [
    [x0 - x1, x0 - left],
    [x1 - x0, right - x0],
    [y0 - y1, y0 - top],
    [y1 - y0, bottom - y0],
  ]) {
    if (way === 0 && room < 0) return false;
    if (way < 0) from = Math.max(from, room / way);
    if (way > 0) to = Math.min(to, room / way);
  }
  return from < to;
}
