/**
 * A text as the bytes of a gzip file (RFC 1952).
 * @param {string} text
 */
export const gzipped = (text) =>
  new Response(new Blob([text]).stream().pipeThrough(new CompressionStream("gzip"))).blob();

/**
 * Whether a file begins as every gzip file does.
 * @param {Blob} file
 */
export async function isGzip(file) {
  const [first, second] = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  return first === 0x1f && second === 0x8b;
}

/**
 * What is in a gzip file; null as soon as it is of more than `most` bytes.
 * @param {Blob} file
 * @param {number} most
 */
export async function gunzipped(file, most) {
  const parts = [];
  let size = 0;
  for await (const part of chunks(file.stream().pipeThrough(new DecompressionStream("gzip")))) {
    size += part.length;
    if (size > most) return null;
    parts.push(part);
  }
  return new Blob(parts);
}

/**
 * Not every browser can walk a stream by itself.
 * @param {ReadableStream<Uint8Array<ArrayBuffer>>} stream
 */
async function* chunks(stream) {
  const reader = stream.getReader();
  try {
    for (let next = await reader.read(); !next.done; next = await reader.read()) yield next.value;
  } finally {
    reader.cancel().catch(() => {});
  }
}
