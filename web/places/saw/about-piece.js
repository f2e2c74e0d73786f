import { entryOf } from "../../store/project/identity.js";
import { button, element } from "../../widgets/element.js";
import { form } from "../../widgets/fields/form.js";
import { formDraft, projectKey } from "../forms/form-draft.js";
import { notThere } from "../forms/instead.js";
import { overKept } from "../forms/over-kept.js";
import { saveChange } from "../forms/save-change.js";
import { readAnewLine } from "../forms/units.js";
import { onward } from "../go.js";
import { besideTheSaw } from "./beside-the-saw.js";

/** @import { Document, Line } from "../../python/contract.d.ts" */
/** @import { DrawnField, Typed } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

/**
 * @param {string} key
 * @param {string} label
 * @param {string | null} help
 * @returns {DrawnField}
 */
const words = (key, label, help) => ({ key, label, kind: "text", help });
/**
 * @param {string} key
 * @param {string} label
 * @returns {DrawnField}
 */
const allowance = (key, label) => ({ key, label, kind: "length", help: null, may_be_blank: true });
const MOST = 6;
const FIELDS = [
  words("material", "Material", "Pieces of the same material and size are totaled together."),
  words("grain", "Grain", "Along, across, either or matched. The cutting plan goes by it."),
  words("place", "Where it goes", null),
  allowance("rough_length", "Rough-cut longer by"),
  allowance("rough_width", "Rough-cut wider by"),
  allowance("rough_thickness", "Rough-cut thicker by"),
];

const ALLOWANCES = FIELDS.filter(({ kind }) => kind === "length").map(({ key }) => key);

/**
 * What a piece is of, how its grain lies, where it goes, and what it is larger by before it is finished.
 * @param {App} app
 * @param {string} entry
 * @param {string} part
 */
export function aboutPiece(app, entry, part) {
  const { record, view } = app.state.get();
  const line = entryOf(record, "line", entry);
  const piece = view?.pieces.find((each) => each.entry === entry && each.part === part);
  if (!line || !piece) return notThere("This piece isn’t in the project anymore.");
  const about = aboutForm(app, { line, part });
  const standing = besideTheSaw(app, () => {});
  const title = `About ${piece.name}`;
  const node = element(
    "div",
    { class: "question" },
    element("a", { class: "back", href: "#saw" }, "‹ At the saw"),
    element("h2", {}, title),
    materialsKnown(app, (material) => about.put({ material })),
    about.nodes,
    element("p", { class: "help" }, piece.rough ? `Rough length ${piece.rough.length.text}.` : ""),
    about.saving.key,
    about.saving.why,
  );
  return {
    node,
    title: () => title,
    refresh: (/** @type {string[]} */ changed) => changed.includes("record") && about.follow(),
    leave: standing.leave,
  };
}

/**
 * One touch for what was typed once, so that the tally finds one material and not two spellings.
 * @param {App} app
 * @param {(material: string) => void} onPick
 */
function materialsKnown(app, onPick) {
  const pieces = app.state.get().view?.pieces ?? [];
  const used = pieces.map(({ material }) => material).filter(Boolean);
  /** @type {{name: string}[]} */
  const materials = app.project.settings().materials ?? [];
  const own = materials.map(({ name }) => name);
  const known = [...new Set([...used, ...own])].slice(0, MOST);
  if (known.length === 0) return null;
  const keys = known.map((material) => button(material, () => onPick(material)));
  return element("div", { class: "button-row", role: "group", "aria-label": "Known materials" }, keys);
}

/**
 * The fields, and what is typed into them until it is kept.
 * @param {App} app
 * @param {{line: Line, part: string}} piece
 */
function aboutForm(app, { line: { id, about = {} }, part }) {
  const fields = form({
    fields: FIELDS,
    values: about[part] ?? {},
    onInput: type,
    onFocus: (input, { kind }) =>
      app.sheet.open(input, { kind, unit: app.project.unit(), peek: () => ({ lines: [] }) }),
  });
  /** @param {Document} document */
  function keptIn({ entries }) {
    const line = entries.find((each) => each.id === id);
    return (line?.kind === "line" && line.about?.[part]) || {};
  }

  const over = overKept(app, FIELDS, keptIn);
  const draft = formDraft(app, projectKey(app, id, part, "about"), fields);
  const anew = readAnewLine(app, () => draft.typedIn(ALLOWANCES));
  const saving = saveChange("Save", keep);

  /** @param {Record<string, Typed>} values */
  function type(values) {
    draft.type(values);
    anew.draw();
    showSaving();
  }

  function showSaving() {
    saving.show(draft.isTyped());
  }

  async function keep() {
    app.sheet.close();
    const goOn = onward();
    const act = over.act(fields.values(), (typed) => ({ act: "about", id, part, about: typed }));
    const answer = await app.project.change(act);
    fields.show({ errors: answer.ok ? [] : [answer.error, ...(answer.more ?? [])] });
    if (!answer.ok) return;
    draft.drop();
    goOn("saw");
  }

  /** @param {Record<string, string>} more */
  function put(more) {
    const values = { ...fields.values(), ...more };
    fields.set(values);
    type(values);
  }

  function follow() {
    over.follow(fields);
    draft.keptAs(over.kept());
    showSaving();
  }

  fields.node.addEventListener("input", ({ target }) => target instanceof HTMLInputElement && over.again(target.name));
  showSaving();
  return { nodes: [fields.node, anew.node], saving, put, follow };
}
