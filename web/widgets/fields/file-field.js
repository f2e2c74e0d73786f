import { element, freshId } from "../element.js";

/**
 * A field for a file of the device, or a picture from its camera.
 * @param {{label: string, help?: string, accept: string, capture?: string, onFile(file: File): void}} field
 */
export function fileField({ label, help, accept, capture, onFile }) {
  const id = freshId("file");
  const input = element("input", {
    id,
    type: "file",
    class: "file",
    accept,
    capture,
    onchange: () => {
      const [file] = input.files ?? [];
      input.value = "";
      if (file) onFile(file);
    },
  });
  return element(
    "div",
    { class: "field file-field" },
    element("label", { for: id }, label),
    input,
    help ? element("p", { class: "help" }, help) : null,
  );
}
