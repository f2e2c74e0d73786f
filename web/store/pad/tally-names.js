import { identity } from "../project/identity.js";
import { fold, naming } from "./naming.js";

/** @import { Ask, Settings } from "../../python/contract.d.ts" */
/** @import { ProjectRecord, StateKeeper, TallyKept } from "../shapes.d.ts" */

const LINES = /\[ *\d+ *\]/g;
const BRACKETED = /\[([^[\]]*)\]/g;

/**
 * What goes to the core with a text of the pad, so that names in it may be those of the tally's lines and of the open
 * project. Which of them a text does use is for the core to say.
 * @param {object} page
 * @param {StateKeeper} page.state
 * @param {Ask} page.ask
 * @param {() => Settings} page.settings
 * @param {() => TallyKept} page.now the tally as it is kept, and its lines as told
 */
export function tallyNames({ state, ask, settings, now }) {
  return {
    /**
     * The project goes along where a text may call something of it; a line's number calls a line.
     * @param {unknown} texts
     */
    projectNames: (texts) => naming(state.get().record, JSON.stringify(texts ?? "").replace(LINES, "")),
    /**
     * What the lines stand for that a text may call, so that the core need not be sent the whole tally.
     * @param {string} text
     */
    namesIn(text) {
      const folded = fold(text);
      const bracketed = new Set([...text.matchAll(BRACKETED)].map(([, inside]) => inside.trim()));
      /** @type {Record<string, {exact: string | null | undefined, kind: string}>} */
      const names = {};
      for (const { id, name, value } of now().lines) {
        if (!value) continue;
        const known = { exact: "exact" in value ? value.exact : undefined, kind: value.kind };
        if (bracketed.has(id)) names[id] = known;
        if (name && folded.includes(fold(name))) names[name] = known;
      }
      return names;
    },
    /**
     * The line that a name means here, so that nothing of the project can be called by it.
     * @param {string} name
     */
    lineCalled: (name) => now().lines.find(({ id, name: own }) => id === name || (own && fold(own) === fold(name))),
    /**
     * What the project keeps of a line, or of what is being typed: the whole sum, with the project's names alone.
     * @param {{id: string} | {text: string}} what
     */
    sum(what) {
      const { record } = state.get();
      const around = { settings: settings(), document: record?.document, project: identity(record) };
      return ask({ do: "tally_sum", tally: now().tally, ...what, ...around });
    },
    /**
     * How many lines use names of the document of a record.
     * @param {ProjectRecord | null} record
     */
    linesOf: (record) => (now().tally?.lines ?? []).filter(({ project }) => project?.id === identity(record)).length,
  };
}
