/** Bytes taken at once: a multiple of three, so that the texts can be put together, and few enough to pass on. */
const AT_ONCE = 3 * 8192;

/** Bytes as a text of base64, RFC 4648 section 4. */
export function base64Of(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let from = 0; from < bytes.length; from += AT_ONCE) {
    parts.push(btoa(String.fromCharCode(...bytes.subarray(from, from + AT_ONCE))));
  }
  return parts.join("");
}

/** The bytes that a text of base64 stands for; null where it is no base64. */
export function bytesOf(base64: string): Uint8Array<ArrayBuffer> | null {
  try {
    return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  } catch {
    return null;
  }
}
