import { nameDialog } from "../../widgets/messages/name-dialog.js";
import { onward } from "../go.js";
import { filled } from "./question-draft.js";

/** @import { Line, Reckoner } from "../../python/contract.d.ts" */
/** @import { Kept } from "../../store/shapes.d.ts" */
/** @import { Typed } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * Keeping what a question answers: as a new line under a name, or, with `entry`, as the correction
 * of a kept one.
 * @param {App} app
 * @param {object} line
 * @param {Reckoner} line.declared
 * @param {Line} [line.entry]
 * @param {string} [line.from] the place that it was begun for, and that saving leads to
 * @param {{unit(): string, drop(): void}} line.draft
 * @param {() => Record<string, Typed>} line.values what is filled in
 * @param {(id?: string | null) => void} line.after called when a new line was kept
 */
export function keeping(app, { declared, entry, from, draft, values, after }) {
  /** @type {Kept | undefined} */
  let was = entry;
  const correction = () => ({ act: "correct", id: entry?.id, values: values() });

  async function correct() {
    const goOn = onward();
    const answer = await app.project.change(correction(), { was });
    was = answer.now ?? was;
    if (!answer.ok) return;
    draft.drop();
    goOn(from || `project/${entry?.id}`);
  }

  function keep() {
    app.sheet.close();
    if (entry) return correct();
    const line = { act: "keep_line", reckoner: declared.key, values: values(), unit: draft.unit() };
    nameDialog({
      title: `Save ${declared.title.toLowerCase()}`,
      act: "Save",
      name: declared.title,
      told: savedAlready(app, { reckoner: declared.key, values: values(), unit: draft.unit() }),
      give: (name) => app.project.change({ ...line, name }),
      after,
    });
  }

  return entry
    ? { keep, correction, label: "Save change", short: "Save" }
    : { keep, correction, label: "Save to project", short: "Save" };
}

/**
 * What is said before a line is kept that says the same as one that is there; "" of none.
 * @param {App} app
 * @param {{reckoner: string, values: Record<string, Typed>, unit: string}} line
 */
function savedAlready(app, { reckoner, values, unit }) {
  const entries = app.state.get().record?.document.entries ?? [];
  const there = entries.find(
    (each) =>
      each.kind === "line" &&
      each.reckoner === reckoner &&
      each.unit === unit &&
      filled(each.values) === filled(values),
  );
  return there ? `${there.name} in this project is the same. Saving lists it twice.` : "";
}
