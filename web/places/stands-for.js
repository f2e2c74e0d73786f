import { latest } from "../store/latest.js";

const NAME = /\[[^\]]+\]/g;

/**
 * Says behind each way a field was read what the project's names in it stand for now.
 * @param {(echoes: Record<string, string>) => void} show
 */
export function standsFor(app, show) {
  const ask = latest(async (echoes) => {
    const told = Object.entries(echoes).map(async ([field, echo]) => [field, await withValues(app, echo)]);
    return Object.fromEntries(await Promise.all(told));
  });
  return (echoes) => {
    if (Object.values(echoes).some((echo) => String(echo).includes("["))) ask(echoes, show);
  };
}

async function withValues(app, echo) {
  const { document, settings } = app.state.get().record.document ? stateOf(app) : {};
  const names = [...new Set(String(echo).match(NAME))];
  const values = await Promise.all(names.map((text) => app.ask({ do: "read", text, document, settings })));
  const known = names.flatMap((name, at) => (values[at].ok ? [`${name.slice(1, -1)} is ${values[at].value.text}`] : []));
  return [echo, ...known].join("; ");
}

const stateOf = (app) => ({ document: app.state.get().record.document, settings: app.settings() });
