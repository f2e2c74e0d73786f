import { button } from "../widgets/element.js";

/** What opens an entry of the project, by its kind, and what it can be asked. */
export function entryActs(app, entry) {
  const { id, kind, ok } = entry;
  const { reckoner } = app.state.get().record?.document.entries.find((each) => each.id === id) ?? {};
  const sure = ok && kind !== "note" ? button("How sure", () => app.go(`sure/${id}`)) : null;
  if (kind === "line") return [button("Open", () => app.go(`work-out/${reckoner}/${id}`)), sure];
  if (kind === "note") return [button("Open", () => app.go(`note/${id}`))];
  return [button("Correct", () => app.go(`reading/${id}`)), sure];
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
