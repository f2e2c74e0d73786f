/**
 * The keys, row by row. What a length seldom needs stands on a second layer behind `more`; the next key leads back to
 * the first one, but ⌫, which may be due several times.
 */

/** A place without a key. */
export const NONE = "_";

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

/**
 * A key of the pad that is another one while nothing is typed, when its own would write nothing of use.
 * @type {Record<string, string>}
 */
export const WHILE_BLANK = { space: "again" };

const NUMBERS = "7 8 9 ⌫ +  4 5 6 / −  1 2 3 space ×";
const RARE = "′ ″ of ⌫ ÷  mm cm m ft (  yd _ _ space )";

/** @satisfies {Record<string, {columns: number, layers: string[][]}>} */
export const LAYOUTS = {
  pad: {
    columns: 5,
    layers: [
      keys(`${NUMBERS}  more 0 . project Enter`),
      keys("half double kerf ⌫ ÷  ′ ″ of again (  mm cm m ft )  123 0 . space Enter"),
    ],
  },
  "field-in": { columns: 5, layers: [keys(`${NUMBERS}  more 0 . ′ Next`), keys(`${RARE}  123 0 . / Next`)] },
  "field-mm": { columns: 5, layers: [keys(`${NUMBERS}  more 0 . ″ Next`), keys(`${RARE}  123 0 . / Next`)] },
  angle: { columns: 4, layers: [keys("7 8 9 ⌫  4 5 6 /  1 2 3 space  . 0 ° Next")] },
  number: { columns: 4, layers: [keys("7 8 9 ⌫  4 5 6 /  1 2 3 space  . 0 − Next")] },
  count: { columns: 4, layers: [keys("7 8 9 ⌫  4 5 6 0  1 2 3 Next")] },
};
