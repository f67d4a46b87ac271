/** The bytes of a picture, kept apart from the inspections that refer to it by its id. */
export interface StoredPicture {
  readonly id: string;
  /** The media type: `image/jpeg`. */
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** Since when nothing that is kept refers to it, ISO 8601; missing as long as something does. */
  readonly unusedSince?: string;
}

/** Whether two have the same bytes. */
export function isSamePicture(one: StoredPicture, other: StoredPicture): boolean {
  return one.bytes.length === other.bytes.length && one.bytes.every((byte, at) => byte === other.bytes[at]);
}
