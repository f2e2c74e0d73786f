/** How far the copy for use without network has come; `loaded` and `total` are files, `update` says that one is here. */
export interface OfflineState {
  phase: "unsupported" | "installing" | "ready" | "failed";
  loaded: number;
  total: number;
  update: boolean;
}

/** What the service worker answers to "report": the addresses of files that are not here, of so many. */
export interface Report {
  missing: string[];
  total: number;
  update: boolean;
}

/** A file of a version of the site, as the build lists it. */
export interface KeptFile {
  url: string;
  revision: string;
  integrity: string;
}

declare global {
  interface WorkerGlobalScope {
    /** The build writes the list of files in its place. */
    __WB_MANIFEST: KeptFile[];
  }
}
