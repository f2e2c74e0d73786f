import { button, element, firstIn } from "../../widgets/element.js";
import { write } from "../../widgets/keys/typing.js";
import { briefly } from "../../widgets/numbers/fraction.js";
import { notice } from "../notices.js";

/** @import { Entry } from "../../python/contract.d.ts" */
/** @import { Child } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

/** @type {Record<string, string[]>} which kinds of numbers a field can make something of, by its kind */
const TAKES = {
  length: ["length", "count"],
  lengths: ["length", "count"],
  angle: ["angle", "count"],
  count: ["count", "length"],
  number: ["count", "length"],
};
/** @type {Record<string, string>} what alone fits a number in such a unit */
const OF_UNIT = { lb: "weight", kg: "weight", "ft²": "area", "m²": "area" };

/**
 * Opens, for a field, the list of what the project knows: a touch writes the name at the caret, and
 * the field goes on following it.
 * @param {App} app
 * @param {{kind: string, unit?: string | null}} field
 * @param {string} [own] the entry that is being corrected, which can't follow itself
 * @param {(name: string) => string} [taken] why a name means something else here; "" where it doesn't
 * @returns {((input: HTMLInputElement) => void) | null} null where there is nothing to take
 */
export function fromProject(app, field, own, taken = () => "") {
  const entries = (app.state.get().view?.entries ?? []).filter((each) => each.insert && each.id !== own);
  if (!TAKES[field.kind] || entries.length === 0) return null;
  return (input) => pick(app, entries, { field, input, taken });
}

/**
 * @param {App} app
 * @param {Entry[]} entries
 * @param {object} into
 * @param {{kind: string, unit?: string | null}} into.field
 * @param {HTMLInputElement} into.input
 * @param {(name: string) => string} into.taken
 */
function pick(app, entries, { field, input, taken }) {
  const { selectionStart, selectionEnd } = input;
  const close = () => dialog.close();
  /** @param {string} insert */
  function take(insert) {
    close();
    const why = input.isConnected
      ? taken(insert.slice(1, -1))
      : "The field you were filling in is gone. Tap another, then pick again.";
    if (why) return notice(why);
    input.focus();
    input.setSelectionRange(selectionStart, selectionEnd);
    write(input, insert);
  }
  const dialog = element(
    "dialog",
    { class: "dialog pick", "aria-labelledby": "pick-title", onclose: () => dialog.remove() },
    element("h2", { id: "pick-title" }, "From project"),
    element(
      "ul",
      { class: "entries" },
      entries.map((entry) => row(app, entry, { take, field })),
    ),
    button("Cancel", close),
  );
  document.body.append(dialog);
  dialog.showModal();
}

/**
 * One entry: its name and number, and, for a worked line, its other answers behind a key.
 * @param {App} app
 * @param {Entry} entry
 * @param {{take(insert: string): void, field: {kind: string, unit?: string | null}}} into
 */
function row(app, entry, { take, field }) {
  const others = element("div", { class: "pick-others", hidden: true });
  async function open() {
    more.hidden = true;
    const { record } = app.state.get();
    if (!record) return;
    const told = await app.ask({ do: "entry", document: record.document, id: entry.id });
    const links = told.ok ? told.links : [];
    const fitting = links.slice(1).filter(({ kind }) => fits(field, kind));
    others.replaceChildren(
      ...(fitting.length
        ? fitting.map((link) => taking(link.label, link.text, () => take(link.insert)))
        : [element("p", { class: "help", tabindex: "-1" }, "No other number of it fits here.")]),
    );
    others.hidden = false;
    firstIn(others, "button, p")?.focus();
  }
  const more = button("Other numbers", open, {
    class: "button quiet",
    "aria-label": `Other numbers from ${entry.name}`,
  });
  return element(
    "li",
    { class: "pick-row" },
    taking(named(entry), entry.headline ? briefly(entry.headline) : entry.error?.message, () => take(entry.insert)),
    entry.kind === "line" && entry.ok ? more : null,
    others,
  );
}

/**
 * Whether a field can make something of a number of a kind.
 * @param {{kind: string, unit?: string | null}} field
 * @param {string} kind
 */
function fits({ kind: of, unit }, kind) {
  const alone = OF_UNIT[unit ?? ""];
  return alone ? alone === kind : TAKES[of].includes(kind);
}

/**
 * What an entry is called, and which of its answers its name stands for.
 * @param {Entry} entry
 * @returns {Child[]}
 */
const named = ({ name, where, kind, headline }) => [
  [name, where].filter(Boolean).join(", "),
  kind === "line" && headline ? element("span", { class: "help" }, headline.label) : null,
];

/**
 * @param {Child[] | string} name
 * @param {Child} value
 * @param {() => void} act
 */
const taking = (name, value, act) =>
  element(
    "button",
    { type: "button", class: "button pick-name", onclick: act },
    element("span", {}, name),
    element("span", { class: "pick-value" }, value),
  );
