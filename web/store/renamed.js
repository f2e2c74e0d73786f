/**
 * What was renamed in a project between two records of it: {old: new}; nothing between two projects.
 * @param {object | null} before
 * @param {object | null} now
 */
export function renamedSince(before, now) {
  if (!before || before.id !== now?.id) return {};
  const names = new Map(before.document.entries.map(({ id, name }) => [id, name]));
  const renamed = now.document.entries.filter(({ id, name }) => names.has(id) && names.get(id) !== name);
  return Object.fromEntries(renamed.map(({ id, name }) => [names.get(id), name]));
}
