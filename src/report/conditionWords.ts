import { isPlain } from "../inspection/parts.ts";

/** What this program knows the meaning of; what else is noted stays under the name that it was given. */
const KNOWN: Readonly<Record<string, (value: unknown) => string>> = {
  temperature: (value) => `${written(value)} °C`,
  expansion: (value) => `the screw expands more than the scale by ${written(value)} µm/(m·K)`,
};

/** What was noted of the conditions of a survey, whatever it is. */
export function conditionWords(conditions: unknown): string {
  if (conditions === undefined || conditions === null || conditions === "") return "none noted";
  if (!isPlain(conditions)) return written(conditions);
  const words = Object.entries(conditions).map(
    ([name, value]) => KNOWN[name]?.(value) ?? `${name}: ${written(value)}`,
  );
  return words.length === 0 ? "none noted" : words.join(", ");
}

function written(value: unknown): string {
  return typeof value === "string" ? value : JSON.stringify(value);
}
