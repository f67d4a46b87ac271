import type { Settings } from "../../analysis/decide/settings.ts";
import type { Slide, Survey } from "../../inspection/schema.ts";
import type { Topic } from "../help/topics.ts";

export type FieldKind = "text" | "note" | "date" | "length" | "lengths" | "number" | "yes-no" | "choice";

/** A field: where its value goes, how it is written, and what is assumed if it is empty. */
export interface Field {
  /** Its place in the slide or in the survey: `nut.engagedLength`. */
  readonly path: string;
  readonly label: string;
  readonly kind: FieldKind;
  /** Its unit where that is not the slide's unit of length. */
  readonly unit?: string;
  readonly hint?: string;
  /** The help topic about it. */
  readonly about?: Topic;
  readonly choices?: readonly (readonly [value: string, label: string])[];
  /** The value assumed if the field is empty: a length in millimetres, or words. */
  readonly assumed?: (settings: Settings) => number | string;
  /** Whether the field is shown. */
  readonly when?: (about: { readonly slide: Slide; readonly survey: Survey }) => boolean;
}

export interface FieldGroup {
  readonly title: string;
  readonly of: "slide" | "survey";
  readonly fields: readonly Field[];
}

const UNITS: Field["choices"] = [
  ["mm", "mm"],
  ["in", "inch"],
];

export const METHODS = [
  ["push-pull", "Push and pull"],
  ["indicator-pair", "Indicator, read from both sides"],
  ["dial-pair", "Handwheel dial, read from both sides"],
  ["positioning", "Positions at targets, both ways"],
] as const;

export const STAGES = [
  ["routine", "Routine"],
  ["before-repair", "Before repair"],
  ["after-adjusting", "After adjusting"],
  ["after-repair", "After repair"],
  ["running-in", "Running in"],
] as const;

const isPairMethod = (survey: Survey): boolean => survey.method !== "push-pull";
const usesIndicator = (survey: Survey): boolean => survey.method !== "dial-pair";

/** The fields of a new inspection; everything else has a default. */
export const SETUP_FIELDS = {
  units: { path: "units", label: "Units", kind: "choice", choices: UNITS },
  from: { path: "travel.from", label: "Travel from", kind: "length" },
  to: { path: "travel.to", label: "Travel to", kind: "length" },
  lead: {
    path: "screw.lead",
    label: "Lead of the screw",
    kind: "length",
    hint: "Travel for one turn of the screw.",
  },
  limit: {
    path: "backlashLimit",
    label: "Limit",
    kind: "length",
    hint: "Of lost motion: the maker’s figure, if there is one.",
    about: "limit",
  },
} as const satisfies Record<string, Field>;

export const METHOD_FIELD: Field = {
  path: "method",
  label: "Way of measuring",
  kind: "choice",
  choices: METHODS,
};

export const END_FLOAT_FIELD: Field = {
  path: "endFloat",
  label: "End float of the screw",
  kind: "lengths",
  about: "end-float",
  assumed: () => "not measured",
  hint: "One reading or more, with spaces between.",
};

/** The fields needed to read a handwheel's dial. */
export const DIAL_FIELDS: readonly Field[] = [
  {
    path: "dial.travelPerDivision",
    label: "Travel per division",
    kind: "length",
    hint: "As printed on the dial.",
  },
  {
    path: "dial.divisions",
    label: "Divisions round the dial",
    kind: "number",
    hint: "For readings on either side of its zero.",
  },
  {
    path: "dial.graduatedOnDiameter",
    label: "Graduated on diameter",
    kind: "yes-no",
    assumed: () => "no (assumed)",
    hint: "The dial shows twice the slide’s movement.",
  },
];

export const DETAILS: readonly FieldGroup[] = [
  {
    title: "Slide",
    of: "slide",
    fields: [
      { path: "name", label: "Name", kind: "text" },
      { path: "machine", label: "Machine", kind: "text" },
      SETUP_FIELDS.units,
      SETUP_FIELDS.from,
      SETUP_FIELDS.to,
      {
        path: "workingRange.from",
        label: "Working range from",
        kind: "length",
        assumed: ({ workingRange }) => workingRange.from,
        hint: "Where the slide is used, and the limit holds.",
      },
      {
        path: "workingRange.to",
        label: "Working range to",
        kind: "length",
        assumed: ({ workingRange }) => workingRange.to,
      },
      SETUP_FIELDS.limit,
      {
        path: "holdsLoad",
        label: "Holds up a load",
        kind: "yes-no",
        assumed: () => "no (assumed)",
        hint: "A knee, head, jack, vise or hoist.",
      },
    ],
  },
  {
    title: "Screw and thrust bearing",
    of: "slide",
    fields: [
      SETUP_FIELDS.lead,
      { path: "screw.starts", label: "Starts", kind: "number", assumed: () => "1 (assumed)" },
      { path: "screw.nominalDiameter", label: "Nominal diameter", kind: "length" },
      {
        path: "endFloatAttainable",
        label: "End float attainable",
        kind: "length",
        assumed: ({ endFloatAttainable }) => endFloatAttainable,
        hint: "What a thrust bearing in order can be set to.",
      },
    ],
  },
  {
    title: "Nut",
    of: "slide",
    fields: [
      {
        path: "nut.kind",
        label: "Kind",
        kind: "choice",
        choices: [
          ["one-piece", "One piece"],
          ["two-halves", "Two halves"],
          ["closing", "Closing"],
          ["spring-loaded", "Spring-loaded"],
        ],
      },
      {
        path: "springOvercome",
        label: "Reading force exceeded the spring",
        kind: "yes-no",
        assumed: () => "no (assumed)",
        when: ({ slide }) => slide.nut?.kind === "spring-loaded",
      },
      {
        path: "nut.engagedLength",
        label: "Engaged length",
        kind: "length",
        assumed: ({ engagedLength }) => engagedLength,
      },
      { path: "nut.adjustable", label: "Adjustable", kind: "yes-no", assumed: () => "yes (assumed)" },
      {
        path: "runningClearance",
        about: "running-clearance",
        label: "Running clearance",
        kind: "length",
        assumed: ({ runningClearance }) => runningClearance,
        hint: "Left at the tight spot when the nut is taken up.",
      },
      {
        path: "nut.takeUpLeft",
        about: "take-up",
        label: "Take-up left",
        kind: "length",
        assumed: () => "not known",
        when: ({ slide }) => slide.nut?.adjustable !== false,
      },
      {
        path: "nut.takeUpUsed",
        label: "Take-up used",
        kind: "length",
        assumed: ({ takeUpUsed }) => takeUpUsed,
      },
      {
        path: "nut.clearanceNew",
        label: "Clearance when new",
        kind: "length",
        assumed: ({ clearanceNew }) => clearanceNew,
      },
      {
        path: "nut.wearLimit",
        label: "Limit on nut wear",
        kind: "length",
        assumed: ({ wearLimit }) => wearLimit,
        hint: "A quarter of the thread’s thickness, unless the maker says otherwise.",
      },
    ],
  },
  {
    title: "This survey",
    of: "survey",
    fields: [
      { path: "taken", label: "Date", kind: "date" },
      { path: "stage", label: "Stage", kind: "choice", choices: STAGES },
      {
        path: "drivePlay",
        label: "Drive play",
        kind: "length",
        assumed: () => "0 (assumed)",
        hint: "Key, pin or gear play: part of a turn × lead.",
        when: ({ survey }) => isPairMethod(survey),
      },
      {
        path: "indicator.resolution",
        label: "Indicator’s resolution",
        kind: "length",
        assumed: () => "from the readings",
        when: ({ survey }) => usesIndicator(survey),
      },
      {
        path: "indicator.angleToTravel",
        label: "Indicator’s angle to the travel",
        kind: "number",
        unit: "°",
        assumed: () => "0 (assumed)",
        when: ({ survey }) => usesIndicator(survey),
      },
      {
        path: "indicator.error",
        label: "Indicator’s limit of error, ±",
        kind: "length",
        assumed: () => "not known",
        when: ({ survey }) => usesIndicator(survey),
      },
      {
        path: "indicator.hysteresis",
        label: "Indicator’s hysteresis",
        kind: "length",
        assumed: () => "not known",
        when: ({ survey }) => usesIndicator(survey),
      },
      { path: "hoursOfUse", label: "Hours of use so far", kind: "number", unit: "h" },
      { path: "note", label: "Note", kind: "note" },
    ],
  },
];

export const EVERY_FIELD: readonly Field[] = [
  ...DETAILS.flatMap(({ fields }) => fields),
  METHOD_FIELD,
  END_FLOAT_FIELD,
  ...DIAL_FIELDS,
];

/** The field with this path. Throws if there is none. */
export function fieldAt(path: string): Field {
  const found = EVERY_FIELD.find((field) => field.path === path);
  if (found === undefined) throw new Error(`There is no field at ${path}.`);
  return found;
}
