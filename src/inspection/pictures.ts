import * as z from "zod/mini";
import { base64Of, bytesOf } from "./base64.ts";
import { isPlain } from "./parts.ts";
import type { Inspection } from "./schema.ts";

const size = z.number().check(z.int(), z.positive());

/**
 * A picture of an event. In a file on a disk it carries its bytes; where inspections are kept, only their name.
 * What an event holds beside such pictures is kept as it is.
 */
const pictureSchema = z.looseObject({
  id: z.string().check(z.minLength(1)),
  /** The media type: `image/jpeg`. */
  type: z.string().check(z.regex(/^image\/[a-z0-9][a-z0-9.+-]*$/)),
  /** In pixels. */
  width: size,
  height: size,
  /** The name of the file that it came from. */
  name: z.optional(z.string()),
  /** What it shows, for those who cannot see it. */
  caption: z.optional(z.string()),
  /** Its bytes in base64. */
  data: z.optional(z.string()),
});

export type Picture = Readonly<z.infer<typeof pictureSchema>>;

/** An entry of an event's pictures, if it is one that this program can show. */
export function pictureIn(entry: unknown): Picture | null {
  // Most of what is looked through is no picture, and told at once.
  if (!isPlain(entry) || typeof entry.type !== "string" || typeof entry.id !== "string") return null;
  return pictureSchema.safeParse(entry).success ? (entry as Picture) : null;
}

/** Every picture in any data, wherever it stands: in an event, or in a step that can be taken back. */
export function picturesIn(data: unknown): readonly Picture[] {
  if (typeof data !== "object" || data === null) return [];
  const picture = pictureIn(data);
  return picture === null ? Object.values(data).flatMap(picturesIn) : [picture];
}

/** The data with every picture in it changed; what is without pictures stays the same object. */
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

/** The bytes that a picture carries; null where it carries none, or what is no base64. */
export function carriedBytes({ data }: Picture): Uint8Array<ArrayBuffer> | null {
  return data === undefined ? null : bytesOf(data);
}

/** The picture with its bytes, as in a file on a disk. */
export function carrying(picture: Picture, bytes: Uint8Array): Picture {
  return { ...picture, data: base64Of(bytes) };
}

/** The picture without its bytes, which are kept elsewhere. */
export function light({ data: _bytes, ...picture }: Picture): Picture {
  return picture;
}

/** The address under which a document shows a picture that carries its bytes; null where it carries none. */
export function pictureAddress({ type, data }: Picture): string | null {
  return data === undefined ? null : `data:${type};base64,${data}`;
}

/** The pictures of an inspection's events that can be shown, with the event's place among them. */
export function eventPictures({ events = [] }: Inspection): readonly (readonly Picture[])[] {
  return events.map(({ pictures = [] }) => pictures.flatMap((entry) => pictureIn(entry) ?? []));
}
