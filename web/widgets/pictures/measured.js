import { element, svgElement } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";

/** @import { Shape } from "../../python/contract.d.ts" */
/** @import { Measured } from "./picture.d.ts" */

/** How high letters are, and how far apart lines, as parts of their size. */
const LETTERS = 0.95;
const LINE = 1.2;

/**
 * The text of each shape as this browser's font writes it, null for none: its `lines`, its class (`look`) and that of
 * its `group`, half its width and height, and the size of its letters. One that is wider than `width` takes several
 * lines, never within a number.
 * @param {Shape[]} shapes
 * @param {string} drawn the class of the drawing
 * @param {number} width that a text may have
 * @returns {(Measured | null)[]}
 */
export function measured(shapes, drawn, width) {
  const host = svgElement("svg", { class: drawn });
  const hidden = element("div", { class: "measuring", "aria-hidden": "true" }, host);
  document.body.append(hidden);
  /**
   * @param {string} words
   * @param {Said} said
   */
  const write = (words, { look, group }) => {
    const node = svgElement("text", { class: look }, words);
    host.append(svgElement("g", { class: group }, node));
    return node;
  };
  const written = shapes.map(saidOf).map((said) => said && { said, node: write(said.words, said) });
  const found = written.map((each) => each && sized(each.said, each.node, width, (words) => write(words, each.said)));
  hidden.remove();
  return found;
}

/** @typedef {Pick<Measured, "words" | "look" | "group">} Said */

/**
 * @param {Shape} shape
 * @returns {Said | null}
 */
function saidOf(shape) {
  if (!("text" in shape) || !shape.text) return null;
  if (shape.kind === "label") return { words: shape.text, look: `label-${shape.role}`, group: null };
  if (shape.kind === "arc") return { words: shape.text, look: "label-note", group: null };
  return { words: shape.text, look: "", group: `dimension dimension-${shape.role}` };
}

/**
 * @param {Said} text
 * @param {SVGTextElement} node all of it in one line
 * @param {number} width
 * @param {(words: string) => SVGTextElement} write
 * @returns {Measured}
 */
function sized(text, node, width, write) {
  const size = Number.parseFloat(getComputedStyle(node).fontSize);
  const whole = node.getComputedTextLength();
  const wide = (words) => write(words).getComputedTextLength();
  const lines = whole > width ? broken(unbroken(text.words), whole, width, wide) : [text.words];
  const across = lines.length === 1 ? whole : Math.max(...lines.map(wide));
  return { ...text, lines, size, half: [across / 2, (size * (LETTERS + LINE * (lines.length - 1))) / 2] };
}

/**
 * As few lines as there may be, and then as even as they can be.
 * @param {string} words
 * @param {number} whole how wide they are in one
 * @param {number} width
 * @param {(words: string) => number} wide
 */
function broken(words, whole, width, wide) {
  const least = inLines(words, width, wide);
  for (let share = 1; share < 1.6; share += 0.1) {
    const even = inLines(words, Math.min(width, (whole / least.length) * share), wide);
    if (even.length === least.length) return even;
  }
  return least;
}

/**
 * @param {string} words
 * @param {number} width
 * @param {(words: string) => number} wide
 */
function inLines(words, width, wide) {
  /** @type {string[]} */
  const lines = [];
  for (const word of words.split(" ")) {
    const longer = `${lines.at(-1)} ${word}`;
    if (lines.length && wide(longer) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
