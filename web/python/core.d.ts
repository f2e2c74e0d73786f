/** The core on both sides of the thread boundary. */
import type { loadPyodide, PyodideAPI } from "pyodide";
import type { Answered, Answers, Ask, Message, Name } from "./contract.d.ts";

declare global {
  /** SHA-256 (hex) of the runtime's code, put in by the bundler. */
  const RUNTIME_CODE: string;
}

/** How far the core has come. `loaded` and `total` are bytes; `again` is there where trying again may help. */
export interface CoreState {
  phase: "starting" | "ready" | "failed";
  way: Way | null;
  step: string;
  loaded: number;
  total: number;
  message?: string;
  again?: () => void;
}

export type Way = "slow" | "snapshot";

/** The page's side of the core. */
export interface Core {
  ask: Ask;
  state(): CoreState;
  /** Resolves once every question can be answered at once. */
  whole: Promise<void>;
}

/** A core that long work has for itself. An answer is null where it could not be started, died of it, or was ended. */
export interface SecondCore {
  ask<N extends Name>(message: Message<N>): Promise<Answered<Answers[N]> | null>;
  /** Whether it answers at once, as soon as that is known. */
  isQuick(): Promise<boolean>;
  end(): void;
}

/** What is told of a slow start, in bytes. */
export type Progress = Partial<Pick<CoreState, "step" | "loaded" | "total">>;

/** The packed files (pack.json). Without its rest each is what a start needs, and with it whole. */
export interface Pack {
  build: string;
  library: string;
  libraryRest: string;
  core: string;
  wheels: string[];
  installer: string;
  wheelsRest: string;
  lock: Extract<Options["lockFileContents"], { info: unknown }>;
  files: Record<string, { size: number; sha256: string }>;
}

export type Options = NonNullable<Parameters<typeof loadPyodide>[0]>;

/** Pyodide, with what it does not tell of itself. */
export type Python = PyodideAPI & { _module: { HEAPU8: Uint8Array } };

/** The one door in Python: JSON text in, JSON text out. */
export interface Door {
  (text: string): string;
  destroy(): void;
}

/** A core that runs. */
export interface Running {
  pyodide: Python;
  pack: Pack;
  handle: Door;
}

/** One that runs in the worker; `whole` and `settled` are promises of what it started without. */
export interface Started extends Running {
  way: Way;
  whole?: Promise<void>;
  settled?: Promise<void> | null;
}

/** What is kept of a snapshot beside its pages. */
export interface Facts {
  build: string;
  code: string;
  header: number[];
  size: number;
  trial: string;
  format?: number;
  length?: number;
  sha256?: string;
}
