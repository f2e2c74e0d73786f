/**
 * Compile the runtime's code while its scripts are still being read. Pyodide asks for it itself,
 * by a fetch and a streaming instantiation, but not before all else is there: hand it over then.
 */
export function compileAhead(url) {
  const { fetch } = self;
  const { instantiateStreaming } = WebAssembly;
  const compiled = WebAssembly.compileStreaming(fetch(url));
  self.fetch = async (asked, options) => (String(asked) === url ? null : fetch(asked, options));
  WebAssembly.instantiateStreaming = async (_source, imports) => {
    self.fetch = fetch;
    WebAssembly.instantiateStreaming = instantiateStreaming;
    const module = await compiled;
    return { module, instance: await WebAssembly.instantiate(module, imports) };
  };
}
