import { aboutPiece } from "./about-piece.js";
import { atTheSaw } from "./at-the-saw.js";
import { backup } from "./backup.js";
import { labels } from "./labels.js";
import { newReading } from "./new-reading.js";
import { note } from "./note.js";
import { pad } from "./pad.js";
import { paper } from "./paper.js";
import { project } from "./project.js";
import { projects } from "./projects.js";
import { question } from "./question.js";
import { reading } from "./reading.js";
import { settings } from "./settings.js";
import { shopSheet } from "./shop-sheet.js";
import { sure } from "./sure.js";
import { tally } from "./tally.js";
import { trySetUp } from "./try-set-up.js";
import { workOut } from "./work-out.js";

/** Each place by the first part of the address after #; `tab` is the tab it belongs to. */
const PLACES = {
  pad: { tab: "pad", title: "Pad", draw: pad },
  "work-out": {
    tab: "work-out",
    title: "Work out",
    draw: (app, key, entry) => (key ? question(app, key, entry) : workOut(app)),
  },
  project: { tab: "project", title: "Project", draw: project },
  projects: { tab: "project", title: "Project", draw: projects },
  reading: { tab: "project", title: "Project", draw: reading },
  about: { tab: "saw", title: "At the saw", draw: aboutPiece },
  backup: { tab: "project", title: "Project", draw: backup },
  "new-reading": { tab: "project", title: "Project", draw: newReading },
  note: { tab: "project", title: "Project", draw: note },
  sure: { tab: "project", title: "Project", draw: sure },
  paper: { tab: "work-out", title: "Paper", draw: paper },
  "shop-sheet": { tab: "project", title: "Paper", draw: shopSheet },
  labels: { tab: "project", title: "Paper", draw: labels },
  saw: { tab: "saw", title: "At the saw", draw: atTheSaw },
  try: { tab: "saw", title: "At the saw", draw: trySetUp },
  tally: { tab: "pad", title: "Pad", draw: tally },
  settings: { tab: null, title: "Settings", draw: settings },
};

/** The place that the address names; the Pad when it names none. */
export function placeOf(hash) {
  const [name, ...rest] = hash.replace(/^#/, "").split("/").map(decodeURIComponent);
  const place = Object.hasOwn(PLACES, name) ? PLACES[name] : PLACES.pad;
  return { ...place, draw: (app) => place.draw(app, ...rest) };
}
