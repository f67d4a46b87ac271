import { METHODS, type Method, takesPairs } from "../inspection/methods.ts";
import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { type DataLine, lineAt } from "./dataLines.ts";
import { columnsOf, type Layout, type ValueColumns } from "./layout.ts";
import type { UnitsFound } from "./units.ts";

/** The method that a `survey.method` line gives. */
export function statedMethod(lines: readonly DataLine[]): Outcome<Method | undefined> {
  const line = lineAt(lines, "survey", "method");
  if (line === undefined) return succeeded(undefined);
  const method = METHODS.find((each) => each === line.text.toLowerCase());
  return method === undefined
    ? failed(
        `line ${line.row.line}`,
        `survey.method is "${line.text}"`,
        `It must be ${METHODS.join(" or ")}.`,
      )
    : succeeded(method);
}

/**
 * How the readings were taken: as stated, else as their columns show.
 *
 * @param found the units found in each column
 */
export function settleMethod(
  stated: Method | undefined,
  { ways }: Layout,
  found: ReadonlyMap<number, UnitsFound>,
): Outcome<Method> {
  const values = ways.flat();
  const isPair = (value: ValueColumns): boolean => "advancing" in value || "half" in value;
  const read = values.filter((value) => isPair(value) || ways.length === 1).flatMap(columnsOf);
  const units = read.flatMap((column) => found.get(column) ?? []);
  if (values.some((value) => "reading" in value)) return succeeded("positioning");
  return values.some(isPair) ? pairMethod(stated, units) : singleMethod(stated, units);
}

function singleMethod(stated: Method | undefined, units: readonly UnitsFound[]): Outcome<Method> {
  return units.some(({ heading }) => heading === "divisions")
    ? failed(
        "",
        "the lost motion is in divisions of a dial",
        "Give the two readings of the dial, advancing and retracting, or the lost motion as a length.",
      )
    : succeeded(stated ?? "push-pull");
}

function pairMethod(stated: Method | undefined, units: readonly UnitsFound[]): Outcome<Method> {
  const headed = units.map(({ heading }) => heading);
  const inDivisions = headed.includes("divisions");
  const inLengths = headed.some((unit) => unit !== undefined && unit !== "divisions");
  const cellsInDivisions = units.some(({ cells }) => cells.has("divisions"));
  const method = stated ?? (inDivisions || (!inLengths && cellsInDivisions) ? "dial-pair" : "indicator-pair");
  if (!takesPairs(method)) {
    return failed(
      "",
      `advancing and retracting do not fit the method ${method}`,
      "Leave the method out, give indicator-pair or dial-pair, or give a column of backlash.",
    );
  }
  const contradiction = method === "dial-pair" ? inLengths : inDivisions;
  return contradiction
    ? failed(
        "",
        `the method is ${method}, but the headings give ${method === "dial-pair" ? "a unit of length" : "divisions"}`,
        "Readings of a dial pair are in divisions, those of an indicator pair in mm, µm, in or thou.",
      )
    : succeeded(method);
}
