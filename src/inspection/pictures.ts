import * as z from "zod/mini";
import { decodeBase64, encodeBase64 } from "./base64.ts";
import { isPlainObject } from "./plainData.ts";
import type { Inspection } from "./schema.ts";

const size = z.number().check(z.int(), z.positive());

/**
 * A picture of an event. In a file it includes its bytes; in the browser's database only its id. Other entries in an
 * event's pictures are retained unchanged.
 */
const pictureSchema = z.looseObject({
  id: z.string().check(z.minLength(1)),
  /** The media type: `image/jpeg`. */
  type: z.string().check(z.regex(/^image\/[a-z0-9][a-z0-9.+-]*$/)),
  /** In pixels. */
  width: size,
  height: size,
  /** Name of the original file. */
  name: z.optional(z.string()),
  /** What it shows, in words. */
  caption: z.optional(z.string()),
  /** Its bytes in base64. */
  data: z.optional(z.string()),
});

export type Picture = Readonly<z.infer<typeof pictureSchema>>;

/** An entry of an event's pictures, if this program can show it; else null. */
export function pictureIn(entry: unknown): Picture | null {
  // Most values are not pictures; this quick test avoids the schema.
  if (!isPlainObject(entry) || typeof entry.type !== "string" || typeof entry.id !== "string") return null;
  return pictureSchema.safeParse(entry).success ? (entry as Picture) : null;
}

/** Every picture in any data, at any depth: in an event, or in an undo step. */
export function picturesIn(data: unknown): readonly Picture[] {
  if (typeof data !== "object" || data === null) return [];
  const picture = pictureIn(data);
  return picture === null ? Object.values(data).flatMap(picturesIn) : [picture];
}

/** The data with every picture replaced; parts without pictures stay the same objects. */
export function withPictures<Data>(data: Data, change: (picture: Picture) => Picture): Data {
  return changed(data, change) as Data;
}

function changed(data: unknown, change: (picture: Picture) => Picture): unknown {
  if (typeof data !== "object" || data === null) return data;
  const picture = pictureIn(data);
  if (picture !== null) return change(picture);
  if (Array.isArray(data)) {
    const items = data.map((item) => changed(item, change));
    return items.some((item, index) => item !== data[index]) ? items : data;
  }
  const entries = Object.entries(data).map(([key, value]) => [key, value, changed(value, change)] as const);
  if (entries.every(([, before, after]) => before === after)) return data;
  return Object.fromEntries(entries.map(([key, , after]) => [key, after]));
}

/** The bytes of a picture; null if it includes none, or they are not base64. */
export function pictureBytes({ data }: Picture): Uint8Array<ArrayBuffer> | null {
  return data === undefined ? null : decodeBase64(data);
}

/** The picture with its bytes, as in a file. */
export function withBytes(picture: Picture, bytes: Uint8Array): Picture {
  return { ...picture, data: encodeBase64(bytes) };
}

/** The picture without its bytes, which are stored elsewhere. */
export function withoutBytes({ data: _bytes, ...picture }: Picture): Picture {
  return picture;
}

/** The data URL of a picture; null if it includes no bytes. */
export function pictureAddress({ type, data }: Picture): string | null {
  return data === undefined ? null : `data:${type};base64,${data}`;
}

/** The pictures that can be shown, one list for each event of the inspection. */
export function eventPictures({ events = [] }: Inspection): readonly (readonly Picture[])[] {
  return events.map(({ pictures = [] }) => pictures.flatMap((entry) => pictureIn(entry) ?? []));
}
