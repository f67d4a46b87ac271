import * as z from "zod/mini";
import { METHODS, takesPairs } from "./methods.ts";
import { isPair, isPositioning } from "./readingShapes.ts";

export type { Method } from "./methods.ts";

/**
 * What an inspection file may hold, version 1. All lengths are in `slide.units`, angles in degrees, dates ISO 8601.
 * Unknown keys are retained.
 */

const text = z.string();
const name = z.string().check(z.minLength(1, "must not be empty"));
/** Bounds of lengths in millimetres or inches: no slide is 100 m long, and nothing is as short as a nanometre. */
const LONGEST = 100_000;
const SHORTEST = 1e-6;
const tooLong = `must be between -${LONGEST} and ${LONGEST}`;
const finite = z.number().check(z.gte(-LONGEST, tooLong), z.lte(LONGEST, tooLong));
const positive = z
  .number()
  .check(
    z.positive({ error: "must be greater than zero", abort: true }),
    z.gte(SHORTEST, `must be at least ${SHORTEST}`),
    z.lte(LONGEST, `must be at most ${LONGEST}`),
  );
const notNegative = z
  .number()
  .check(z.nonnegative("must not be negative"), z.lte(LONGEST, `must be at most ${LONGEST}`));
const wholePositive = z.number().check(z.int("must be a whole number"), z.positive("must be at least 1"));

/** A date, or a date with a time: `2026-03-14`, `2026-03-14T09:30:00Z`, `2026-03-14T09:30`. */
const date = z
  .string()
  .check(
    z.refine(
      (value) =>
        /^\d{4}-\d{2}-\d{2}(T\d{2}:\d{2}(:\d{2}(\.\d+)?)?(Z|[+-]\d{2}:?\d{2})?)?$/.test(value) &&
        !Number.isNaN(Date.parse(value)) &&
        new Date(`${value.slice(0, 10)}T00:00:00Z`).toISOString().startsWith(value.slice(0, 10)),
      "must be a date such as 2026-03-14",
    ),
  );

const range = z
  .looseObject({ from: finite, to: finite })
  .check(z.refine((value) => value.from < value.to, '"from" must be less than "to"'));

const screwShape = {
  /** Travel for one turn of the screw: pitch × starts. */
  lead: positive,
  starts: z.optional(wholePositive),
  hand: z.optional(z.enum(["right", "left"])),
  /** The thread form, by its name in the command `thread`: `trapezoidal-30`, `acme-29` … */
  form: z.optional(name),
  nominalDiameter: z.optional(positive),
};
const screw = z.looseObject(screwShape);

const nut = z.looseObject({
  kind: z.optional(z.enum(["one-piece", "two-halves", "closing", "spring-loaded"])),
  engagedLength: z.optional(positive),
  adjustable: z.optional(z.boolean()),
  /** How much the nut can still take up. */
  takeUpLeft: z.optional(notNegative),
  takeUpUsed: z.optional(notNegative),
  clearanceNew: z.optional(notNegative),
  wearLimit: z.optional(positive),
});

const slideShape = {
  id: name,
  name,
  machine: z.optional(text),
  units: z.enum(["mm", "in"]),
  travel: range,
  workingRange: z.optional(range),
  screw,
  nut: z.optional(nut),
  backlashLimit: positive,
  runningClearance: z.optional(notNegative),
  endFloatAttainable: z.optional(notNegative),
  holdsLoad: z.optional(z.boolean()),
  springOvercome: z.optional(z.boolean()),
};

interface Ranges {
  readonly travel?: { readonly from: number; readonly to: number } | undefined;
  readonly workingRange?: { readonly from: number; readonly to: number } | undefined;
}

const isWorkingWithinTravel = ({ travel, workingRange }: Ranges): boolean =>
  travel === undefined ||
  workingRange === undefined ||
  (workingRange.from >= travel.from && workingRange.to <= travel.to);
const withinTravel = { error: "must lie within the travel", path: ["workingRange"] };

export const slideSchema = z
  .looseObject(slideShape)
  .check(z.refine((slide: Ranges) => isWorkingWithinTravel(slide), withinTravel));

/** A slide that may lack travel, lead and limit, such as one made from a log. */
const partialSlideSchema = z
  .looseObject({
    ...slideShape,
    travel: z.optional(range),
    screw: z.optional(z.looseObject({ ...screwShape, lead: z.optional(positive) })),
    backlashLimit: z.optional(positive),
  })
  .check(z.refine((slide: Ranges) => isWorkingWithinTravel(slide), withinTravel));

const marks = { time: z.optional(text), excluded: z.optional(text), note: z.optional(text) };

/** Lost motion as it was read or computed by the person at the machine. */
const backlashReading = z.looseObject({ position: finite, backlash: finite, ...marks });
/** The indicator (or, for a dial pair, the handwheel's dial in divisions) after each approach. */
const pairReading = z.looseObject({ position: finite, advancing: finite, retracting: finite, ...marks });
/** A true position read at a target position. */
const positioningReading = z.looseObject({
  target: finite,
  direction: z.enum(["advancing", "retracting"]),
  reading: finite,
  run: wholePositive,
  ...marks,
});

export const READING_SHAPES =
  "position and backlash; or position, advancing and retracting; or target, direction, reading and run";

const reading = z.union([pairReading, backlashReading, positioningReading], `needs ${READING_SHAPES}`);

const indicator = z.looseObject({
  /** Identifies the indicator, such as its number: surveys that name the same one share its error. */
  name: z.optional(text),
  resolution: z.optional(positive),
  /** Limit of error as its maker or certificate states it: the error lies within ± this. */
  error: z.optional(notNegative),
  hysteresis: z.optional(notNegative),
  /** Angle between the indicator's line of measurement and the travel. */
  angleToTravel: z.optional(
    z.number().check(z.gt(-90, "must be less than 90°"), z.lt(90, "must be less than 90°")),
  ),
});

const dial = z.looseObject({
  travelPerDivision: positive,
  divisions: z.optional(wholePositive),
  graduatedOnDiameter: z.optional(z.boolean()),
});

/** The screw's thread as it was measured at a place: its thickness at the pitch line, or a reading over wires. */
const threadPlace = z
  .looseObject({
    position: finite,
    thickness: z.optional(positive),
    overWires: z.optional(positive),
    /** Diameter of the wires. */
    wire: z.optional(positive),
  })
  .check(
    z.refine(
      ({ thickness, overWires }) => (thickness === undefined) !== (overWires === undefined),
      "needs a thickness, or a reading over wires, and not both",
    ),
  );

const surveyShape = z.looseObject({
  id: name,
  taken: date,
  stage: z.enum(["before-repair", "after-adjusting", "after-repair", "running-in", "routine"]),
  method: z.enum(METHODS),
  note: z.optional(text),
  /**
   * Any conditions of the survey. For positioning, `temperature` in °C and `expansion` in µm/(m·K), by which the screw
   * expands more than the scale that positions were read on, correct positions to 20 °C.
   */
  conditions: z.optional(z.unknown()),
  hoursOfUse: z.optional(z.number().check(z.nonnegative("must not be negative"))),
  indicator: z.optional(indicator),
  dial: z.optional(dial),
  endFloat: z.optional(z.array(notNegative)),
  drivePlay: z.optional(notNegative),
  thread: z.optional(z.array(threadPlace)),
  readings: z.array(reading),
});

/** A survey whose readings have shapes that its method allows. */
const partialSurveySchema = surveyShape.check((context) => {
  const survey = context.value;
  survey.readings.forEach((item, index) => {
    const wrongPair = isPair(item) && !takesPairs(survey.method);
    const wrongTarget = isPositioning(item) && survey.method !== "positioning";
    if (wrongPair || wrongTarget) {
      context.issues.push({
        code: "custom",
        input: item,
        path: ["readings", index],
        message: `does not fit the method "${survey.method}"`,
      });
    }
  });
});

export const surveySchema = partialSurveySchema.check((context) => {
  const survey = context.value;
  const inDivisions = survey.method === "dial-pair" && survey.readings.some(isPair);
  if (inDivisions && survey.dial === undefined) {
    context.issues.push({
      code: "custom",
      input: survey,
      path: ["dial"],
      message: "is missing: readings in dial divisions need the travel that one division stands for",
    });
  }
});

const event = z.looseObject({
  date,
  kind: z.enum(["adjusted", "parts-replaced", "other"]),
  note: text,
  pictures: z.optional(z.array(z.unknown())),
});

/** A verdict as it was given at the time; later verdicts do not replace it. */
const verdictGiven = z.looseObject({
  /** Id of its survey. */
  survey: name,
  given: date,
  /** The version of the program that gave it. */
  version: text,
  /** As in the result of the command: `adjust-nut`. */
  verdict: name,
  /** The verdict in words, as it was shown. */
  title: z.optional(text),
  /** Its chance, from 0 to 1; null if no step was recommended. */
  chance: z.nullable(z.number().check(z.gte(0, "must not be negative"), z.lte(1, "must be at most 1"))),
  summary: text,
});

export const FORMAT = "tightspot-inspection";
export const VERSION = 1;

const inspectionShape = {
  format: z.literal(FORMAT),
  version: z.literal(VERSION),
  slide: slideSchema,
  surveys: z.array(surveySchema),
  events: z.optional(z.array(event)),
  verdicts: z.optional(z.array(verdictGiven)),
};

interface Named {
  readonly slide: { readonly id: string };
  readonly surveys: readonly { readonly id: string }[];
}

/** Reports ids that are used twice. */
const uniqueIds = (context: z.core.ParsePayload<Named>): void => {
  const seen = new Set([context.value.slide.id]);
  context.value.surveys.forEach((survey, index) => {
    if (seen.has(survey.id)) {
      context.issues.push({
        code: "custom",
        input: survey.id,
        path: ["surveys", index, "id"],
        message: `"${survey.id}" is used twice; ids are unique in a file`,
      });
    }
    seen.add(survey.id);
  });
};

export const inspectionSchema = z.looseObject(inspectionShape).check(uniqueIds);

/** An inspection that may lack travel, lead, limit or the travel of a dial's division, so it cannot be assessed yet. */
export const partialInspectionSchema = z
  .looseObject({ ...inspectionShape, slide: partialSlideSchema, surveys: z.array(partialSurveySchema) })
  .check(uniqueIds);

/** Data with any part missing, such as a slide that is still being described. */
export type DeepPartial<T> = T extends readonly unknown[]
  ? T
  : T extends object
    ? { readonly [Key in keyof T]?: DeepPartial<T[Key]> }
    : T;

type DeepReadonly<T> = T extends (infer Item)[]
  ? readonly DeepReadonly<Item>[]
  : T extends object
    ? { readonly [Key in keyof T]: DeepReadonly<T[Key]> }
    : T;

export type Inspection = DeepReadonly<z.infer<typeof inspectionSchema>>;
export type PartialInspection = DeepReadonly<z.infer<typeof partialInspectionSchema>>;
export type Slide = DeepReadonly<z.infer<typeof slideSchema>>;
export type Survey = DeepReadonly<z.infer<typeof surveySchema>>;
export type Stage = Survey["stage"];
/** An event of the slide: a repair, or anything else that was done or happened. */
export type SlideEvent = DeepReadonly<z.infer<typeof event>>;
export type EventKind = SlideEvent["kind"];
export type GivenVerdict = DeepReadonly<z.infer<typeof verdictGiven>>;
export type BacklashReading = DeepReadonly<z.infer<typeof backlashReading>>;
export type PairReading = DeepReadonly<z.infer<typeof pairReading>>;
export type PositioningReading = DeepReadonly<z.infer<typeof positioningReading>>;
export type Reading = BacklashReading | PairReading | PositioningReading;
