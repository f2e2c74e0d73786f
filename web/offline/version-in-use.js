/** Which version of the site is in use: its list of files, as the build made it. */

const CACHE = "version-in-use";
const ADDRESS = new URL("files-in-use.json", self.location).href;

/** Return the list, or null before the first version is whole. */
export async function readVersionInUse() {
  const response = await (await caches.open(CACHE)).match(ADDRESS);
  return response ? response.json() : null;
}

export async function writeVersionInUse(files) {
  await (await caches.open(CACHE)).put(ADDRESS, Response.json(files));
}
