import { draftIn, pieceKey } from "../../store/project/draft.js";
import { button } from "../../widgets/element.js";
import { go } from "../go.js";
import { notice } from "../notices.js";

/** What opens an entry of the project, by its kind, and what it can be asked. */
export function entryActs(app, entry) {
  const { id, kind, ok } = entry;
  const { reckoner } = app.state.get().record?.document.entries.find((each) => each.id === id) ?? {};
  const sure = ok && kind !== "note" ? button("How sure", () => go(`sure/${id}`)) : null;
  if (kind === "line") return [button("Open", () => go(`work-out/${reckoner}/${id}`)), sure];
  if (kind === "note") return [button("Open", () => go(`note/${id}`))];
  return [button("Correct", () => go(`reading/${id}`)), sure, isLength(entry) ? toPieces(app, entry) : null];
}

const isLength = ({ ok, headline }) => ok && headline?.kind === "length";

const PIECE = "piece_by_hand";

/** A piece as long as the entry, for the list at the saw. What is typed there already stays, each entry's by itself. */
function toPieces(app, { id, insert }) {
  return button("Cut a piece of it", () => {
    const draft = draftIn(app.state, pieceKey(app.state.get().record, id));
    const { values } = draft.get();
    if (!values) draft.keep({ values: { length: insert }, changed: true, unit: app.project.unit() });
    else if (values.length !== insert) notice("A piece is begun already: its length stays as it was typed.");
    go(`work-out/${PIECE}//${id}`);
  });
}

/** What was typed into an entry, for one that has no answer now. */
export function typedIn(app, id) {
  const { text, values = {} } = app.state.get().record?.document.entries.find((each) => each.id === id) ?? {};
  return (
    text ??
    Object.values(values)
      .filter((each) => typeof each === "string" && each)
      .join(", ")
  );
}
