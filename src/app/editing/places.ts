import { isPlain, type Plain, valueAt, withValueAt } from "../../inspection/parts.ts";

/** A copy with the value at a dotted name; undefined takes it away, with what is left empty by that. */
export function withValueOrWithout(data: Plain, name: string, value: unknown): Plain {
  return value === undefined ? without(data, name) : withValueAt(data, name, value);
}

function without(data: Plain, name: string): Plain {
  const [key = "", ...rest] = name.split(".");
  const { [key]: _taken, ...others } = data;
  const below = valueAt(data, key);
  if (rest.length === 0 || !isPlain(below)) return others;
  const left = without(below, rest.join("."));
  return Object.keys(left).length === 0 ? others : { ...data, [key]: left };
}
