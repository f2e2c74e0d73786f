const MOST_BYTES = 25_000_000;

/** The text of a file of the device; null where it is too large to be ours, or can't be read. */
export async function readFile(file) {
  if (file.size > MOST_BYTES) return null;
  return file.text().catch(() => null);
}
