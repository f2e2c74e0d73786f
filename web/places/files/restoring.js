import { thisMinute } from "../../store/project/when.js";
import { readFile } from "../../widgets/device/read-file.js";
import { button, element } from "../../widgets/element.js";
import { fileField } from "../../widgets/fields/file-field.js";
import { onward } from "../go.js";
import { notice, quietly } from "../notices.js";

/** From a file: what is in it is said first, then it becomes a project, replaces this one, or is merged. */
export function restoring(app) {
  const found = element("div", { class: "project", role: "status" });
  const say = (...nodes) => found.replaceChildren(...nodes.filter(Boolean));
  const sentence = (text, look = "") => element("p", { class: look }, text);

  async function take(file) {
    const text = await readFile(file);
    if (text === null) return say(sentence("This file is too large for a backup, or can't be read.", "error"));
    const said = await app.ask({ do: "restore", text });
    if (!said.ok) return say(sentence(`${said.error.message} ${said.error.remedy}`, "error"));
    offer(text, said);
  }

  function offer(text, said) {
    const { record } = app.state.get();
    const name = record?.document.name;
    say(
      sentence(said.said),
      element(
        "div",
        { class: "button-row" },
        button("As a new project", () => asNew(said), { class: "button primary" }),
        record ? button(`In the place of ${name}`, () => replace(said)) : null,
        record ? button(`Merge into ${name}`, () => showRule(text, said)) : null,
      ),
    );
  }

  /** The pictures are kept with what shows them: nobody then finds one that nothing shows, and clears it away. */
  async function withPhotos(said, then) {
    const goOn = onward();
    const answer = await quietly(then(said.photos));
    if (!answer.ok) return;
    notice(answer.said ?? "Restored.");
    goOn("project");
  }

  const asNew = (said) => withPhotos(said, (pictures) => app.projects.add(said.document, pictures));
  const replace = (said) => {
    const act = { document: said.document, said: `Restored. Undo brings back what was here.${unlinked()}` };
    return withPhotos(said, (pictures) => app.project.tryChange(act, { pictures }));
  };

  /** Lines of the tally that use names of what was here. */
  function unlinked() {
    const count = app.tally.linesOf(app.state.get().record);
    if (count === 0) return "";
    const [use, have] = count === 1 ? ["line of the tally uses", "it has"] : ["lines of the tally use", "they have"];
    return ` ${count} ${use} names from it, so ${have} no number until then.`;
  }

  async function showRule(text, said) {
    const { document } = app.state.get().record;
    const merged = await quietly(app.ask({ do: "merge", document, text, when: thisMinute() }));
    if (!merged.ok) return;
    const message = (now) => ({ do: "merge", document: now, text, when: thisMinute() });
    say(
      sentence(merged.rule),
      sentence(`Then: ${merged.said}`),
      button("Merge", () => withPhotos(said, (pictures) => app.project.changeBy(message, { pictures })), {
        class: "button primary",
      }),
    );
  }

  const accept = ".json,.gz,.txt,application/json,application/gzip,text/plain";
  return element(
    "section",
    { class: "project", "aria-label": "Restore from a file" },
    fileField({ label: "A backup", accept, onFile: take }),
    found,
  );
}
