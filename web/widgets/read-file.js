import { gunzipped, isGzip } from "./gzip.js";

/** As the core has it for a backup (pycore/sawside/project/backup_text.py). */
const MOST_BYTES = 60_000_000;

/** The text of a file of the device, compressed or not; null where it is too large to be ours, or can't be read. */
export async function readFile(file) {
  if (file.size > MOST_BYTES) return null;
  const text = async () => ((await isGzip(file)) ? gunzipped(file, MOST_BYTES) : file.text());
  return text().catch(() => null);
}
