import { same } from "../../store/project/same.js";
import { inUnit } from "./question-fields.js";

const AS_IT_IS = { ok: true, said: "It is so already." };

/**
 * Fields that are kept as they are left. Only what was typed here since it was shown is sent, laid over what is kept
 * by then, so that what another tab changed stays. Where both changed one field it is refused, and kept when it is
 * typed once more.
 * @param {{key: string, label: string, default?: string, choices?: object[]}[]} fields
 * @param {(document: object) => object} keptIn what a document has of them, by key
 */
export function overKept(app, fields, keptIn) {
  const read = (document) => {
    const kept = document ? keptIn(document) : {};
    return Object.fromEntries(
      fields.map((field) => [field.key, kept[field.key] ?? inUnit(field, "default", kept.unit) ?? ""]),
    );
  };
  const latest = () => read(app.state.get().record?.document);
  const shown = latest();
  const refused = new Map();
  let tried = null;

  const typedFields = (typed) => fields.filter(({ key }) => !same(typed[key], shown[key]));

  function again(key) {
    if (refused.has(key)) shown[key] = refused.get(key).now;
    refused.delete(key);
    tried = null;
  }

  function refuse(field, typed, now) {
    refused.set(field.key, { typed, now });
    const message = `${field.label} was changed in another tab meanwhile${there(field, now)}.`;
    const remedy = "What you typed is still here. Type it once more to keep it all the same, or leave it.";
    return { ok: false, error: { kind: "meanwhile", message, remedy, field: field.key } };
  }

  return {
    /** What is kept now, by key. */
    kept: latest,
    /** Whether something is typed that was not tried to be kept yet. */
    isDue(typed) {
      const now = JSON.stringify(typed);
      const before = tried;
      tried = typedFields(typed).length > 0 ? now : null;
      return tried !== null && now !== before;
    },
    /** Called with the key of a field that is being typed in. */
    again,
    /**
     * @param {object} typed all that stands in the fields
     * @param {(mine: object, document: object) => object} make the act that keeps what is of this tab
     * @returns the act for the document as it is by then, or why it is refused
     */
    act: (typed, make) => (document) => {
      const now = read(document);
      for (const [key, before] of [...refused]) if (!same(before.typed, typed[key])) again(key);
      const clashing = ({ key }) => !same(now[key], shown[key]) && !same(now[key], typed[key]);
      const mine = typedFields(typed);
      const clash = mine.find((field) => clashing(field) && !refused.has(field.key));
      if (clash) return refuse(clash, typed[clash.key], now[clash.key]);
      const sent = mine.filter((field) => !refused.has(field.key));
      if (mine.length === 0) return AS_IT_IS;
      if (sent.length === 0) return refuse(mine[0], typed[mine[0].key], now[mine[0].key]);
      return make(Object.fromEntries(sent.map(({ key }) => [key, typed[key] ?? ""])), document);
    },
    /** Shows in a form what was changed elsewhere, except where somebody is typing. */
    follow(form) {
      const now = latest();
      const typed = form.values();
      for (const { key } of fields) {
        const isFree = same(typed[key], shown[key]) || same(typed[key], now[key]);
        if (isFree && form.take(key, now[key])) shown[key] = now[key];
      }
      if (typedFields(form.values()).length === 0) tried = null;
    },
  };
}

function there({ choices }, now) {
  if (typeof now !== "string") return "";
  return `: it is ${choices?.find(({ value }) => value === now)?.label ?? (now || "blank")} there`;
}
