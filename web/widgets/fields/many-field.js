import { button, element, firstIn, freshId } from "../element.js";
import { fieldError } from "./field-error.js";
import { helpLine, helpOnFocus } from "./help-on-focus.js";
import { rowList } from "./row-list.js";

/** @import { NameUsed } from "../../python/contract.d.ts" */
/** @import { DrawnField, Echo, FieldWidget, RowsOptions, Typed, Wrong } from "../widget.d.ts" */

/** @typedef {string | Record<string, Typed>} Row what is typed into one: a text by itself, or several */

/** The one field of a row of a list. */
const ITEM = "item";

/**
 * A list of lengths, or repeated rows of fields (the layers of a molding): each row is a small
 * form of its own; rows are added and taken away with buttons. A list is rows of one field.
 * @param {RowsOptions<Row[]>} options
 * @returns {FieldWidget<Row[]>}
 */
export function manyField({ field, value, onInput, onFocus, form }) {
  const { fields, least, wrap, unwrap, placeOf } = rowsOf(field);
  const wrong = fieldError();
  const add = button(`Add ${(field.row_label ?? "one").toLowerCase()}`, added, { class: "button add-row" });
  const rows = rowList({
    label: field.row_label ?? field.label,
    isLine: field.kind === "lengths",
    least,
    draw: (start) => form({ fields, values: start, onInput: tell, onFocus }),
    onCount: (count) => {
      add.hidden = count >= (field.most_rows ?? Infinity);
    },
    onTakenAway() {
      tell();
      rows.node.dispatchEvent(new Event("change", { bubbles: true }));
      add.focus();
    },
  });
  const values = () => rows.all().map((row) => unwrap(row.values()));
  const tell = () => onInput(values());

  /** Who adds a row goes on typing in it: the keypad goes along. */
  function added() {
    const row = rows.append({});
    tell();
    firstIn(row.node, "input[type=text], button, input")?.focus();
  }

  /**
   * A row that was just added, and is as good as none, stays where there are none.
   * @param {Row[]} typed
   */
  function set(typed) {
    const isNone = !typed?.length && rows.all().length > least && rows.all().every(rows.isUntouched);
    if (isNone) return;
    rows.set((typed?.length ? typed : Array.from({ length: least }, () => unwrap({}))).map(wrap));
  }

  /**
   * Next in the last field goes on to a row more; one that was left as it came is taken away again.
   * @param {Event} event
   */
  function goesOn(event) {
    const last = rows.all().at(-1);
    const texts = last
      ? [...last.box.querySelectorAll("input[type=text]")].filter((each) => each.checkVisibility())
      : [];
    if (!last || event.target !== texts.at(-1)) return;
    if (!rows.isUntouched(last)) {
      if (add.hidden) return;
      event.preventDefault();
      return added();
    }
    if (rows.all().length <= least) return;
    rows.leaveOut(last);
    tell();
  }

  /**
   * Each row hears of its own errors, and of the names that stand in it; what is wrong with the whole is said below.
   * @param {{errors?: Wrong[], echo?: Echo}} told
   */
  function show({ errors = [], echo }) {
    const names = (typeof echo === "object" && echo.names) || [];
    rows.all().forEach((row, at) => {
      const own = errors.filter((error) => error.row === at);
      row.show({
        errors: own.map((error) => ({ ...error, field: placeOf(error) })),
        echoes: linkedIn(names, at),
      });
    });
    wrong.show(errors.find((error) => error.row === undefined));
  }

  /**
   * For each field of a row the names of the project that stand in it.
   * @param {NameUsed[]} names
   * @param {number} at
   */
  function linkedIn(names, at) {
    /** @type {Record<string, {text: string, names: NameUsed[]}>} */
    const echoes = {};
    for (const name of names)
      for (const { part } of (name.rows ?? []).filter(({ row }) => row === at)) {
        const key = placeOf({ part }) ?? "";
        echoes[key] = { text: "", names: [...(echoes[key]?.names ?? []), name] };
      }
    return echoes;
  }

  set(value);
  const id = freshId("many");
  const help = helpLine(field.help, `${id}-help`);
  const legend = element("legend", {}, field.label);
  const node = element(
    "fieldset",
    { class: "field field-many", "aria-describedby": help?.id, "ongo-next": goesOn },
    legend,
    help,
    rows.node,
    add,
    wrong.node,
  );
  helpOnFocus(node, help);
  return {
    node,
    line: rows.node,
    value: values,
    set,
    show,
    rename(text) {
      legend.textContent = text;
    },
    focus: () => firstIn(node, "input[type=text], button")?.focus(),
  };
}

/**
 * How rows are drawn as forms: of which fields, how many there are at the least, how what is typed into one becomes the
 * values of its form and back, and which field an error of a row is about. A row is `any`: a draft of an older version
 * may hold anything.
 * @param {DrawnField} field
 */
function rowsOf(field) {
  if (field.kind !== "lengths")
    return {
      fields: field.fields ?? [],
      least: field.may_be_blank ? 0 : 1,
      wrap: (/** @type {any} */ row) => row,
      unwrap: (/** @type {Record<string, any>} */ typed) => typed,
      placeOf: (/** @type {{part?: string | null}} */ { part }) => part ?? undefined,
    };
  // What the list hangs on stands outside of its rows.
  /** @type {DrawnField} */
  const item = {
    ...field,
    kind: "length",
    key: ITEM,
    label: field.row_label ?? field.label,
    help: null,
    shown_when: [],
  };
  return {
    fields: [item],
    least: 1,
    wrap: (/** @type {any} */ text) => ({ [ITEM]: text }),
    unwrap: (/** @type {Record<string, any>} */ typed) => typed[ITEM] ?? "",
    placeOf: (/** @type {{part?: string | null}} */ _place) => ITEM,
  };
}
