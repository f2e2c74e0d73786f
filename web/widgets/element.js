/** Make elements. Text is only ever set as text, never as HTML. */

/** @import { Children } from "./widget.d.ts" */

/** @typedef {Record<string, any>} Attributes by their names; "on" and the name of an event has what hears of it */

const SVG = "http://www.w3.org/2000/svg";

/**
 * @template {Element} Made
 * @param {Made} node
 * @param {Attributes} attributes
 * @param {Children[]} children
 */
function fill(node, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined || value === null || value === false) continue;
    if (name.startsWith("on")) node.addEventListener(name.slice(2), value);
    else if (name === "value") Object.assign(node, { value });
    else node.setAttribute(name, value === true ? "" : String(value));
  }
  for (const child of children.flat(2)) if (child !== null && child !== undefined) node.append(child);
  return node;
}

/**
 * `element("button", {class: "key", onclick: press}, "7")`
 * @template {keyof HTMLElementTagNameMap} Tag
 * @param {Tag} tag
 * @param {Attributes} [attributes]
 * @param {Children[]} children
 * @returns {HTMLElementTagNameMap[Tag]}
 */
export const element = (tag, attributes = {}, ...children) => fill(document.createElement(tag), attributes, children);

/**
 * The same for SVG.
 * @template {keyof SVGElementTagNameMap} Tag
 * @param {Tag} tag
 * @param {Attributes} [attributes]
 * @param {Children[]} children
 * @returns {SVGElementTagNameMap[Tag]}
 */
export const svgElement = (tag, attributes = {}, ...children) =>
  fill(document.createElementNS(SVG, tag), attributes, children);

/**
 * A push button.
 * @param {string} label
 * @param {(event: MouseEvent) => unknown} onclick
 * @param {Attributes} [attributes]
 */
export const button = (label, onclick, attributes = {}) =>
  element("button", { type: "button", class: "button", onclick, ...attributes }, label);

/**
 * Those of some that are there.
 * @template Made
 * @param {(Made | null | undefined)[]} some
 * @returns {Made[]}
 */
export const present = (some) => some.filter((each) => each !== null && each !== undefined);

/**
 * The element of index.html that has an id.
 * @param {string} id
 */
export function byId(id) {
  const found = document.getElementById(id);
  if (!found) throw new Error(`index.html has no ${id}.`);
  return found;
}

/**
 * The first HTML element within a node that a selector finds; null where there is none.
 * @param {ParentNode} node
 * @param {string} selector
 */
export function firstIn(node, selector) {
  const found = node.querySelector(selector);
  return found instanceof HTMLElement ? found : null;
}

let made = 0;
/**
 * An id that no other element on the page has.
 * @param {string} stem
 */
export function freshId(stem) {
  made += 1;
  return `${stem}-${made}`;
}
