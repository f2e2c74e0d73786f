import { button } from "../element.js";

/** @import { DrawnField, FieldWidget, Typed } from "../widget.d.ts" */

/**
 * @typedef {object} InForm what the form does for them
 * @property {Record<string, Typed>} current what stands in the fields now
 * @property {(key: string) => FieldWidget<any>} widgetOf
 * @property {(key: string, value: Typed) => void} put
 * @property {(field: DrawnField) => boolean} isAsked whether the choices before show it
 * @property {() => void} changed
 */

/**
 * Fields that are as a rule filled in alike, as both ends of a piece: asked for once until they are made different. What
 * is typed into one is then typed into its twin.
 * @param {DrawnField[]} fields
 * @param {InForm} form
 */
export function askedOnce(fields, form) {
  const kinds = new Set(fields.flatMap(({ twin }) => twin?.apart ?? []));
  const sets = [...kinds].map((kind) =>
    setOf(
      fields.filter(({ twin }) => twin?.apart === kind),
      form,
    ),
  );
  const holding = (/** @type {string} */ key) => sets.find((each) => each.holds(key));
  return {
    /** After values came from elsewhere: those that differ are asked for apart. */
    settle() {
      for (const each of sets) each.settle();
    },
    /** After something was typed into a field. */
    typed: (/** @type {string} */ key) => holding(key)?.typed(),
    /** The key of the field that asks for this one now: its own, or that of the twin that stands for both. */
    askedBy: (/** @type {string} */ key) => sets.flatMap((each) => each.askedBy(key) ?? [])[0] ?? key,
    /** A field as it is called now. */
    named: (/** @type {DrawnField} */ field) => {
      const isOfBoth = field.twin && holding(field.key)?.isOne();
      return isOfBoth && field.twin ? { ...field, label: field.twin.label } : field;
    },
  };
}

/**
 * @param {DrawnField[]} fields those of one set that stand for both, each with its twin; the key that makes them different
 *   stands in the row of the first
 * @param {InForm} form
 */
function setOf(fields, { current, widgetOf, put, isAsked, changed }) {
  const pairs = fields.flatMap((field) => (field.twin ? [{ field, key: field.key, twin: field.twin }] : []));
  const [{ key: first, twin: words }] = pairs;
  const key = button("", turn, { class: "button quiet apart" });
  /** @type {Record<string, Typed>} what the other side held when it was made the same */
  let before = {};
  let isApart = false;
  const now = (/** @type {string} */ each) => current[each] ?? "";
  const { line } = widgetOf(first);
  line.append(key);
  line.classList.add("with-apart");

  function draw() {
    key.textContent = isApart ? words.together : words.apart;
    for (const { field, twin } of pairs) widgetOf(field.key).rename(isApart ? field.label : twin.label);
  }

  function typed() {
    if (isApart) return;
    for (const each of pairs) if (now(each.key) !== now(each.twin.key)) put(each.twin.key, now(each.key));
  }

  function turn() {
    isApart = !isApart;
    if (isApart) for (const [each, value] of Object.entries(before)) put(each, value);
    else before = Object.fromEntries(pairs.map(({ twin }) => [twin.key, now(twin.key)]));
    typed();
    draw();
    changed();
  }

  return {
    holds: (/** @type {string} */ each) => pairs.some((pair) => pair.key === each),
    askedBy: (/** @type {string} */ each) => (isApart ? null : pairs.find(({ twin }) => twin.key === each)?.key),
    isOne: () => !isApart,
    typed,
    settle() {
      before = {};
      isApart = pairs.some((each) => isAsked(each.field) && now(each.key) !== now(each.twin.key));
      draw();
    },
  };
}
