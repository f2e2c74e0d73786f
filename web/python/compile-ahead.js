/** Compile the runtime's code while its scripts are still being read. */

const EMPTY_ZIP = Uint8Array.from([0x50, 0x4b, 5, 6, ...Array(18).fill(0)]);

/**
 * Pyodide asks for its code itself, by a fetch and a streaming instantiation, but not before all
 * else is there: it gets what `code`, a promise of the response, has become by then. An empty
 * archive stands for the standard library, all of which a snapshot holds in memory.
 */
export function compileAhead(code, { codeURL, libraryURL }) {
  const { fetch } = self;
  const { instantiateStreaming } = WebAssembly;
  const compiled = WebAssembly.compileStreaming(code);
  compiled.catch(() => {}); // Pyodide hears of it when it asks
  self.fetch = async (asked, options) => {
    if (String(asked) === codeURL) return null;
    return String(asked) === libraryURL ? new Response(EMPTY_ZIP) : fetch(asked, options);
  };
  WebAssembly.instantiateStreaming = async (_source, imports) => {
    self.fetch = fetch;
    WebAssembly.instantiateStreaming = instantiateStreaming;
    const module = await compiled;
    return { module, instance: await WebAssembly.instantiate(module, imports) };
  };
}
