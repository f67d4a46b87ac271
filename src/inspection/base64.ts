/** Bytes encoded at once: a multiple of three, so that the parts can be joined, and few enough for one call. */
const CHUNK = 3 * 8192;

/** Bytes as base64 (RFC 4648, section 4). */
export function encodeBase64(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let from = 0; from < bytes.length; from += CHUNK) {
    parts.push(btoa(String.fromCharCode(...bytes.subarray(from, from + CHUNK))));
  }
  return parts.join("");
}

/** The bytes of a base64 text; null if it is not base64. */
export function decodeBase64(base64: string): Uint8Array<ArrayBuffer> | null {
  try {
    return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  } catch {
    return null;
  }
}
