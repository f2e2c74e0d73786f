/** What the questions ask, and all that lists and forms need: the build has asked the core. */

import { networkMayBeBack } from "./network.js";
import { readFile } from "./pack.js";

/** @import { Described } from "../contract.d.ts" */

/**
 * Resolves with the description, also after a lost network.
 * @returns {Promise<Described>}
 */
export async function readDescription() {
  for (;;) {
    try {
      return JSON.parse(new TextDecoder().decode(await readFile("describe.json")));
    } catch {
      await networkMayBeBack();
    }
  }
}
