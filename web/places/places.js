import { stepDone } from "./check-list/step-done.js";
import { backup } from "./files/backup.js";
import { restore } from "./files/restore.js";
import { job } from "./list/job.js";
import { list } from "./list/list.js";
import { tally } from "./pad/history.js";
import { pad } from "./pad/pad.js";
import { plan } from "./plan/plan.js";
import { labels } from "./print/labels.js";
import { paper } from "./print/paper.js";
import { planSheet } from "./print/plan-sheet.js";
import { shopSheet } from "./print/shop-sheet.js";
import { note } from "./project/note.js";
import { project } from "./project/project.js";
import { projects } from "./project/projects.js";
import { question } from "./question/question.js";
import { newReading } from "./reading/new-reading.js";
import { reading } from "./reading/reading.js";
import { sure } from "./reading/sure.js";
import { aboutPiece } from "./saw/about-piece.js";
import { allPieces } from "./saw/all-pieces.js";
import { atTheSaw } from "./saw/at-the-saw.js";
import { trySetUp } from "./saw/try-set-up.js";
import { settings } from "./settings/settings.js";

/** @import { App, Place } from "./place.d.ts" */

/** @typedef {(app: App, ...rest: string[]) => Place} Draw */

/**
 * Each place by the first part of the address after #; `tab` is the tab it belongs to, `entry` where in the rest of
 * the address it names the entry that it is about, or those where it may.
 * @type {Record<string, {tab: string | null, title: string, entry?: number | number[], draw: Draw}>}
 */
const PLACES = {
  pad: { tab: "pad", title: "Pad", draw: pad },
  "work-out": {
    tab: "work-out",
    title: "Solve",
    entry: [1, 2],
    draw: (app, key, entry, of, part) => (key ? question(app, key, { entryId: entry, of, part }) : list(app)),
  },
  questions: { tab: "work-out", title: "Solve", draw: job },
  project: { tab: "project", title: "Project", draw: project },
  projects: { tab: "project", title: "Project", draw: projects },
  plan: { tab: "project", title: "Project", draw: plan },
  reading: { tab: "project", title: "Project", draw: reading, entry: 0 },
  step: { tab: "project", title: "Project", entry: 0, draw: stepDone },
  about: { tab: "saw", title: "At the saw", draw: aboutPiece, entry: 0 },
  backup: { tab: "project", title: "Project", draw: backup },
  restore: { tab: "project", title: "Project", draw: restore },
  "new-reading": { tab: "project", title: "Project", draw: newReading },
  note: { tab: "project", title: "Project", draw: note, entry: 0 },
  sure: { tab: "project", title: "Project", draw: sure, entry: 0 },
  paper: { tab: "work-out", title: "Paper", draw: paper, entry: 1 },
  "shop-sheet": { tab: "project", title: "Paper", draw: shopSheet },
  "plan-sheet": { tab: "project", title: "Paper", draw: planSheet },
  labels: { tab: "project", title: "Paper", draw: labels },
  saw: { tab: "saw", title: "At the saw", draw: atTheSaw },
  pieces: { tab: "saw", title: "At the saw", draw: allPieces },
  try: { tab: "saw", title: "At the saw", draw: trySetUp, entry: 0 },
  tally: { tab: "pad", title: "Pad", draw: tally },
  settings: { tab: null, title: "Settings", draw: settings },
};

/** A part of an address in plain text; as it is where somebody has typed what is no address. */
function plain(part) {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

/**
 * The place that the address names; the Pad when it names none.
 * @param {string} hash
 */
export function placeOf(hash) {
  const [name, ...rest] = hash.replace(/^#/, "").split("/").map(plain);
  const place = Object.hasOwn(PLACES, name) ? PLACES[name] : PLACES.pad;
  const isOfEntry = [place.entry].flat().some((at) => at !== undefined && Boolean(rest[at]));
  return { ...place, isOfEntry, draw: (/** @type {App} */ app) => place.draw(app, ...rest) };
}
