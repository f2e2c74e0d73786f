/** The shape of every place, and of what it is given. */
import type { Ask, Document, Message, Settings } from "../python/contract.d.ts";
import type { Changed, Kept, StateKeeper, Wanted } from "../store/shapes.d.ts";

/** What a screen of the app is: places.js draws one by the address. Only `node` must be there. */
export interface Place {
  node: HTMLElement;
  /** What it shows, where that has a name of its own: the window is called by it. */
  title?(): string;
  /** The page's state has changed in these keys (store/page/state.js). */
  refresh?(changed: string[]): void;
  /** It goes off the screen. */
  leave?(): void;
  /** It was come to by its address, and is drawn: go to what the address names. */
  land?(): void;
}

/** What a place gets. Where it leads and what it says are modules of their own: go.js, notices.js. */
export interface App {
  /** What the page shows, and what outlives it. */
  state: StateKeeper;
  /** Ask the core. */
  ask: Ask;
  /** The open project. */
  project: OpenProject;
  /** All projects: to open, begin, take in and delete them. */
  projects: ReturnType<typeof import("../store/project/project.js").projectKeeper>;
  /** The lines of the pad. */
  tally: ReturnType<typeof import("../store/pad/tally.js").tallyKeeper>;
  /** Looks for a cutting plan of the open project. */
  planning: ReturnType<typeof import("../store/project/planning.js").planningKeeper>;
  /** What was entered on the pad and is on its way to the tally. */
  entering: ReturnType<typeof import("../store/pad/entering.js").enteringKeeper>;
  /** A photo of the store as a data address. */
  photo(id: string): Promise<string | undefined>;
  /** The keypad below the place. */
  sheet: ReturnType<typeof import("../widgets/keys/sheet.js").keypadSheet>;
  /** Change to the newer version, which is here. */
  acceptUpdate(): void;
}

/**
 * The open project. Acts are done to the document that was open when the place was drawn, and to no other; each
 * resolves with the core's answer, or with why it was not done.
 */
export interface OpenProject {
  /** Its settings as typed; none where no project is open. */
  settings(): Settings;
  /** What a bare number means by its settings. */
  unit(): string;
  /**
   * Do it, and say what was done, with an Undo, or why not. `was` is the entry as it was when its correction was
   * begun, `pictures` the photos that the act brings.
   */
  change(act: Wanted, how?: { undoable?: boolean; was?: Kept | null; pictures?: Pictures }): Promise<Changed>;
  /** The same where the place itself shows what came of it. */
  tryChange(act: Wanted, how?: { was?: Kept | null; pictures?: Pictures }): Promise<Changed>;
  /** The same by a message that answers as a change does. */
  changeBy(
    message: (document: Document) => Message<"take_csv" | "merge">,
    how?: { pictures?: Pictures },
  ): Promise<Changed>;
  undo(): Promise<Changed>;
  redo(): Promise<Changed>;
  /** Take back one step and nothing else: the `step` of the answer to a change. */
  undoStep(step: number): Promise<Changed>;
}

/** Data addresses of photos, by their ids. */
export type Pictures = Record<string, string>;
