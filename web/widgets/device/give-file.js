/** A text of the core, or its bytes, as a file of the device. */
const fileOf = ({ name, type, text }) => new File([text], name, { type });

/** Put the file among the device's downloads. */
export function download(made) {
  const address = URL.createObjectURL(fileOf(made));
  const link = document.createElement("a");
  link.href = address;
  link.download = made.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** Some share sheets take no JSON; the same text goes through as plain text. */
const shareable = (made) =>
  [made, { ...made, name: `${made.name}.txt`, type: "text/plain" }]
    .map(fileOf)
    .find((file) => navigator.canShare?.({ files: [file] }));

/** Whether this browser has a share sheet that takes such a file. */
export const canShareFiles = () => Boolean(shareable({ name: "a.json", type: "application/json", text: "{}" }));

/** Hand the file to the system's share sheet. @returns whether it was taken */
export async function share(made) {
  try {
    await navigator.share({ files: [shareable(made)], title: made.name });
    return true;
  } catch {
    return false;
  }
}
