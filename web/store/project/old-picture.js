/** A view of the project as the core tells it, with what it shows: which record, and after which change of it. */
export const viewOf = ({ id, revision }, seen) => ({ ...seen, of: { id, revision } });

/** Whether the view that is shown is from before the last change: the core has not told the newer one yet. */
export const isOldPicture = ({ view, record }) =>
  Boolean(view && record && (view.of?.id !== record.id || view.of.revision !== record.revision));
