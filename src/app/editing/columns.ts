import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import { isPair, isPositioning } from "../../inspection/readingShapes.ts";
import type { Reading, Survey } from "../../inspection/schema.ts";
import type { Units } from "../../inspection/units.ts";
import { type Counts, readTypedFigure } from "../../intake/typedFigure.ts";

export type ColumnName =
  | "position"
  | "backlash"
  | "advancing"
  | "retracting"
  | "target"
  | "direction"
  | "reading"
  | "run";

export interface Column {
  readonly name: ColumnName;
  readonly label: string;
  readonly counts: Counts;
  readonly read: (text: string) => Outcome<number | string>;
}

/** The forms in which a reading may be written down. */
export type ReadingForm = "backlash" | "pair" | "positioning";

export const FORM_COLUMNS: Readonly<Record<ReadingForm, readonly ColumnName[]>> = {
  backlash: ["position", "backlash"],
  pair: ["position", "advancing", "retracting"],
  positioning: ["target", "direction", "reading", "run"],
};

export function readingForm(reading: Reading): ReadingForm {
  if (isPair(reading)) return "pair";
  return isPositioning(reading) ? "positioning" : "backlash";
}

/** The forms of a survey's readings; without readings, the form of its method. */
export function readingForms({ method, readings }: Survey): readonly ReadingForm[] {
  const present = new Set(readings.map(readingForm));
  if (present.size > 0) return [...present];
  if (method === "positioning") return ["positioning"];
  return method === "push-pull" ? ["backlash"] : ["pair"];
}

/** By the forms of the readings, the method and the units. */
const cache = new Map<string, readonly Column[]>();

/** The columns of a survey's table, with lengths in the slide's units. Equal arguments give the same object. */
export function columnsOf(survey: Survey, units: Units): readonly Column[] {
  const forms = readingForms(survey);
  const key = [...forms, survey.method, units].join();
  const columns = cache.get(key) ?? columnsFor(forms, survey, units);
  cache.set(key, columns);
  return columns;
}

function columnsFor(forms: readonly ReadingForm[], { method }: Survey, units: Units): readonly Column[] {
  const names = new Set(forms.flatMap((form) => FORM_COLUMNS[form]));
  const read = method === "dial-pair" ? "divisions" : units;
  const column = (name: ColumnName, counts: Counts): Column => ({
    name,
    label: `${name.charAt(0).toUpperCase()}${name.slice(1)}`,
    counts,
    read: (text) => readTypedFigure(text, counts),
  });
  const columns: Readonly<Record<ColumnName, Column>> = {
    position: column("position", units),
    backlash: column("backlash", units),
    advancing: column("advancing", read),
    retracting: column("retracting", read),
    target: column("target", units),
    direction: { ...column("direction", "plain"), read: readDirection },
    reading: column("reading", units),
    run: { ...column("run", "plain"), read: readRun },
  };
  return [...names].map((name) => columns[name]);
}

/** `a`, `adv`, `advancing` or `+`, and `r`, `ret`, `retracting` or `-`. */
function readDirection(text: string): Outcome<string> {
  const typed = text.trim().toLowerCase();
  if (typed === "+" || "advancing".startsWith(typed)) return succeeded("advancing");
  if (typed === "-" || typed === "−" || "retracting".startsWith(typed)) return succeeded("retracting");
  return failed("", `is “${text}”, which is no direction`, "Type a for advancing or r for retracting.");
}

function readRun(text: string): Outcome<number> {
  const run = readTypedFigure(text, "plain");
  if (!run.ok || (Number.isInteger(run.value) && run.value > 0)) return run;
  return failed("", `is “${text}”, which is no count`, "Count the runs from 1.");
}
