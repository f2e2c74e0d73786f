/** What the page keeps, and what it has in hand. */

import type { OfflineState } from "../offline/offline.d.ts";
import type {
  Act,
  Answered,
  Change,
  Described,
  Document,
  LabelGrid,
  Planned,
  Read,
  Reckoning,
  Refused,
  Strip,
  Tally,
  TallyLineTold,
  Typed,
  View,
} from "../python/contract.d.ts";
import type { CoreState } from "../python/core.d.ts";

/** A whole document in the place of the one that is open; only the page knows this act. */
export interface Replacing {
  document: Document;
  documentId?: string | null;
  said?: string;
}

/** What is done to a project: an act of the core, or a whole document in its place. */
export type Doing = Act | Replacing;

/** One step of the history of a project: the act that takes it back, what it was, in words and by name, and its id. */
export interface Step {
  back: Doing;
  of: string;
  did?: string;
  id?: number;
}

/** A project in the store. `revision` grows with each change. */
export interface ProjectRecord {
  id: string;
  revision: number;
  document: Document;
  documentId?: string | null;
  undo: Step[];
  redo: Step[];
}

/** A record after one of its changes. */
export interface Stamp {
  id: string;
  revision: number;
}

/** A view as the core tells it, with what it is of, and as of which minute. */
export type Picture = View & { of?: Stamp; asked?: string | null };

/** A cutting plan that is looked for, or was: of what, the best one so far, and what is said of it. */
export interface Planning {
  of: Stamp;
  found: Planned | null;
  error: Refused["error"] | null;
  isRunning: boolean;
  progress: string;
}

/** The tally with its lines as told, what undoes and redoes it, and the ids of what was entered last. */
export interface TallyKept {
  tally: Tally | null;
  lines: TallyLineTold[];
  undo: Act[];
  redo: Act[];
  entered?: string[];
}

/** What was being typed on the pad before it was lent. */
export interface Aside {
  text: string;
  correcting: string | null;
  goesOn: boolean;
}

/**
 * The pad (see pad/entering.js): its text, the line that it corrects, whether it goes on from the line still on its way,
 * the entry that was kept from it last, the id of what is put right in it, what was typed before it was lent, and the
 * unit in which it was begun.
 */
export interface Pad extends Partial<Aside> {
  text: string;
  unit?: string | null;
  kept?: { of: string | null; id: string; text: string; touched?: boolean } | null;
  fixing?: string | null;
  aside?: Aside | null;
  answer?: { asked: string; said: Answered<Read>; id: string | null } | null;
}

/** What was entered and is not on the tally yet: a text, or a step from the line before. */
export interface Entering {
  id: string;
  text?: string;
  step?: string;
  correcting?: string | null;
  goesOn?: boolean;
  error?: Refusal;
}

/** An error of the core, or of the page, which knows no field. */
export type Refusal = Pick<Refused["error"], "message"> & Partial<Omit<Refused["error"], "kind">> & { kind?: string };

/** Why nothing was done. */
export type NotDone = (Refused & { now?: undefined }) | { ok: false; error: Refusal; now?: Kept; more?: undefined };

/** An entry of a document. */
export type Kept = Document["entries"][number];

/**
 * A change of a project as it was worked out, by the act `did`: of the core, or of a whole document. Once it is kept
 * `step` is the id to take it back by; `undo` is null where nothing was changed.
 */
export interface Done extends Pick<Change, "document" | "said" | "follows" | "judged"> {
  ok: true;
  undo: Doing | null;
  id?: string | null;
  did?: string;
  documentId?: string | null;
  step?: number;
  now?: undefined;
}

/** All is as it is wanted already. */
export interface Unchanged {
  ok: true;
  said: string;
  undo?: null;
  id?: undefined;
  step?: undefined;
  now?: undefined;
}

/** What came of a change. */
export type Changed = Done | Unchanged | NotDone;

/** What is to be done: an act, or what makes one of the document as it is by then, or says why there is none. */
export type Wanted = Doing | ((document: Document) => Doing | Unchanged | NotDone);

/** How a change is asked about, told and remembered (see project/undo-redo.js). */
export interface History {
  asks(changed: Done): boolean;
  said(old: ProjectRecord, changed: Done): string;
  kept(old: ProjectRecord, changed: Done & { undo: Doing }): Pick<ProjectRecord, "undo" | "redo">;
}

/**
 * How a change is made: by which history, on which document (its identity: on another it is not done), over which entry
 * as the person saw it, and with which photos.
 */
export interface How {
  history?: History;
  of?: string | null;
  was?: Kept | null;
  pictures?: Record<string, string>;
}

/**
 * What is typed and not kept yet, and the unit in which it was begun; `changed` once it is not what is kept. A question
 * has the answer to what was `asked` last, to draw it at once; labels what they were laid over, and what was sent.
 */
export interface Draft {
  changed?: boolean;
  text?: string;
  values?: Typed;
  typed?: Typed;
  unit?: string;
  asked?: string;
  said?: Answered<Reckoning>;
  /** The id of a photo that is not kept yet, "" for none any more, and its data address. */
  photo?: string;
  picture?: string;
  /** The project whose names stand in it. */
  names?: string | null;
  was?: LabelGrid;
  sent?: Typed;
}

/** How the place at the saw looks and sounds. */
export interface SawState {
  order: string;
  light: string;
  aloud?: boolean;
  piece?: string;
}

/** The hand that the keys are laid out for, and whether it has used the strip of marks. */
export interface HandState {
  side: string;
  usedStrip?: boolean;
}

/** What was last chosen for printing: the paper, and the grid of stickers as typed. */
export interface Print {
  paper?: string;
  labels?: Typed;
  labelsUnit?: string;
}

/** All that the page has in hand. */
export interface State {
  pad: Pad;
  described: Described | null;
  /** The keys of the questions that were answered last, the last first, and of those that are pinned. */
  recent: string[];
  pinned: string[];
  strip: Strip | null;
  tally: TallyKept | null;
  entering: Entering[];
  entered: TallyLineTold | null;
  openProject: string | null;
  view: Picture | null;
  /** Why the open project can't be shown. */
  unshown?: Refused["error"] | null;
  core: CoreState | null;
  offline: OfflineState | null;
  record: ProjectRecord | null;
  saw: SawState;
  hand: HandState;
  sure: { tape: string };
  planning?: Planning | null;
  print?: Print;
  backups: Record<string, { revision: number; when: string }>;
  /** The cautions that were told in full on this device on a day, by their texts. */
  cautions: { day: string; seen: string[] };
  /** By the id of a project: when it was open last (milliseconds), and how many of its pieces are to be cut yet. */
  lastOpened: Record<string, { at: number; left: number }>;
  /** By project and group: what a group of entries was when it was folded away. */
  folded: Record<string, number>;
  /** By the id of a project: the steps that are due and were told of, so that each is told once. */
  dueTold: Record<string, string[]>;
  stays?: boolean | null;
  [draft: `draft:${string}`]: Draft | undefined;
}

/** The state object of the page (see page/state.js). */
export interface StateKeeper {
  get(): State;
  set(patch: Partial<State>): void;
  keepAgain(): void;
  subscribe(listener: (changed: string[]) => void): () => void;
}

/** By the key of what the page keeps: what makes the new value of the one that is kept. */
export type PageChanges = { [Key in keyof State]?: (kept: State[Key] | undefined) => State[Key] };

/** What is kept with a record or not at all. */
export interface Along {
  pictures?: Record<string, string>;
  changes?: PageChanges;
}

/** The store (see page/database.js and page/memory.js). */
export interface Database {
  page(): Promise<Partial<State>>;
  pageOf<Key extends keyof State>(key: Key): Promise<State[Key] | undefined>;
  keepPage(key: string, value: unknown): Promise<unknown>;
  changePage(changes: PageChanges): Promise<void>;
  project(id: string): Promise<ProjectRecord | undefined>;
  projects(): Promise<ProjectRecord[]>;
  dropProject(id: string): Promise<void>;
  photo(key: string): Promise<string | undefined>;
  keepProject(record: ProjectRecord, along?: Along): Promise<ProjectRecord | null>;
}
