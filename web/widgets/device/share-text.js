/**
 * Hand a text to the system's share sheet.
 * @param {{title: string, text: string}} what
 * @returns whether there is one; a person who closes it has been asked
 */
export async function shareText({ title, text }) {
  if (!navigator.share) return false;
  try {
    await navigator.share({ title, text });
    return true;
  } catch (error) {
    return error instanceof Error && error.name === "AbortError";
  }
}
