import * as z from "zod/mini";
import { type JsonKind, LEAVE, parseJson, recognise } from "./jsonFile.ts";
import { type Outcome, type Problem, succeeded } from "./problem.ts";
import {
  FORMAT,
  type Inspection,
  type InspectionPartly,
  inspectionPartlySchema,
  inspectionSchema,
  type Partly,
  type Slide,
  slideSchema,
  VERSION,
} from "./schema.ts";
import type { Units } from "./units.ts";

export const INSPECTION: JsonKind = { format: FORMAT, version: VERSION, called: "an inspection file" };

/**
 * Opens the text of an inspection file.
 *
 * A file of an older version is brought up to the present one; a newer or damaged file is refused with the place
 * and the reason. Unknown keys are kept.
 */
export function openInspection(fileText: string): Outcome<Inspection> {
  const data = parseJson(fileText);
  return data.ok ? readInspection(data.value) : data;
}

/** The same for data that was already parsed, such as what the browser's database holds. */
export function readInspection(data: unknown): Outcome<Inspection> {
  return readBy(inspectionSchema, data) as Outcome<Inspection>;
}

/** Opens an inspection file of which travel, lead, limit and the like may be missing, such as a log was made into. */
export function openPartly(fileText: string): Outcome<InspectionPartly> {
  const data = parseJson(fileText);
  return data.ok ? readPartly(data.value) : data;
}

/** The same for data that was already parsed. */
export function readPartly(data: unknown): Outcome<InspectionPartly> {
  return readBy(inspectionPartlySchema, data) as Outcome<InspectionPartly>;
}

function readBy(
  schema: typeof inspectionSchema | typeof inspectionPartlySchema,
  data: unknown,
): Outcome<unknown> {
  const contents = recognise(data, INSPECTION);
  if (!contents.ok) return contents;
  const parsed = schema.safeParse(contents.value, { reportInput: true });
  return parsed.success ? succeeded(parsed.data) : { ok: false, problem: problemOf(parsed.error.issues) };
}

/**
 * Opens only the slide of an inspection file, which may have no surveys and of which any part but the unit may be
 * missing: what it lacks can be said elsewhere, and the whole is checked when it is put together.
 */
export function openSlide(fileText: string): Outcome<Partly<Slide> & { readonly units: Units }> {
  const data = parseJson(fileText);
  const contents = data.ok ? recognise(data.value, INSPECTION) : data;
  if (!contents.ok) return contents;
  const parsed = slideFile.safeParse(contents.value, { reportInput: true });
  return parsed.success
    ? succeeded(parsed.data.slide)
    : { ok: false, problem: problemOf(parsed.error.issues) };
}

const slideFile = z.looseObject({ slide: z.looseObject({ units: slideSchema.shape.units }) });

/** The text to save: readable, ending in a newline, with every key the inspection came with. */
export function inspectionText(inspection: InspectionPartly): string {
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

/** What a reader of a schema finds wrong, in words. */
export function problemOf(issues: readonly z.core.$ZodIssue[]): Problem {
  const found = issues.flatMap(unfolded);
  const [first] = found;
  if (first === undefined) return { where: "", what: "the file is damaged", cure: LEAVE };
  const others = found.length - 1;
  const more = others === 0 ? "" : ` (and ${others} more ${others === 1 ? "problem" : "problems"})`;
  return {
    where: placeOf(first.path),
    what: `${describe(first)}${more}`,
    cure: "Correct it in the file and open it again.",
  };
}

/** What has every key of one of the shapes it may have is told which values are wrong, not which shapes there are. */
function unfolded(issue: z.core.$ZodIssue): readonly z.core.$ZodIssue[] {
  if (issue.code !== "invalid_union") return [issue];
  const shape = issue.errors.find((issues) => issues.every(({ input }) => input !== undefined));
  return shape?.map((inner) => ({ ...inner, path: [...issue.path, ...inner.path] })) ?? [issue];
}

function describe(issue: z.core.$ZodIssue): string {
  if (issue.code === "invalid_type") {
    if (issue.input === undefined) return `is missing; it must be ${article(issue.expected)}`;
    // What JSON writes larger than any number there is, such as 1e999.
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
