/** What lists, forms and keys need before the core can be asked: the build has asked it. */

import { networkMayBeBack } from "./network.js";
import { readFile } from "./pack.js";

/** @import { Described, Strip } from "../contract.d.ts" */

/**
 * Resolves with what describes the questions, and with the strip of marks where nothing is set; also after a lost
 * network.
 * @returns {Promise<{described: Described, strip: Strip}>}
 */
export async function readDescription() {
  for (;;) {
    try {
      const [described, strip] = await Promise.all(["describe.json", "first-answer.json"].map(read));
      return { described, strip };
    } catch {
      await networkMayBeBack();
    }
  }
}

/** @param {string} name */
const read = async (name) => JSON.parse(new TextDecoder().decode(await readFile(name)));
