/** Which version of the site is in use: its list of files, as the build made it. */

/** @import { KeptFile } from "./offline.d.ts" */

const CACHE = "version-in-use";
const ADDRESS = new URL("files-in-use.json", self.location.href).href;

/**
 * Return the list, or null before the first version is whole.
 * @returns {Promise<KeptFile[] | null>}
 */
export async function readVersionInUse() {
  const response = await (await caches.open(CACHE)).match(ADDRESS);
  return response ? response.json() : null;
}

/** @param {KeptFile[]} files */
export async function writeVersionInUse(files) {
  await (await caches.open(CACHE)).put(ADDRESS, Response.json(files));
}
