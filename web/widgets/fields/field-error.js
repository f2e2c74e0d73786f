import { element } from "../element.js";
import { unbroken } from "../numbers/unbroken.js";

/** @import { FieldError } from "../widget.d.ts" */

/**
 * What is wrong with a field and how to mend it, in the core's words; empty when all is well. While
 * a field is being typed in, it is said quietly.
 * @param {string} [id]
 * @returns {FieldError}
 */
export function fieldError(id) {
  const node = element("p", { class: "error", id });
  return {
    node,
    show(error, { quiet = false } = {}) {
      node.classList.toggle("quiet", quiet);
      node.replaceChildren(
        ...(error
          ? [element("strong", {}, unbroken(error.message)), " ", element("span", {}, unbroken(error.remedy ?? ""))]
          : []),
      );
    },
  };
}
