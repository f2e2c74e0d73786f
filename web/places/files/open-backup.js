import { thisMinute } from "../../store/project/when.js";
import { readFile } from "../../widgets/device/read-file.js";
import { button, element } from "../../widgets/element.js";
import { fileField } from "../../widgets/fields/file-field.js";
import { onward } from "../go.js";
import { inWords, notice, quietly } from "../notices.js";

/** @import { Document, Message, Restored } from "../../python/contract.d.ts" */
/** @import { Answer } from "../notices.js" */
/** @import { App, Pictures } from "../place.d.ts" */

const ACCEPT = ".json,.gz,.txt,application/json,application/gzip,text/plain";
/**
 * @param {string} text
 * @param {string} [look]
 */
const sentence = (text, look = "") => element("p", { class: look }, text);

/**
 * From a file: what is in it is said first, then it becomes a project, replaces this one, or is merged.
 * @param {App} app
 */
export function restoring(app) {
  const found = element("div", { class: "project", role: "status" });
  const say = (/** @type {Node[]} */ ...nodes) => found.replaceChildren(...nodes);

  /** @param {File} file */
  async function take(file) {
    const text = await readFile(file);
    if (text === null)
      return say(sentence("Sawside can’t read this file, or it’s too big for a backup. Pick another one.", "error"));
    const restored = await app.ask({ do: "restore", text });
    if (!restored.ok) return say(sentence(inWords(restored.error), "error"));
    const { asNew, replace, merge } = ways(app, text, restored);
    const { record } = app.state.get();
    const name = record?.document.name;
    say(
      sentence(restored.said),
      element(
        "div",
        { class: "button-row" },
        button("As a new project", asNew, { class: "button primary" }),
        record ? button(`Replace ${name}`, replace) : null,
        record ? button(`Merge into ${name}`, () => merge(say)) : null,
      ),
    );
  }

  return element(
    "section",
    { class: "project", "aria-label": "Restore from a file" },
    fileField({ label: "Backup file", accept: ACCEPT, onFile: take }),
    found,
  );
}

/**
 * What can be done with a backup: its `text`, and what the core has `restored` of it.
 * @param {App} app
 * @param {string} text
 * @param {Restored} restored
 */
function ways(app, text, restored) {
  /**
   * The pictures are kept with what shows them: nobody then finds one that nothing shows, and clears it away.
   * @param {(pictures: Pictures) => Promise<Answer>} then
   */
  async function withPhotos(then) {
    const goOn = onward();
    const answer = await quietly(then(restored.photos));
    if (!answer.ok) return;
    notice(answer.said ?? "Restored.");
    goOn("project");
  }

  const asNew = () => withPhotos((pictures) => app.projects.add(restored.document, pictures));

  function replace() {
    const act = { document: restored.document, said: `Restored. Undo puts back what was here.${unlinked(app)}` };
    return withPhotos((pictures) => app.project.tryChange(act, { pictures }));
  }

  /**
   * The rule of merging and what it makes of the two stand before the button that does it.
   * @param {(...nodes: Node[]) => void} say
   */
  async function merge(say) {
    const { record } = app.state.get();
    if (!record) return;
    /** @returns {Message<"merge">} */
    const message = (/** @type {Document} */ document) => ({ do: "merge", document, text, when: thisMinute() });
    const merged = await quietly(app.ask(message(record.document)));
    if (!merged.ok) return;
    const accept = () => withPhotos((pictures) => app.project.changeBy(message, { pictures }));
    say(sentence(merged.rule), sentence(`Then: ${merged.said}`), button("Merge", accept, { class: "button primary" }));
  }

  return { asNew, replace, merge };
}

/**
 * Lines of the tally that use names of what was here.
 * @param {App} app
 */
function unlinked(app) {
  const count = app.tally.linesOf(app.state.get().record);
  if (count === 0) return "";
  const [use, have] = count === 1 ? ["line of the history uses", "it has"] : ["lines of the history use", "they have"];
  return ` ${count} ${use} names from it, so ${have} no number until then.`;
}
