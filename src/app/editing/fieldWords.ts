import type { Problem } from "../../inspection/problem.ts";
import { EVERY_FIELD } from "./fieldList.ts";

/** Places that have no field of their own, by what the reader sees of them. */
const OTHERS: Readonly<Record<string, string>> = {
  workingRange: "Working range",
  dial: "Travel per division",
};

/** What is wrong with what was typed into a field, in sentences on that field or on the one that it does not suit. */
export function fieldProblemWords({ where, what, cure }: Problem, path: string): string {
  const place = where.replace(/^slide\.|^surveys\[\d+\]\./, "");
  const sentence = `${whatIsWrong(place === "" ? path : place, what)}.`;
  return cure === "" ? sentence : `${sentence} ${cure}`;
}

function whatIsWrong(place: string, what: string): string {
  const [from, to] = [labelOf(`${place}.from`), labelOf(`${place}.to`)];
  if (from !== undefined && to !== undefined && what.startsWith('"from"'))
    return what.replace('"from"', from).replace('"to"', to);
  const [, reading] = /^readings\[(\d+)\]/.exec(place) ?? [];
  const name =
    reading === undefined ? labelOf(place.replace(/\[\d+\]$/, "")) : `Reading ${Number(reading) + 1}`;
  return `${name ?? OTHERS[place] ?? place} ${what.startsWith("is missing;") ? "is needed, too" : what}`;
}

function labelOf(path: string): string | undefined {
  return EVERY_FIELD.find((field) => field.path === path)?.label;
}
