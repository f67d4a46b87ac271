/** Plain nested data, such as a slide of which any part may be missing. */
export type Plain = Readonly<Record<string, unknown>>;

export function isPlain(value: unknown): value is Plain {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** What stands at a dotted name such as `screw.lead`; undefined where nothing does. */
export function valueAt(data: object, name: string): unknown {
  return name
    .split(".")
    .reduce<unknown>(
      (part, key) => (isPlain(part) && Object.hasOwn(part, key) ? part[key] : undefined),
      data,
    );
}

/** A copy with the value at a dotted name; what is on the way and missing is made. */
export function withValueAt<Data extends object>(data: Data, name: string, value: unknown): Data {
  const [key = "", ...rest] = name.split(".");
  if (rest.length === 0) return { ...data, [key]: value };
  const below = valueAt(data, key);
  return { ...data, [key]: withValueAt(isPlain(below) ? below : {}, rest.join("."), value) };
}

/** The base with what the other says in its place, key by key and part by part; lists are replaced whole. */
export function merged(base: Plain, other: Plain): Plain {
  const entries = Object.entries(other).map(([key, value]): readonly [string, unknown] => {
    const below = valueAt(base, key);
    return [key, isPlain(below) && isPlain(value) ? merged(below, value) : value];
  });
  return { ...base, ...Object.fromEntries(entries) };
}
