/** The keys, row by row; a length has a second layer of rarer signs and acts behind `more`. */

/** @param {string} text */
const keys = (text) => text.trim().split(/\s+/);

/**
 * A key that writes something else than its label.
 * @type {Record<string, string>}
 */
export const WRITES = {
  "+": " + ",
  "−": " − ",
  "×": " × ",
  "÷": " ÷ ",
  of: " of ",
  space: " ",
  mm: " mm",
  cm: " cm",
  ft: " ft",
  yd: " yd",
  m: " m",
};

/** The keys after which digits or signs are due again. */
export const ENDING = new Set(["half", "double", "kerf", "project", "again", "Enter"]);

const NUMBERS = "7 8 9 ⌫ +  4 5 6 / −  1 2 3 space ×";

/** @satisfies {Record<string, {columns: number, layers: string[][]}>} */
export const LAYOUTS = {
  "pad-in": {
    columns: 5,
    layers: [
      keys(`${NUMBERS}  more 0 ′ again Enter`),
      keys("‹ › mm ⌫ ÷  half double ″ cm (  of kerf . project )  123 0 ′ again Enter"),
    ],
  },
  "pad-mm": {
    columns: 5,
    layers: [
      keys(`${NUMBERS}  more 0 . again Enter`),
      keys("‹ › ″ ⌫ ÷  half double ′ cm (  of kerf m project )  123 0 . again Enter"),
    ],
  },
  "field-in": {
    columns: 5,
    layers: [keys(`${NUMBERS}  more 0 ′ . Next`), keys("‹ › mm ⌫ ÷  ″ cm m ft (  of yd / space )  123 0 ′ . Next")],
  },
  "field-mm": {
    columns: 5,
    layers: [keys(`${NUMBERS}  more 0 . ″ Next`), keys("‹ › ″ ⌫ ÷  ′ cm m ft (  of yd mm space )  123 0 . ″ Next")],
  },
  angle: { columns: 4, layers: [keys("7 8 9 ⌫  4 5 6 /  1 2 3 space  . 0 ° Next")] },
  number: { columns: 4, layers: [keys("7 8 9 ⌫  4 5 6 /  1 2 3 space  . 0 − Next")] },
  count: { columns: 4, layers: [keys("7 8 9 ⌫  4 5 6 0  1 2 3 Next")] },
};
