/** A download that counts its bytes and goes on by itself after a lost network. */

import { networkMayBeBack } from "./network.js";

// The slow start puts its own in place of the global one.
const { fetch } = self;

/**
 * Return a Response with the file at `url`, complete however often the network is lost.
 * `onBytes(count)` is called as bytes arrive, `onLost()` whenever the network is found gone.
 * @param {string} url
 * @param {{onBytes(count: number): void, onLost(): void}} listener
 */
export function download(url, { onBytes, onLost }) {
  let given = 0;

  /** @param {ReadableStreamDefaultController<Uint8Array>} controller */
  async function attempt(controller) {
    const response = await fetch(url);
    if (!response.ok) return controller.error(new Error(`${url}: ${response.status}`));
    const reader = /** @type {ReadableStream<Uint8Array>} */ (response.body).getReader();
    for (let seen = 0; ; ) {
      const { done, value } = await reader.read();
      if (done) return controller.close();
      // After a lost network the file comes again from its beginning.
      const fresh = value.subarray(Math.max(0, given - seen));
      seen += value.length;
      if (!fresh.length) continue;
      given += fresh.length;
      controller.enqueue(fresh);
      onBytes(fresh.length);
    }
  }

  /** @param {ReadableStreamDefaultController<Uint8Array>} controller */
  async function start(controller) {
    for (;;) {
      try {
        return await attempt(controller);
      } catch {
        onLost();
        await networkMayBeBack();
      }
    }
  }

  const type = url.endsWith(".wasm") ? "application/wasm" : "application/octet-stream";
  return new Response(new ReadableStream({ start }), { headers: { "Content-Type": type } });
}
