/** An id that nothing else has. A page without HTTPS has no crypto.randomUUID, but all that it is made of. */
export function freshId() {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (each) => each.toString(16).padStart(2, "0")).join("");
}
