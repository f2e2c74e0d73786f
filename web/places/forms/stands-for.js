import { latest } from "../../store/page/latest.js";

/** @import { App } from "../place.d.ts" */

const NAME = /\[[^\]]+\]/g;

/**
 * Says, behind the way in which a field was read, what the project's names in it stand for now.
 * @param {App} app
 * @param {(echoes: Record<string, string>) => void} show
 */
export function standsFor(app, show) {
  const tell = latest(async (/** @type {Record<string, string>} */ echoes) => {
    const all = Object.entries(echoes).map(async ([field, echo]) => [field, await told(app, echo)]);
    return Object.fromEntries(await Promise.all(all));
  });
  /** @param {Record<string, any>} echoes of a list they are no text */
  return (echoes) => {
    const named = Object.entries(echoes).filter(([, echo]) => String(echo).match(NAME));
    if (named.length) tell(Object.fromEntries(named), (more) => show({ ...echoes, ...more }));
  };
}

/**
 * @param {App} app
 * @param {string} echo
 */
async function told(app, echo) {
  const { record } = app.state.get();
  if (!record) return echo;
  const { document } = record;
  const known = [...new Set(echo.match(NAME))].map(async (text) => {
    const answer = await app.ask({ do: "read", text, document, settings: app.project.settings() });
    return answer.ok ? `${text.slice(1, -1)} is ${answer.stands_for}` : null;
  });
  return [echo, ...(await Promise.all(known))].filter(Boolean).join("; ");
}
