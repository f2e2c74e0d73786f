import { unbroken } from "./unbroken.js";

/** @import { Part } from "../../python/contract.d.ts" */
/** @import { Shown } from "../widget.d.ts" */

/**
 * Where no small print stands beside it: the text itself says that it was rounded, and which way.
 * @param {Shown} value
 */
export const brief = (value) => unbroken(value.brief ?? value.text ?? "");

/**
 * Length, width and thickness. A thickness without a width must not be read as one.
 * @param {Pick<Part, "length" | "width" | "thickness">} part
 */
export const partSize = ({ length, width, thickness }) =>
  [brief(length), width && brief(width), thickness && `${brief(thickness)}${width ? "" : " thick"}`]
    .filter(Boolean)
    .join(" × ");
