import { detailsKey } from "../../store/project/draft.js";
import { element, present } from "../../widgets/element.js";
import { keptForm } from "../forms/kept-form.js";
import { readingPhoto } from "./reading-photo.js";

/** @import { Reading } from "../../python/contract.d.ts" */
/** @import { Kept } from "../../store/shapes.d.ts" */
/** @import { DrawnField } from "../../widgets/widget.d.ts" */
/** @import { App } from "../place.d.ts" */

const SIDES = [
  { value: "", label: "On the mark" },
  { value: "light", label: "Light" },
  { value: "heavy", label: "Heavy" },
];

/**
 * @param {{name: string}[]} tapes
 * @returns {DrawnField}
 */
const tapeField = (tapes) => ({
  key: "tape",
  label: "Tape",
  kind: "choice",
  choices: [{ value: "", label: "Any" }, ...tapes.map(({ name }) => ({ value: name, label: name }))],
  help: "Add tapes in Settings. Readings are corrected for the tape’s error.",
});

/**
 * @param {App} app
 * @returns {DrawnField[]}
 */
const fieldsOf = (app) => {
  const marks = app.state.get().described?.settings.find(({ key }) => key === "mark")?.choices ?? [];
  const tapes = (app.project.settings().tapes ?? []).filter(({ name }) => name);
  return [
    { key: "where", label: "Where", kind: "text", help: "Such as at the floor or back left." },
    ...(tapes.length ? [tapeField(tapes)] : []),
    { key: "side", label: "Light or heavy", kind: "choice", choices: SIDES },
    {
      key: "fineness",
      label: "Read to",
      kind: "choice",
      choices: [{ value: "", label: "Default" }, ...marks.filter(({ value }) => value)],
      help: "The smallest mark you read to. Used for accuracy.",
    },
    {
      key: "off",
      label: "Good to within ±",
      kind: "length",
      may_be_blank: true,
      help: "Your own estimate. Leave it blank for half the smallest mark.",
    },
  ];
};

/**
 * What belongs to a reading beside its number: where, with what, how finely, how sure, when, earlier ones, a photo.
 * @param {App} app
 * @param {string} id
 */
export function readingDetails(app, id) {
  /** @returns {Partial<Reading>} */
  const entry = () =>
    app.state
      .get()
      .record?.document.entries.filter(isReading)
      .find((each) => each.id === id) ?? {};
  const earlier = element("div", { class: "earlier" });
  const photo = readingPhoto(app, id);
  const kept = keptForm(app, {
    fields: fieldsOf(app),
    slot: detailsKey(app.state.get().record, id),
    keptIn: ({ entries }) => entries.find((each) => each.id === id) ?? {},
    unit: () => entry().unit ?? app.project.unit(),
    make: (mine) => ({ act: "describe", id, ...mine }),
    send: (act) => app.project.change(act),
  });

  function draw() {
    const { when, earlier: before = [] } = entry();
    const off = app.state.get().view?.entries.find((each) => each.id === id)?.off_told;
    const line = (each) => element("li", {}, [each.text, moment(each.when)].filter(Boolean).join(", "));
    earlier.replaceChildren(
      ...present([
        off ? element("p", { class: "help" }, `“How accurate?” allows for up to ${off}.`) : null,
        when ? element("p", { class: "help" }, `Measured ${moment(when)}.`) : null,
        before.length ? element("h3", {}, "Earlier") : null,
        before.length ? element("ol", {}, [...before].reverse().map(line)) : null,
      ]),
    );
  }

  draw();
  const node = element(
    "section",
    { class: "reading-details", "aria-label": "About this reading" },
    kept.node,
    photo.node,
    earlier,
  );

  function refresh() {
    draw();
    kept.follow();
    photo.refresh();
  }

  return { node, refresh };
}

/**
 * @param {Kept} kept
 * @returns {kept is Reading}
 */
const isReading = (kept) => kept.kind === "reading";

/** @param {string | undefined} when */
const moment = (when) => (when ?? "").replace("T", " ");
