import { element } from "../element.js";
import { key } from "./key.js";
import { stripPicture } from "./strip-picture.js";
import { stripSlider } from "./strip-slider.js";

/** @import { Strip, StripMark } from "../../python/contract.d.ts" */
/** @import { Keys } from "../widget.d.ts" */

/** Places closer than this are one. */
const ONE_PLACE = 1e-9;

/**
 * An inch drawn large between two keys: touch the mark that you see on your tape, and slide to adjust, with the marks
 * grown under the thumb; or go one mark on or back by the keys beside it, or the arrow keys. The core sends the marks.
 * @param {Strip} strip
 * @param {ReturnType<typeof import("./mark-before.js").markBefore>} field
 * @returns {Keys}
 */
export function inchStrip({ marks, words, unit }, field) {
  // The mark of the next whole number is drawn and can't be written: it is no place to stand on.
  const writing = marks.filter(({ text }) => text !== null);
  const last = writing.length - 1;
  const part = () => partOf(field.text("step"), writing, unit);
  const picture = stripPicture(marks);
  const slider = stripSlider(picture, {
    "aria-label": words,
    "aria-valuemax": last,
    apart: marks.length - 1,
    onfocus: draw,
    onTouch: (touched) => pick(nearestTo(touched, writing), "touch"),
    onStep: step,
  });
  const less = key("‹", () => step(-1));
  const more = key("›", () => step(1));

  function draw() {
    const at = part();
    const now = nearestTo(at, writing);
    const text = field.text("step");
    const isOnMark = Math.abs(writing[now].at - at) < ONE_PLACE;
    // What lies between two marks is shown there, by its own name: it is neither of them.
    const shown = isOnMark ? writing[now] : { ...writing[now], at, text };
    picture.show(text && at < 1 ? shown : null);
    slider.setAttribute("aria-valuenow", String(now));
    slider.setAttribute("aria-valuetext", isOnMark ? writing[now].words : text);
    less.disabled = at <= writing[0].at;
    more.disabled = at >= writing[last].at;
  }

  /**
   * @param {number} next
   * @param {"touch" | "step"} how
   */
  function pick(next, how) {
    if (writing[next].text !== field.text(how)) field.write(writing[next], how);
    draw();
  }

  /**
   * One mark, or several, on or back; from what lies between two marks the first is the one on that side.
   * @param {number} by
   */
  function step(by) {
    const at = part();
    const from = by > 0 ? writing.findLastIndex((mark) => mark.at <= at) : writing.findIndex((mark) => mark.at >= at);
    pick(Math.min(last, Math.max(0, (from < 0 ? last + 1 : from) + by)), "step");
  }

  draw();
  return { node: element("div", { class: "strip-row" }, less, slider, more), refresh: draw };
}

/**
 * Which mark is nearest to a place on the strip.
 * @param {number} part from 0 at the left to 1 at the right
 * @param {StripMark[]} marks
 */
function nearestTo(part, marks) {
  const away = marks.map(({ at }) => Math.abs(at - part));
  return away.indexOf(Math.min(...away));
}

/**
 * The place on the strip of a text: that of its mark, or, where it is on none, of its fraction or decimals.
 * @param {string} text
 * @param {StripMark[]} marks
 * @param {string} unit
 */
function partOf(text, marks, unit) {
  const mark = marks.find((each) => each.text === text);
  const [over, under = unit === "mm" ? 10 : 1] = text.split("/").map(Number);
  return mark?.at ?? Math.min(1, over / under || 0);
}
