/** A random id of 24 hexadecimal digits. `crypto.randomUUID` does not exist on insecure addresses. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}
