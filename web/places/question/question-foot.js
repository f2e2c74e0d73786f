import { button, element } from "../../widgets/element.js";
import { inUnit } from "../forms/units.js";

/** @import { Line, Reckoner } from "../../python/contract.d.ts" */
/** @import { Typed } from "../../widgets/widget.d.ts" */

/**
 * What fills in all the fields at once.
 * @param {object} how
 * @param {Reckoner} how.declared
 * @param {Line} [how.entry]
 * @param {() => string} how.unit what a bare number means
 * @param {(values: Record<string, Typed>) => void} how.fill
 */
export const questionFoot = ({ declared, entry, unit, fill }) =>
  element(
    "div",
    { class: "button-row asked-foot" },
    button("Clear", () => fill({})),
    button("Try an example", () => fill(inUnit(declared, "example", unit())), { name: "example" }),
    entry ? button("Undo my edits", () => fill(entry.values)) : null,
  );
