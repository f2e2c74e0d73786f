import { freshId } from "../../store/page/fresh-id.js";
import { shrinkPicture } from "../../widgets/device/shrink-picture.js";
import { button, element, present } from "../../widgets/element.js";
import { fileField } from "../../widgets/fields/file-field.js";
import { notice } from "../notices.js";

/** @import { App } from "../place.d.ts" */

/**
 * The photo of where a reading was taken: from the camera, kept small, shown, taken out.
 * @param {App} app
 * @param {string} id
 */
export function readingPhoto(app, id) {
  const node = element("div", { class: "reading-photo" });
  function entry() {
    const kept = app.state.get().record?.document.entries.find((each) => each.id === id);
    return kept?.kind === "reading" ? kept : null;
  }

  /**
   * @param {string} photo
   * @param {Record<string, string>} [pictures]
   */
  const describe = (photo, pictures = {}) => app.project.change({ act: "describe", id, photo }, { pictures });

  /** @param {File} file */
  async function take(file) {
    const address = await shrinkPicture(file).catch(() => null);
    if (!address) return notice("The browser can’t open that picture. Try another.");
    const key = freshId();
    await describe(key, { [key]: address });
  }

  async function draw() {
    const { name, photo } = entry() ?? {};
    const address = photo ? await app.photo(photo) : null;
    node.replaceChildren(
      ...present([
        address ? element("img", { class: "photo", src: address, alt: `Where ${name} was measured` }) : null,
        photo && !address ? element("p", { class: "help" }, "Its photo isn’t on this device.") : null,
        fileField({
          label: photo ? "Replace photo" : "Photo",
          accept: "image/*",
          capture: "environment",
          onFile: take,
        }),
        photo ? button("Remove photo", () => describe("")) : null,
      ]),
    );
  }

  draw();
  return { node, refresh: draw };
}
