import { element } from "../element.js";
import { askedOnce } from "./asked-once.js";
import { choiceField } from "./choice-field.js";
import { countField } from "./count-field.js";
import { folded } from "./folds.js";
import { manyField } from "./many-field.js";
import { momentField } from "./moment-field.js";
import { isFilledIn } from "./present-value.js";
import { textField } from "./text-field.js";

/** @import { DrawnField, FieldWidget, Form, FormOptions, Typed } from "../widget.d.ts" */

/** @type {Record<string, (options: any) => FieldWidget<any>>} by the kind of the field: of what it is typed as */
const WIDGET = {
  length: textField,
  angle: textField,
  number: textField,
  text: textField,
  moment: momentField,
  count: countField,
  choice: choiceField,
  material: choiceField,
  lengths: manyField,
  rows: manyField,
};

const TYPED_INTO = new Set(["text", "datetime-local"]);

/**
 * Fields drawn from their declaration. A field that its `shown_when` hides keeps what was typed.
 * @param {FormOptions} options
 * @returns {Form}
 */
export function form({ fields, values, onInput, onFocus }) {
  const current = { ...values };
  const widgets = new Map(fields.map((field) => [field.key, drawn(field)]));
  const once = askedOnce(fields, { current, widgetOf, put, isAsked, changed });
  const { nodes, folds } = folded(fields, (field) => widgetOf(field.key).node);
  const node = element("div", { class: "form" }, nodes);

  /** @param {DrawnField} field */
  function drawn(field) {
    const start = values[field.key] ?? field.default ?? "";
    if (start !== "") current[field.key] = start;
    return WIDGET[field.kind]({
      field,
      form,
      value: start,
      onFocus: (input, part = field) => onFocus?.(input, field, part),
      onInput(typed) {
        current[field.key] = typed;
        once.typed(field.key);
        changed();
      },
    });
  }

  function changed() {
    reveal();
    onInput({ ...current });
  }

  /** @param {string} key */
  function widgetOf(key) {
    const widget = widgets.get(key);
    if (!widget) throw new Error(`The form has no field ${key}.`);
    return widget;
  }

  /**
   * @param {string} key
   * @param {Typed} value
   */
  function put(key, value) {
    current[key] = value;
    widgetOf(key).set(value);
  }

  /** @param {DrawnField} field */
  function isAsked({ shown_when: conditions = [] }) {
    return conditions.every(({ field, is }) => is.includes(String(current[field])));
  }

  /** @param {DrawnField} field */
  const isShown = (field) => isAsked(field) && once.askedBy(field.key) === field.key;

  function reveal() {
    for (const field of fields) widgetOf(field.key).node.hidden = !isShown(field);
    for (const fold of folds) fold.draw(fold.fields.filter(isShown).map(once.named), current);
  }

  /** What came from elsewhere is there. */
  function settle() {
    once.settle();
    reveal();
    // On the screen a fold stays as the person left it: its row says what is in it.
    if (!node.isConnected) for (const fold of folds) fold.node.open ||= fold.fields.some(isTyped);
  }

  /** @param {DrawnField} field */
  function isTyped(field) {
    const value = current[field.key];
    return isShown(field) && isFilledIn(value) && value !== field.default;
  }

  settle();
  return {
    node,
    values: () => ({ ...current }),
    set(next) {
      for (const { key, default: usual } of fields) put(key, next[key] ?? usual ?? "");
      settle();
    },
    take(key, value) {
      if (JSON.stringify(current[key] ?? "") === JSON.stringify(value)) return true;
      if (isTypedInto(widgetOf(key).node)) return false;
      put(key, value);
      settle();
      return true;
    },
    show({ echoes = {}, errors = [], needed = [] }) {
      for (const [key, widget] of widgets) {
        const own = errors.filter(({ field }) => field && once.askedBy(field) === key);
        widget.show({ echo: echoes[key], error: own[0], errors: own });
        if (own.length > 0) unfold(widget);
      }
      for (const { field } of needed) if (field && widgets.has(field)) unfold(widgetOf(field));
    },
    open(key) {
      const widget = widgetOf(once.askedBy(key));
      unfold(widget);
      widget.focus();
      widget.open?.();
    },
  };
}

/**
 * What is wrong, or asked for, must not be hidden.
 * @param {FieldWidget<any>} widget
 */
const unfold = ({ node }) => node.closest(".fold")?.setAttribute("open", "");

/**
 * Whether somebody is typing within a node.
 * @param {HTMLElement} node
 */
function isTypedInto(node) {
  const { activeElement: focused } = document;
  return focused instanceof HTMLInputElement && TYPED_INTO.has(focused.type) && node.contains(focused);
}
