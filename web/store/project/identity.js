/**
 * Which document a record holds: ids of entries mean something only within it. It is the project's own id until a
 * backup is put in the place of what was there.
 * @param {object | null} record
 */
export const identity = (record) => record?.documentId ?? record?.id ?? null;
