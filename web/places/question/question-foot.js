import { button, element } from "../../widgets/element.js";
import { inUnit } from "../forms/units.js";

/** @import { Line, Reckoner } from "../../python/contract.d.ts" */
/** @import { Typed } from "../../widgets/widget.d.ts" */

/**
 * What fills in all the fields at once, where there is no answer that has what clears them beside it.
 * @param {object} how
 * @param {Reckoner} how.declared
 * @param {Line} [how.entry]
 * @param {() => string} how.unit what a bare number means
 * @param {(values: Record<string, Typed>) => void} how.fill
 * @param {() => void} how.clear
 */
export const questionFoot = ({ declared, entry, unit, fill, clear }) =>
  element(
    "div",
    { class: "button-row asked-foot" },
    button("Clear", clear),
    button("Try an example", () => fill(inUnit(declared, "example", unit())), { name: "example" }),
    entry ? button("Undo my edits", () => fill(entry.values)) : null,
  );
