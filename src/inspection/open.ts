import * as z from "zod/mini";
import { checkFormat, FILE_UNCHANGED, type JsonKind, parseJson } from "./jsonFile.ts";
import { type Outcome, type Problem, succeeded } from "./problem.ts";
import {
  type DeepPartial,
  FORMAT,
  type Inspection,
  inspectionSchema,
  type PartialInspection,
  partialInspectionSchema,
  type Slide,
  slideSchema,
  VERSION,
} from "./schema.ts";
import type { Units } from "./units.ts";

export const INSPECTION: JsonKind = { format: FORMAT, version: VERSION, called: "an inspection file" };

/**
 * Opens the text of an inspection file. A newer or damaged file is refused with place and reason. Unknown keys are
 * retained.
 */
export function openInspection(fileText: string): Outcome<Inspection> {
  const data = parseJson(fileText);
  return data.ok ? readInspection(data.value) : data;
}

/** The same for parsed data, such as a record of the browser's database. */
export function readInspection(data: unknown): Outcome<Inspection> {
  return readWith(inspectionSchema, data) as Outcome<Inspection>;
}

/** Opens an inspection file that may lack travel, lead, limit and so on, such as one made from a log. */
export function openPartialInspection(fileText: string): Outcome<PartialInspection> {
  const data = parseJson(fileText);
  return data.ok ? readPartialInspection(data.value) : data;
}

/** The same for parsed data. */
export function readPartialInspection(data: unknown): Outcome<PartialInspection> {
  return readWith(partialInspectionSchema, data) as Outcome<PartialInspection>;
}

function readWith(
  schema: typeof inspectionSchema | typeof partialInspectionSchema,
  data: unknown,
): Outcome<unknown> {
  const contents = checkFormat(data, INSPECTION);
  if (!contents.ok) return contents;
  const parsed = schema.safeParse(contents.value, { reportInput: true });
  return parsed.success ? succeeded(parsed.data) : { ok: false, problem: problemOf(parsed.error.issues) };
}

/**
 * Opens only the slide of an inspection file. Any part but its unit may be missing; the whole is checked once it is
 * complete.
 */
export function openSlide(fileText: string): Outcome<DeepPartial<Slide> & { readonly units: Units }> {
  const data = parseJson(fileText);
  const contents = data.ok ? checkFormat(data.value, INSPECTION) : data;
  if (!contents.ok) return contents;
  const parsed = slideFile.safeParse(contents.value, { reportInput: true });
  return parsed.success
    ? succeeded(parsed.data.slide)
    : { ok: false, problem: problemOf(parsed.error.issues) };
}

const slideFile = z.looseObject({ slide: z.looseObject({ units: slideSchema.shape.units }) });

/** The text of an inspection file: indented, ending in a newline, with unknown keys. */
export function inspectionText(inspection: PartialInspection): string {
  return `${JSON.stringify(inspection, null, 2)}\n`;
}

/** `["surveys", 0, "readings", 3, "position"]` as `surveys[0].readings[3].position`. */
function placeOf(path: readonly PropertyKey[]): string {
  return path
    .map((step, index) =>
      typeof step === "number" ? `[${step}]` : `${index === 0 ? "" : "."}${String(step)}`,
    )
    .join("");
}

/** The problem that schema issues describe. */
export function problemOf(issues: readonly z.core.$ZodIssue[]): Problem {
  const found = issues.flatMap(withoutUnions);
  const [first] = found;
  if (first === undefined) return { where: "", what: "the file is damaged", cure: FILE_UNCHANGED };
  const others = found.length - 1;
  const more = others === 0 ? "" : ` (and ${others} more ${others === 1 ? "problem" : "problems"})`;
  return {
    where: placeOf(first.path),
    what: `${describe(first)}${more}`,
    cure: "Correct it in the file and open it again.",
  };
}

/** If a value has every key of one shape of a union, its issues are the wrong values of that shape. */
function withoutUnions(issue: z.core.$ZodIssue): readonly z.core.$ZodIssue[] {
  if (issue.code !== "invalid_union") return [issue];
  const shape = issue.errors.find((issues) => issues.every(({ input }) => input !== undefined));
  return shape?.map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] })) ?? [issue];
}

function describe(issue: z.core.$ZodIssue): string {
  if (issue.code === "invalid_type") {
    if (issue.input === undefined) return `is missing; it must be ${article(issue.expected)}`;
    // JSON may contain numbers that are too large, such as 1e999.
    if (issue.input === Infinity || issue.input === -Infinity) return "is too large a number";
    return `is ${JSON.stringify(issue.input)?.slice(0, 40)}; it must be ${article(issue.expected)}`;
  }
  if (issue.code === "invalid_value") {
    const found =
      issue.input === undefined ? "is missing" : `is ${JSON.stringify(issue.input)?.slice(0, 40)}`;
    return `${found}; it must be ${issue.values.map((value) => JSON.stringify(value)).join(" or ")}`;
  }
  return issue.message;
}

function article(expected: string): string {
  if (expected === "int") return "a whole number";
  if (expected === "array" || expected === "object") return `an ${expected}`;
  return expected === "boolean" ? "true or false" : `a ${expected}`;
}
