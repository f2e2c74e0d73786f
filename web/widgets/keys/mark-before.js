import { beforeCaret, writeMark } from "./typing.js";

/** @import { Strip, StripMark } from "../../python/contract.d.ts" */

/** A fraction, with the space before it, or decimals: less than an inch. */
const BELOW_AN_INCH = /(?:^|(?<=\d) +|(?<=[^\d ]) *)\d+\/\d+$|\.\d+$/;

/**
 * What of the text before the caret is less than the strip is long, and so has its place on it. In millimeters a touch
 * writes the last digit behind the others; a step goes on from that.
 * @type {Record<string, {touch: RegExp, step: RegExp}>}
 */
const BELOW = {
  in: { touch: BELOW_AN_INCH, step: BELOW_AN_INCH },
  mm: { touch: /\d\.\d+$/, step: /\d(?:\.\d+)?$/ },
};

/**
 * The mark of the strip that stands before the caret of `target()`, and the way to write another one in its place.
 * @param {Strip} strip
 * @param {() => HTMLInputElement} target
 * @param {() => void} onMark hears that one was written
 */
export function markBefore(strip, target, onMark) {
  let last = { value: "", written: "" };

  /** @param {"touch" | "step"} how */
  function standing(how) {
    const field = target();
    if (last.written && field.value === last.value) return last.written;
    return beforeCaret(field).match(BELOW[strip.unit][how])?.[0] ?? "";
  }

  return {
    /**
     * Without the space before it; "" where none stands there.
     * @param {"touch" | "step"} how
     */
    text: (how) => standing(how).trim(),
    /**
     * @param {StripMark} mark
     * @param {"touch" | "step"} how
     */
    write({ text }, how) {
      const field = target();
      const { separator } = strip;
      const written = writeMark(field, { text: text ?? "", separator, instead: standing(how) });
      last = { value: field.value, written };
      onMark();
    },
  };
}
