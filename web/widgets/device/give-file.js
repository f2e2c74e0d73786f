/** @typedef {{name: string, type: string, text: string | Blob}} Made a text of the core, or its bytes */

/**
 * As a file of the device.
 * @param {Made} made
 */
const fileOf = ({ name, type, text }) => new File([text], name, { type });

/**
 * Put the file among the device's downloads.
 * @param {Made} made
 */
export function download(made) {
  const address = URL.createObjectURL(fileOf(made));
  const link = document.createElement("a");
  link.href = address;
  link.download = made.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/**
 * Some share sheets take no JSON; the same text goes through as plain text.
 * @param {Made} made
 */
const shareable = (made) =>
  [made, { ...made, name: `${made.name}.txt`, type: "text/plain" }]
    .map(fileOf)
    .find((file) => navigator.canShare?.({ files: [file] }));

/** Whether this browser has a share sheet that takes such a file. */
export const canShareFiles = () => Boolean(shareable({ name: "a.json", type: "application/json", text: "{}" }));

/**
 * Hand the file to the system's share sheet.
 * @param {Made} made
 * @returns whether it was taken
 */
export async function share(made) {
  const file = shareable(made);
  if (!file) return false;
  try {
    await navigator.share({ files: [file], title: made.name });
    return true;
  } catch {
    return false;
  }
}
