/** Where the packed Python lies, and what is in it. */

/** @import { Pack } from "../core.d.ts" */

const folder = new URL("python/", import.meta.url);

/** @param {string} name of a file of the pack */
export const packURL = (name) => new URL(name, folder).href;

/**
 * Return the content of a file of the pack.
 * @param {string} name
 */
export async function readFile(name) {
  const response = await fetch(packURL(name));
  if (!response.ok) throw new Error(`python/${name}: ${response.status}`);
  return response.arrayBuffer();
}

/**
 * Return the list of the packed files.
 * @returns {Promise<Pack>}
 */
export const readPack = async () => JSON.parse(new TextDecoder().decode(await readFile("pack.json")));
