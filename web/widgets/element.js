/** Make elements. Text is only ever set as text, never as HTML. */

const SVG = "http://www.w3.org/2000/svg";

function fill(node, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined || value === null || value === false) continue;
    if (name.startsWith("on")) node.addEventListener(name.slice(2), value);
    else if (name === "value") node.value = value;
    else node.setAttribute(name, value === true ? "" : String(value));
  }
  node.append(...children.flat(2).filter((child) => child !== null && child !== undefined));
  return node;
}

/** `element("button", {class: "key", onclick: press}, "7")` */
export const element = (tag, attributes = {}, ...children) => fill(document.createElement(tag), attributes, children);

/** The same for SVG. */
export const svgElement = (tag, attributes = {}, ...children) =>
  fill(document.createElementNS(SVG, tag), attributes, children);

/** A push button; `kind` names its style. */
export const button = (label, onclick, attributes = {}) =>
  element("button", { type: "button", class: "button", onclick, ...attributes }, label);

let made = 0;
/** An id that no other element on the page has. */
export function freshId(stem) {
  made += 1;
  return `${stem}-${made}`;
}
