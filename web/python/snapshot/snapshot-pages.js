/**
 * A snapshot in the form it is stored in: runs of pages that are not empty, one after the other.
 *
 * bytes = number of runs, then first page and length of each run (32 bits each), then the pages.
 */

const PAGE = 4096;

/**
 * Return the packed form of a memory.
 * @param {Uint8Array<ArrayBuffer>} heap its length is a multiple of 64 KiB
 */
export function packPages(heap) {
  /** @type {{first: number, length: number}[]} */
  const runs = [];
  const words = new BigUint64Array(heap.buffer, heap.byteOffset, heap.length / 8);
  const perPage = PAGE / 8;
  for (let page = 0; page * PAGE < heap.length; page++) {
    if (words.subarray(page * perPage, (page + 1) * perPage).every((word) => word === 0n)) continue;
    const last = runs.at(-1);
    if (last && last.first + last.length === page) last.length++;
    else runs.push({ first: page, length: 1 });
  }
  const table = Uint32Array.from([runs.length, ...runs.flatMap(({ first, length }) => [first, length])]);
  const pages = runs.map(({ first, length }) => heap.subarray(first * PAGE, (first + length) * PAGE));
  return new Blob([table, ...pages]).arrayBuffer();
}

/**
 * Make the memory of `module` what it was when `packed` was made from `size` bytes of it.
 * Pages that were empty are emptied: a fresh runtime has written to some, and not always the same.
 * @param {{HEAPU8: Uint8Array, growMemory(size: number): void}} module
 * @param {ArrayBuffer} packed
 * @param {number} size
 */
export function unpackPages(module, packed, size) {
  if (module.HEAPU8.length < size) module.growMemory(size);
  const heap = module.HEAPU8;
  const count = new Uint32Array(packed, 0, 1)[0];
  const table = new Uint32Array(packed, 4, 2 * count);
  let from = table.byteOffset + table.byteLength;
  let filled = 0;
  for (let run = 0; run < count; run++) {
    const start = table[2 * run] * PAGE;
    const length = table[2 * run + 1] * PAGE;
    heap.fill(0, filled, start);
    heap.set(new Uint8Array(packed, from, length), start);
    from += length;
    filled = start + length;
  }
  heap.fill(0, filled);
}
