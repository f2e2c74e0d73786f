import { draftIn, pieceKey } from "../../store/project/draft.js";
import { button } from "../../widgets/element.js";
import { firstToFill, placeOf } from "../forms/to-fill.js";
import { go } from "../go.js";
import { notice } from "../notices.js";

/** @import { Entry } from "../../python/contract.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * What opens an entry of the project, by its kind, and what it can be asked.
 * @param {App} app
 * @param {Entry} entry
 */
export function entryActs(app, entry) {
  const { id, kind, headline } = entry;
  const open = () => go(placeOf(app.state.get(), entry));
  const sure = headline && headline.kind !== "text" ? button("How accurate?", () => go(`sure/${id}`)) : null;
  if (kind === "line") return [waitsFor(app, entry), button("Open", open), sure];
  if (kind === "note") return [button("Open", open)];
  return [button("Edit", open), sure, isLength(entry) ? toPieces(app, entry) : null];
}

/**
 * What leads from a line that waits to what it waits for.
 * @param {App} app
 * @param {Entry} entry
 */
function waitsFor(app, entry) {
  if (entry.to_fill?.state !== "waits") return null;
  const all = new Map((app.state.get().view?.entries ?? []).map((each) => [each.id, each]));
  const first = firstToFill(entry, all);
  const open = () => go(placeOf(app.state.get(), first));
  return button(`Fill in ${first.name}`, open, { class: "button primary" });
}

/** @param {Entry} entry */
const isLength = ({ ok, headline }) => ok && headline?.kind === "length";

const PIECE = "piece_by_hand";

/**
 * A piece as long as the entry, for the list at the saw. What is typed there already stays, each entry's by itself.
 * @param {App} app
 * @param {Entry} entry
 */
function toPieces(app, { id, insert }) {
  return button("Make a piece this long", () => {
    const draft = draftIn(app.state, pieceKey(app.state.get().record, id));
    const { values } = draft.get();
    if (!values) draft.keep({ values: { length: insert }, changed: true, unit: app.project.unit() });
    else if (values.length !== insert) notice("You already started a piece. Its length hasn’t changed.");
    go(`work-out/${PIECE}//${id}`);
  });
}

/**
 * What was typed into an entry, for one that has no answer now.
 * @param {App} app
 * @param {string} id
 */
export function typedIn(app, id) {
  const kept = app.state.get().record?.document.entries.find((each) => each.id === id);
  if (kept?.kind !== "line") return kept?.text ?? "";
  return Object.values(kept.values)
    .filter((typed) => typeof typed === "string" && typed)
    .join(", ");
}
