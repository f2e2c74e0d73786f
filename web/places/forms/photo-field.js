import { freshId } from "../../store/page/fresh-id.js";
import { shrinkPicture } from "../../widgets/device/shrink-picture.js";
import { button, element, present } from "../../widgets/element.js";
import { fileField } from "../../widgets/fields/file-field.js";
import { notice } from "../notices.js";

/** @import { App } from "../place.d.ts" */

/**
 * A photo that belongs to something: from the camera, kept small, shown, taken out.
 * @param {App} app
 * @param {object} of
 * @param {() => {photo?: string, picture?: string}} of.now the id of the photo, and where it is not kept yet its data address
 * @param {() => string} of.alt what it shows
 * @param {(photo: string, pictures?: Record<string, string>) => unknown} of.put takes another one; "" for none
 */
export function photoField(app, { now, alt, put }) {
  const node = element("div", { class: "photo-field" });

  /** @param {File} file */
  async function take(file) {
    const address = await shrinkPicture(file).catch(() => null);
    if (!address) return notice("The browser can’t open that picture. Try another.");
    const key = freshId();
    await put(key, { [key]: address });
  }

  async function draw() {
    const { photo, picture } = now();
    const address = photo ? (picture ?? (await app.photo(photo))) : null;
    node.replaceChildren(
      ...present([
        address ? element("img", { class: "photo", src: address, alt: alt() }) : null,
        photo && !address ? element("p", { class: "help" }, "Its photo isn’t on this device.") : null,
        fileField({
          label: photo ? "Replace photo" : "Photo",
          accept: "image/*",
          capture: "environment",
          onFile: take,
        }),
        photo ? button("Remove photo", () => put("")) : null,
      ]),
    );
  }

  draw();
  return { node, refresh: draw };
}
