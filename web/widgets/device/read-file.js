import { gunzipped, isGzip } from "./gzip.js";

/** As the core has it for a backup (pycore/sawside/project/files/backup_text.py). */
const MOST_BYTES = 60_000_000;

/**
 * The text of a file of the device, compressed or not, in UTF-8 or in UTF-16 that says so; null where it is too
 * large to be ours, or can't be read. No character is ever guessed.
 * @param {File} file
 */
export async function readFile(file) {
  if (file.size > MOST_BYTES) return null;
  const text = async () => {
    const whole = (await isGzip(file)) ? await gunzipped(file, MOST_BYTES) : file;
    return whole && decoded(await whole.arrayBuffer());
  };
  return text().catch(() => null);
}

/** @param {ArrayBuffer} bytes */
function decoded(bytes) {
  const [first, second] = new Uint8Array(bytes, 0, Math.min(2, bytes.byteLength));
  /** @type {Record<string, string>} */
  const marks = { "255 254": "utf-16le", "254 255": "utf-16be" };
  return new TextDecoder(marks[`${first} ${second}`] ?? "utf-8", { fatal: true }).decode(bytes);
}
