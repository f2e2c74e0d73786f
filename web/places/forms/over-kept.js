import { same } from "../../store/project/same.js";
import { inUnit } from "./units.js";

/** @import { App } from "../place.d.ts" */

const AS_IT_IS = { ok: true, said: "It is so already." };

/**
 * Fields that are kept as they are left. Only what was typed here since it was shown is sent, laid over what is kept
 * by then, so that what another tab changed stays. Where both changed one field it is refused, and kept when it is
 * typed once more.
 * @param {App} app
 * @param {{key: string, label: string, default?: string, choices?: object[]}[]} fields
 * @param {(document: object) => object} keptIn what a document has of them, by key
 * @returns {{kept, isDue, again, act, follow}} `kept()` is what is kept now, by key; `again(key)` is called with the
 *   key of a field that is being typed in
 */
export function overKept(app, fields, keptIn) {
  const read = (document) => valuesOf(fields, document ? keptIn(document) : {});
  const kept = () => read(app.state.get().record?.document);
  const shown = kept();
  const clashes = clashesOver(shown);
  let tried = null;

  const typedOver = (typed) => fields.filter(({ key }) => !same(typed[key], shown[key]));

  function again(key) {
    clashes.giveWay(key);
    tried = null;
  }

  /** Whether something is typed that was not tried to be kept yet. */
  function isDue(typed) {
    const now = JSON.stringify(typed);
    const before = tried;
    tried = typedOver(typed).length > 0 ? now : null;
    return tried !== null && now !== before;
  }

  /**
   * @param {object} typed all that stands in the fields
   * @param {(mine: object, document: object) => object} make the act that keeps what is of this tab
   * @returns the act for the document as it is by then, or why it is refused
   */
  const act = (typed, make) => (document) => {
    for (const key of clashes.typedSince(typed)) again(key);
    const { refusal, mine } = clashes.between(typedOver(typed), typed, read(document));
    return refusal ?? make(mine, document);
  };

  /** Shows in a form what was changed elsewhere, except where somebody is typing. */
  function follow(form) {
    const now = kept();
    const typed = form.values();
    for (const { key } of fields) {
      const isFree = same(typed[key], shown[key]) || same(typed[key], now[key]);
      if (isFree && form.take(key, now[key])) shown[key] = now[key];
    }
    if (typedOver(form.values()).length === 0) tried = null;
  }

  return { kept, isDue, again, act, follow };
}

const valuesOf = (fields, kept) =>
  Object.fromEntries(fields.map((field) => [field.key, kept[field.key] ?? inUnit(field, "default", kept.unit) ?? ""]));

/** Fields that this tab and another both changed, over what was `shown` here: each is refused once. */
function clashesOver(shown) {
  const refused = new Map();

  function refuse(field, typed, now) {
    refused.set(field.key, { typed, now });
    const message = `${field.label} was changed in another tab meanwhile${there(field, now)}.`;
    const remedy = "What you typed is still here. Type it once more to keep it all the same, or leave it.";
    return { refusal: { ok: false, error: { kind: "meanwhile", message, remedy, field: field.key } } };
  }

  return {
    /** A field is typed in once more: over what is there now. */
    giveWay(key) {
      if (refused.has(key)) shown[key] = refused.get(key).now;
      refused.delete(key);
    },
    /** The keys of those that say something else than when they were refused. */
    typedSince: (typed) => [...refused].filter(([key, before]) => !same(before.typed, typed[key])).map(([key]) => key),
    /** What is to be sent of the fields typed `over` what was shown, or why nothing is. */
    between(over, typed, now) {
      const isChanged = ({ key }) => !same(now[key], shown[key]) && !same(now[key], typed[key]);
      const clash = over.find((field) => isChanged(field) && !refused.has(field.key));
      if (clash) return refuse(clash, typed[clash.key], now[clash.key]);
      const sent = over.filter((field) => !refused.has(field.key));
      if (over.length === 0) return { refusal: AS_IT_IS };
      if (sent.length === 0) return refuse(over[0], typed[over[0].key], now[over[0].key]);
      return { mine: Object.fromEntries(sent.map(({ key }) => [key, typed[key] ?? ""])) };
    },
  };
}

function there({ choices }, now) {
  if (typeof now !== "string") return "";
  return `: it is ${choices?.find(({ value }) => value === now)?.label ?? (now || "blank")} there`;
}
