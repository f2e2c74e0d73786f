import { element } from "../element.js";
import { choiceField } from "./choice-field.js";
import { countField } from "./count-field.js";
import { grouped, openGroupOf } from "./field-group.js";
import { manyField } from "./many-field.js";
import { textField } from "./text-field.js";

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
 * @returns {{node, values(), set(values), take(key, value), show({echoes, errors})}}
 */
export function form({ fields, values, onInput, onFocus }) {
  const current = { ...values };
  const widgets = new Map(
    fields.map((field) => {
      const start = values[field.key] ?? field.default ?? "";
      if (start !== "") current[field.key] = start;
      const widget = WIDGET[field.kind]({
        field,
        form,
        value: start,
        onFocus: (input) => onFocus?.(input, field),
        onInput: (typed) => {
          current[field.key] = typed;
          reveal();
          onInput({ ...current });
        },
      });
      return [field.key, widget];
    }),
  );

  function reveal() {
    for (const { key, shown_when: when } of fields) {
      if (when) widgets.get(key).node.hidden = !when.is.includes(current[when.field]);
    }
  }

  reveal();
  return {
    node: element(
      "div",
      { class: "form" },
      grouped(fields, (field) => widgets.get(field.key).node),
    ),
    values: () => ({ ...current }),
    set(next) {
      for (const field of fields) {
        current[field.key] = next[field.key] ?? field.default ?? "";
        widgets.get(field.key).set(current[field.key]);
      }
      reveal();
    },
    /** What was changed elsewhere, unless the field is being typed in. @returns whether it stands there now */
    take(key, value) {
      const { activeElement: focused } = document;
      if (JSON.stringify(current[key] ?? "") === JSON.stringify(value)) return true;
      if (focused.type === "text" && widgets.get(key).node.contains(focused)) return false;
      current[key] = value;
      widgets.get(key).set(value);
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
