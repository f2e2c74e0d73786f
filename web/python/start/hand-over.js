/** Let Pyodide have what is already there when it asks for it by a fetch. */

const EMPTY_ZIP = Uint8Array.from([0x50, 0x4b, 5, 6, ...Array(18).fill(0)]);

/**
 * Pyodide loads and compiles its code itself: at `codeURL` it gets the promised module `code`
 * instead, and at `libraryURL` an empty archive, for a snapshot holds all of the library it needs.
 * @param {Promise<WebAssembly.Module>} code
 * @param {{codeURL: string, libraryURL: string}} addresses
 */
export function handOver(code, { codeURL, libraryURL }) {
  const { fetch } = self;
  const { instantiateStreaming } = WebAssembly;
  self.fetch = async (asked, options) => {
    // It is handed on unread.
    if (String(asked) === codeURL) return new Response();
    return String(asked) === libraryURL ? new Response(EMPTY_ZIP) : fetch(asked, options);
  };
  WebAssembly.instantiateStreaming = async (_source, imports) => {
    self.fetch = fetch;
    WebAssembly.instantiateStreaming = instantiateStreaming;
    const module = await code;
    return { module, instance: await WebAssembly.instantiate(module, imports) };
  };
}
