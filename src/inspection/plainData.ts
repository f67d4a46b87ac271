/** Plain nested data, such as a slide with parts missing. */
export type PlainObject = Readonly<Record<string, unknown>>;

/** Whether a value is an object, and not a list. */
export function isPlainObject(value: unknown): value is PlainObject {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** The value at a dotted name such as `screw.lead`; undefined if there is none. */
export function valueAt(data: object, name: string): unknown {
  return name
    .split(".")
    .reduce<unknown>(
      (part, key) => (isPlainObject(part) && Object.hasOwn(part, key) ? part[key] : undefined),
      data,
    );
}

/** A copy with the value at a dotted name; missing objects on the way are created. */
export function withValueAt<Data extends object>(data: Data, name: string, value: unknown): Data {
  const [key = "", ...rest] = name.split(".");
  if (rest.length === 0) return { ...data, [key]: value };
  const below = valueAt(data, key);
  return { ...data, [key]: withValueAt(isPlainObject(below) ? below : {}, rest.join("."), value) };
}

/** The base overridden by the other, recursively by key; lists are replaced as a whole. */
export function merged(base: PlainObject, other: PlainObject): PlainObject {
  const entries = Object.entries(other).map(([key, value]): readonly [string, unknown] => {
    const below = valueAt(base, key);
    return [key, isPlainObject(below) && isPlainObject(value) ? merged(below, value) : value];
  });
  return { ...base, ...Object.fromEntries(entries) };
}
