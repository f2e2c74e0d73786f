import { photoField } from "../forms/photo-field.js";

/** @import { App } from "../place.d.ts" */

/**
 * The photo of where a reading was taken.
 * @param {App} app
 * @param {string} id
 */
export function readingPhoto(app, id) {
  function entry() {
    const kept = app.state.get().record?.document.entries.find((each) => each.id === id);
    return kept?.kind === "reading" ? kept : null;
  }

  return photoField(app, {
    now: () => ({ photo: entry()?.photo }),
    alt: () => `Where ${entry()?.name} was measured`,
    put: (photo, pictures = {}) => app.project.change({ act: "describe", id, photo }, { pictures }),
  });
}
