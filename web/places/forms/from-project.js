import { button, element, firstIn } from "../../widgets/element.js";
import { write } from "../../widgets/keys/typing.js";
import { briefly } from "../../widgets/numbers/fraction.js";
import { notice } from "../notices.js";

/** @import { Entry } from "../../python/contract.d.ts" */
/** @import { Child } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

const LINKED = new Set(["length", "angle", "number", "count", "lengths", "rows"]);

/**
 * Opens, for a field, the list of what the project knows: a touch writes the name at the caret, and
 * the field goes on following it.
 * @param {App} app
 * @param {{kind: string}} field
 * @param {string} [own] the entry that is being corrected, which can't follow itself
 * @param {(name: string) => string} [taken] why a name means something else here; "" where it doesn't
 * @returns {((input: HTMLInputElement) => void) | null} null where there is nothing to take
 */
export function fromProject(app, { kind }, own, taken = () => "") {
  const entries = (app.state.get().view?.entries ?? []).filter((each) => each.insert && each.id !== own);
  if (!LINKED.has(kind) || entries.length === 0) return null;
  return (input) => pick(app, entries, input, taken);
}

/**
 * @param {App} app
 * @param {Entry[]} entries
 * @param {HTMLInputElement} input
 * @param {(name: string) => string} taken
 */
function pick(app, entries, input, taken) {
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
      entries.map((entry) => row(app, entry, take)),
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
 * @param {(insert: string) => void} take
 */
function row(app, entry, take) {
  const others = element("div", { class: "pick-others", hidden: true });
  async function open() {
    more.hidden = true;
    const { record } = app.state.get();
    if (!record) return;
    const told = await app.ask({ do: "entry", document: record.document, id: entry.id });
    const links = told.ok ? told.links : [];
    others.replaceChildren(...links.slice(1).map((link) => taking(link.label, link.text, () => take(link.insert))));
    others.hidden = false;
    firstIn(others, "button")?.focus();
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
