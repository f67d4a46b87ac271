import fc from "fast-check";
import type { Inspection, Method } from "../../src/inspection/schema.ts";

/** Inspections as varied as the schema allows, for properties that hold for any. */

const optional: { requiredKeys: [] } = { requiredKeys: [] };
const length = fc.oneof(
  fc.double({ min: -100_000, max: 100_000, noNaN: true }),
  fc.integer({ min: -99_999, max: 99_999 }).map((thousandths) => thousandths / 1000),
);
const positive = fc.oneof(
  fc.double({ min: 1e-6, max: 100_000, noNaN: true }),
  fc.constantFrom(0.15, 1.25, 1.234, 4),
);
const notNegative = fc.oneof(
  fc.double({ min: 0, max: 100_000, noNaN: true }),
  fc.constantFrom(0, 0.025, 2.125),
);
const count = fc.integer({ min: 1, max: 1000 });
const text = fc.oneof(
  fc.string({ unit: "grapheme" }),
  fc.string({ unit: "binary" }),
  fc.constantFrom(
    ...[
      "=1+2",
      "+1",
      "-0.2",
      "@A1",
      "\tx",
      "\rx",
      "＝1",
      '"quoted"',
      "no",
      "-",
      "n/a",
      "",
      " ",
      "1,234",
      "0.5",
      "true",
    ],
    ...[
      "a;b,c|d",
      "line\nbreak\r\n1,2,3",
      "50;0,21",
      "#",
      "{}",
      "[1]",
      "null",
      "slide.name: x",
      "position,backlash",
      '1/4"',
    ],
    ...["Umkehrspiel größer", "\uFEFFmark", "\uD800", "ends;", "=", '"', '""', "'0.2"],
  ),
);
const name = text.filter((value) => value !== "");
const known = new Set(
  (
    "format version slide surveys events id name machine units travel workingRange from to screw lead starts hand form " +
    "nominalDiameter nut kind engagedLength adjustable takeUpLeft takeUpUsed clearanceNew wearLimit backlashLimit " +
    "runningClearance endFloatAttainable holdsLoad springOvercome taken stage method note conditions hoursOfUse " +
    "indicator resolution error hysteresis angleToTravel dial travelPerDivision divisions graduatedOnDiameter endFloat " +
    "drivePlay readings position backlash advancing retracting target direction reading run time excluded __proto__"
  ).split(" "),
);
const json = fc.jsonValue({ maxDepth: 2 }).map((value): unknown => JSON.parse(JSON.stringify(value)));
/** Keys that the schema does not know: any text, and names that differ from known ones by a capital. */
const unknownKeys = fc.oneof(
  fc.constant({}),
  fc.dictionary(
    fc
      .oneof(fc.string(), fc.constantFrom("bay", "Name", "UNITS", "gear.box", "maker", "Travel", "a b", ""))
      .filter((key) => !known.has(key)),
    fc.oneof(text, json),
    { maxKeys: 3 },
  ),
);

function loose<Shape extends object>(shape: fc.Arbitrary<Shape>): fc.Arbitrary<Shape> {
  return fc.tuple(unknownKeys, shape).map(([others, value]) => ({ ...others, ...value }));
}

const range = loose(
  fc
    .tuple(length, length)
    .filter(([a, b]) => a !== b)
    .map(([a, b]) => ({ from: Math.min(a, b), to: Math.max(a, b) })),
);
const date = fc
  .date({ min: new Date("1980-01-01"), max: new Date("2080-01-01"), noInvalidDate: true })
  .map((day) => day.toISOString())
  .chain((iso) => fc.constantFrom(iso.slice(0, 10), iso.slice(0, 16), iso));

const slide = loose(
  fc
    .record(
      {
        id: name,
        name,
        machine: text,
        units: fc.constantFrom("mm" as const, "in" as const),
        travel: range,
        screw: loose(
          fc.record(
            {
              lead: positive,
              starts: count,
              hand: fc.constantFrom("right" as const, "left" as const),
              form: name,
              nominalDiameter: positive,
            },
            { requiredKeys: ["lead"] },
          ),
        ),
        nut: loose(
          fc.record(
            {
              kind: fc.constantFrom("one-piece", "two-halves", "closing", "spring-loaded"),
              engagedLength: positive,
              adjustable: fc.boolean(),
              takeUpLeft: notNegative,
              takeUpUsed: notNegative,
              clearanceNew: notNegative,
              wearLimit: positive,
            },
            optional,
          ),
        ),
        backlashLimit: positive,
        runningClearance: notNegative,
        endFloatAttainable: notNegative,
        holdsLoad: fc.boolean(),
        springOvercome: fc.boolean(),
      },
      { requiredKeys: ["id", "name", "units", "travel", "screw", "backlashLimit"] },
    )
    .chain((made) =>
      fc.boolean().map((works) => (works ? { ...made, workingRange: { ...made.travel } } : made)),
    ),
);

const marks = { time: text, excluded: text, note: text };
const backlash = loose(
  fc.record({ position: length, backlash: length, ...marks }, { requiredKeys: ["position", "backlash"] }),
);
const pair = loose(
  fc.record(
    { position: length, advancing: length, retracting: length, ...marks },
    { requiredKeys: ["position", "advancing", "retracting"] },
  ),
);
const positioning = loose(
  fc.record(
    {
      target: length,
      direction: fc.constantFrom("advancing", "retracting"),
      reading: length,
      run: count,
      ...marks,
    },
    { requiredKeys: ["target", "direction", "reading", "run"] },
  ),
);

const readingsBy: Readonly<Record<Method, fc.Arbitrary<object>>> = {
  "push-pull": backlash,
  "indicator-pair": fc.oneof(pair, backlash),
  "dial-pair": fc.oneof(pair, backlash),
  positioning: fc.oneof(positioning, backlash),
};

const survey = fc
  .constantFrom("push-pull" as const, "indicator-pair" as const, "dial-pair" as const, "positioning" as const)
  .chain((method) =>
    loose(
      fc.record(
        {
          id: name,
          taken: date,
          stage: fc.constantFrom("before-repair", "after-adjusting", "after-repair", "running-in", "routine"),
          method: fc.constant(method),
          note: text,
          conditions: json,
          hoursOfUse: notNegative,
          indicator: loose(
            fc.record(
              {
                resolution: positive,
                error: notNegative,
                hysteresis: notNegative,
                angleToTravel: fc.double({ min: -89, max: 89, noNaN: true }),
              },
              optional,
            ),
          ),
          dial: loose(
            fc.record(
              { travelPerDivision: positive, divisions: count, graduatedOnDiameter: fc.boolean() },
              { requiredKeys: ["travelPerDivision"] },
            ),
          ),
          endFloat: fc.array(notNegative, { maxLength: 3 }),
          drivePlay: notNegative,
          readings: fc.array(readingsBy[method], { maxLength: 6 }),
        },
        {
          requiredKeys: [
            "id",
            "taken",
            "stage",
            "method",
            "readings",
            ...(method === "dial-pair" ? (["dial"] as const) : []),
          ],
        },
      ),
    ),
  );

const event = loose(
  fc.record(
    {
      date,
      kind: fc.constantFrom("adjusted", "parts-replaced", "other"),
      note: text,
      pictures: fc.array(json),
    },
    {
      requiredKeys: ["date", "kind", "note"],
    },
  ),
);

/** An inspection with one survey or more. */
export const anyInspection: fc.Arbitrary<Inspection> = loose(
  fc.record(
    {
      format: fc.constant("tightspot-inspection" as const),
      version: fc.constant(1 as const),
      slide,
      surveys: fc.array(survey, { minLength: 1, maxLength: 2 }),
      events: fc.array(event, { maxLength: 2 }),
    },
    { requiredKeys: ["format", "version", "slide", "surveys"] },
  ),
).filter(
  ({ slide: { id }, surveys }) =>
    new Set([id, ...surveys.map((each) => each.id)]).size === surveys.length + 1,
) as fc.Arbitrary<Inspection>;
