import { element } from "../element.js";
import { choiceField } from "./choice-field.js";
import { countField } from "./count-field.js";
import { grouped, openGroupOf } from "./field-group.js";
import { manyField } from "./many-field.js";
import { textField } from "./text-field.js";

/** @import { DrawnField, FieldWidget, Form, FormOptions, Typed } from "../widget.d.ts" */

/** @type {Record<string, (options: any) => FieldWidget<any>>} by the kind of the field: of what it is typed as */
const WIDGET = {
  length: textField,
  angle: textField,
  number: textField,
  text: textField,
  count: countField,
  choice: choiceField,
  material: choiceField,
  lengths: manyField,
  rows: manyField,
};

/**
 * Fields drawn from their declaration. A field that its `shown_when` hides keeps what was typed.
 * @param {FormOptions} options
 * @returns {Form}
 */
export function form({ fields, values, onInput, onFocus }) {
  const current = { ...values };
  const widgets = new Map(fields.map((field) => [field.key, drawn(field)]));

  /** @param {DrawnField} field */
  function drawn(field) {
    const start = values[field.key] ?? field.default ?? "";
    if (start !== "") current[field.key] = start;
    return WIDGET[field.kind]({
      field,
      form,
      value: start,
      onFocus: (input) => onFocus?.(input, field),
      onInput(typed) {
        current[field.key] = typed;
        reveal();
        onInput({ ...current });
      },
    });
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

  function reveal() {
    for (const { key, shown_when: conditions = [] } of fields) {
      widgetOf(key).node.hidden = !conditions.every(({ field, is }) => is.includes(String(current[field])));
    }
  }

  reveal();
  const nodes = grouped(fields, (field) => widgetOf(field.key).node);
  return {
    node: element("div", { class: "form" }, nodes),
    values: () => ({ ...current }),
    set(next) {
      for (const { key, default: usual } of fields) put(key, next[key] ?? usual ?? "");
      reveal();
    },
    take(key, value) {
      if (JSON.stringify(current[key] ?? "") === JSON.stringify(value)) return true;
      if (isTypedInto(widgetOf(key).node)) return false;
      put(key, value);
      reveal();
      return true;
    },
    show({ echoes = {}, errors = [] }) {
      for (const [key, widget] of widgets) {
        const own = errors.filter((error) => error.field === key);
        widget.show({ echo: echoes[key], error: own[0], errors: own });
        if (own.length > 0) openGroupOf(widget.node);
      }
    },
  };
}

/**
 * Whether somebody is typing within a node.
 * @param {HTMLElement} node
 */
function isTypedInto(node) {
  const { activeElement: focused } = document;
  return focused instanceof HTMLInputElement && focused.type === "text" && node.contains(focused);
}
