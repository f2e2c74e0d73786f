import { svgElement } from "../element.js";
import { partAt } from "./part-at.js";

/** @import { Area, Parts } from "./picture.d.ts" */

/**
 * What makes the parts of a drawing touchable: a button over all that is drawn of each, for the keyboard and for who
 * can't see it. A finger takes the part that it meant (`partAt`), also beside a narrow one.
 * @param {Area[]} areas in the order in which they are drawn
 * @param {Parts} parts
 */
export const touchableParts = (areas, { labelOf, open }) =>
  [...new Set(areas.map(({ part }) => part))].flatMap((part) => {
    const label = labelOf(part);
    return label ? [touch(part, label, areas, open)] : [];
  });

/**
 * @param {string} part
 * @param {string} label
 * @param {Area[]} areas
 * @param {(part: string) => void} open
 */
function touch(part, label, areas, open) {
  const own = areas.filter((each) => each.part === part);
  /** @param {KeyboardEvent} event */
  function pressed(event) {
    if (event.key !== "Enter" && event.key !== " ") return;
    event.preventDefault();
    open(part);
  }
  /** Of a screen reader, which has no place of its own on it; a finger is on one of its outlines. @param {Event} event */
  const clicked = (event) => event.target === event.currentTarget && open(part);
  return svgElement(
    "g",
    {
      class: "part-touch",
      role: "button",
      tabindex: "0",
      "aria-label": label,
      "aria-pressed": "false",
      "data-part": part,
      onclick: clicked,
      onkeydown: pressed,
    },
    own.map(({ corners }) => svgElement("polygon", { points: corners.map((point) => point.join(",")).join(" ") })),
  );
}

/**
 * Opens the part that a finger meant on a drawing.
 * @param {SVGSVGElement} node
 * @param {Area[]} areas
 * @param {Parts} parts
 */
export function touchedIn(node, areas, { open }) {
  node.addEventListener("click", (event) => {
    const on = event.target instanceof Element ? event.target : null;
    if (on?.closest("[role='button']:not(.part-touch)") || on?.matches(".part-touch")) return;
    const screen = node.getScreenCTM();
    if (!screen) return;
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(screen.inverse());
    const part = partAt([x, y], areas, 1 / screen.a);
    if (part) open(part);
  });
}

/**
 * Shows which part was touched, in every drawing within a node; "" for none.
 * @param {ParentNode} node
 * @param {string} part
 */
export function showTouched(node, part) {
  for (const each of node.querySelectorAll(".part-touch"))
    each.setAttribute("aria-pressed", String(each.getAttribute("data-part") === part));
}
