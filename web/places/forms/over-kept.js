import { same } from "../../store/project/draft.js";
import { inUnit } from "./units.js";

/** @import { Act, Document } from "../../python/contract.d.ts" */
/** @import { NotDone, Unchanged } from "../../store/shapes.d.ts" */
/** @import { DrawnField, Form, Typed } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

/** @typedef {{refusal?: NotDone | Unchanged, mine?: Values}} Sent what is to be sent, or why nothing is */
/** @typedef {Record<string, Typed>} Values by the keys of the fields */

/** @type {Unchanged} */
const AS_IT_IS = { ok: true, said: "Nothing changed." };

/**
 * Fields that are kept as they are left. Only what was typed here since it was shown is sent, laid over what is kept
 * by then, so that what another tab changed stays. Where both changed one field it is refused, and kept when it is
 * typed once more.
 * @param {App} app
 * @param {DrawnField[]} fields
 * @param {(document: Document) => Record<string, any>} keptIn what a document has of them, by key
 */
export function overKept(app, fields, keptIn) {
  /** @returns {Values} */
  const read = (/** @type {Document | undefined} */ document) => valuesOf(fields, document ? keptIn(document) : {});
  /** What is kept now. */
  const kept = () => read(app.state.get().record?.document);
  const shown = kept();
  const clashes = clashesOver(shown);
  /** @type {string | null} */
  let tried = null;

  const typedOver = (/** @type {Values} */ typed) => fields.filter(({ key }) => !same(typed[key], shown[key]));

  /**
   * A field is being typed in.
   * @param {string} key
   */
  function again(key) {
    clashes.giveWay(key);
    tried = null;
  }

  /**
   * Whether something is typed that was not tried to be kept yet.
   * @param {Values} typed
   */
  function isDue(typed) {
    const now = JSON.stringify(typed);
    const before = tried;
    tried = typedOver(typed).length > 0 ? now : null;
    return tried !== null && now !== before;
  }

  /**
   * @param {Values} typed all that stands in the fields
   * @param {(mine: Values, document: Document) => Act} make the act that keeps what is of this tab
   * @returns the act for the document as it is by then, or why it is refused
   */
  const act = (typed, make) => (/** @type {Document} */ document) => {
    for (const key of clashes.typedSince(typed)) again(key);
    const { refusal, mine } = clashes.between(typedOver(typed), typed, read(document));
    return refusal ?? make(mine ?? {}, document);
  };

  /**
   * What was sent is kept now: what was typed meanwhile stands over that, and clashes with nobody.
   * @param {Values} typed what stood in the fields as it was sent
   */
  function sent(typed) {
    const now = kept();
    for (const { key } of typedOver(typed)) if (same(typed[key], now[key])) shown[key] = now[key];
  }

  /**
   * Shows in a form what was changed elsewhere, except where somebody is typing.
   * @param {Form} form
   */
  function follow(form) {
    const now = kept();
    const typed = form.values();
    for (const { key } of fields) {
      const isFree = same(typed[key], shown[key]) || same(typed[key], now[key]);
      if (isFree && form.take(key, now[key])) shown[key] = now[key];
    }
    if (typedOver(form.values()).length === 0) tried = null;
  }

  return { kept, isDue, again, act, sent, follow };
}

/**
 * @param {DrawnField[]} fields
 * @param {Record<string, any>} kept
 * @returns {Values}
 */
const valuesOf = (fields, kept) =>
  Object.fromEntries(fields.map((field) => [field.key, kept[field.key] ?? inUnit(field, "default", kept.unit) ?? ""]));

/**
 * Fields that this tab and another both changed, over what was `shown` here: each is refused once.
 * @param {Values} shown
 */
function clashesOver(shown) {
  /** @type {Map<string, {typed: Typed, now: Typed}>} */
  const refused = new Map();

  /**
   * @param {DrawnField} field
   * @param {Typed} typed
   * @param {Typed} now
   * @returns {Sent}
   */
  function refuse(field, typed, now) {
    refused.set(field.key, { typed, now });
    const message = `${field.label} was changed in another tab${there(field, now)}.`;
    const remedy = "What you typed is still here. Type it again to save it anyway, or leave it.";
    return { refusal: { ok: false, error: { kind: "meanwhile", message, remedy, field: field.key } } };
  }

  return {
    /**
     * A field is typed in once more: over what is there now.
     * @param {string} key
     */
    giveWay(key) {
      const before = refused.get(key);
      if (before) shown[key] = before.now;
      refused.delete(key);
    },
    /**
     * The keys of those that say something else than when they were refused.
     * @param {Values} typed
     */
    typedSince: (typed) => [...refused].filter(([key, before]) => !same(before.typed, typed[key])).map(([key]) => key),
    /**
     * What is to be sent of the fields typed `over` what was shown, or why nothing is.
     * @param {DrawnField[]} over
     * @param {Values} typed
     * @param {Values} now
     * @returns {Sent}
     */
    between(over, typed, now) {
      const isChanged = (/** @type {DrawnField} */ { key }) =>
        !same(now[key], shown[key]) && !same(now[key], typed[key]);
      const clash = over.find((field) => isChanged(field) && !refused.has(field.key));
      if (clash) return refuse(clash, typed[clash.key], now[clash.key]);
      const sent = over.filter((field) => !refused.has(field.key));
      if (over.length === 0) return { refusal: AS_IT_IS };
      if (sent.length === 0) return refuse(over[0], typed[over[0].key], now[over[0].key]);
      return { mine: Object.fromEntries(sent.map(({ key }) => [key, typed[key] ?? ""])) };
    },
  };
}

/**
 * @param {DrawnField} field
 * @param {Typed} now
 */
function there({ choices }, now) {
  if (typeof now !== "string") return "";
  return `: it’s ${choices?.find(({ value }) => value === now)?.label ?? (now || "blank")} there`;
}
