import type { Random } from "../../src/analysis/statistics/random.ts";
import { isPair, isPositioning } from "../../src/inspection/readingShapes.ts";
import type {
  Inspection,
  PairReading,
  PositioningReading,
  Reading,
  Slide,
  Survey,
} from "../../src/inspection/schema.ts";
import { between } from "./wear.ts";

/** What goes wrong while a survey is taken. */
export interface Circumstances {
  readonly wobble?: boolean;
  readonly drift?: boolean;
  readonly slip?: boolean;
  /** Scatter grows along the travel. */
  readonly looseGib?: boolean;
  /** Stations a whole number of turns apart. */
  readonly inStep?: boolean;
  /** An indicator of this graduation, in millimetres, instead of the usual ones. */
  readonly resolution?: number;
}

/** Something wrong with a survey, of which some checks should speak. */
export interface Fault extends Circumstances {
  readonly name: string;
  readonly shows: readonly string[];
  /** Whether the profile as it is drawn matters to what should be found. */
  readonly needsProfile?: boolean;
  /** Whether a survey can bear the fault and show it; every survey can where this is not given. */
  readonly canShow?: (survey: Survey) => boolean;
  /** What goes wrong after the readings were taken. */
  readonly spoil?: (inspection: Inspection, random: Random) => Inspection;
}

export const NO_FAULT: Fault = { name: "clean", shows: [], needsProfile: true };

const NAMED_ALONE = [
  "slip",
  "outlying reading",
  "reading that decides alone",
  "readings fit no worn screw",
  "negative lost motion",
];
const repeated = ({ readings }: Survey): boolean => readings.length > new Set(readings.map(placeOf)).size;

/** Mistakes with one reading, which is then named. */
export const MISTAKES: readonly Fault[] = [
  { name: "slipped point", slip: true, needsProfile: true, shows: NAMED_ALONE },
  {
    name: "other unit",
    needsProfile: true,
    shows: NAMED_ALONE,
    spoil: ofOneReading((value, random) => value * (random() < 0.5 ? 25.4 : 1 / 25.4)),
  },
  { name: "wrong digit", needsProfile: true, shows: NAMED_ALONE, spoil: ofOneReading(withWrongDigit) },
  { name: "swapped", needsProfile: true, shows: NAMED_ALONE, spoil: ofOneReading((value) => -value) },
];

/** Faults of a whole survey, or of what goes with it. */
export const FAULTS: readonly Fault[] = [
  {
    name: "wobble",
    wobble: true,
    needsProfile: true,
    shows: ["wobble once per turn", "stations differ by more than repeats do"],
  },
  {
    name: "low station",
    needsProfile: true,
    shows: ["readings fit no worn screw", "stations differ by more than repeats do"],
    canShow: repeated,
    spoil: ofReadings((readings, random) => {
      const place = placeOf(readings[Math.floor(random() * readings.length)]);
      return readings.map((reading) =>
        placeOf(reading) === place ? changed(reading, (v) => v / 2) : reading,
      );
    }),
  },
  { name: "drift", drift: true, shows: ["drift"], canShow: repeated },
  { name: "loose gib", looseGib: true, shows: ["scatter grows along the travel"], canShow: repeated },
  { name: "in step", inStep: true, shows: ["in step with the lead"] },
  { name: "coarse indicator", resolution: 0.25, shows: ["one or two graduations"] },
  {
    name: "signs reversed",
    shows: ["negative lost motion"],
    canShow: ({ readings }) => !readings.some(isPair),
    spoil: ofReadings((readings) => readings.map((reading) => changed(reading, (value) => -value))),
  },
  {
    name: "pasted twice",
    shows: ["duplicate rows"],
    spoil: ofReadings((readings) => [...readings, ...readings]),
  },
  {
    name: "position off",
    shows: ["outside the travel"],
    spoil: ofReadings((readings, random) => {
      const at = readings.length - 1 - Math.floor(random() * (readings.length / 2));
      return readings.map((reading, i) =>
        i === at && !isPositioning(reading) ? { ...reading, position: 1000 + reading.position } : reading,
      );
    }),
  },
  {
    name: "not repeated",
    shows: ["no repeats", "first station not read again"],
    spoil: ofReadings((readings) => readings.slice(0, new Set(readings.map(placeOf)).size)),
  },
  {
    name: "stretch left out",
    shows: ["gap in coverage"],
    spoil: (inspection) => {
      const { travel, nut } = inspection.slide;
      const middle = (travel.from + travel.to) / 2;
      const reach = 1.1 * (nut?.engagedLength ?? 0);
      return ofReadings((readings) =>
        readings.filter((reading) => Math.abs(placeOf(reading) - middle) > reach),
      )(inspection, () => 0);
    },
  },
  { name: "end float unread", shows: ["end float not measured"], spoil: ofSurvey(() => ({ endFloat: [] })) },
  {
    name: "end float tenfold",
    shows: ["end float larger than lost motion"],
    canShow: ({ endFloat = [], readings }) =>
      10 * Math.min(...endFloat) > Math.min(...readings.map(lostMotionOf)),
    spoil: ofSurvey(({ endFloat = [] }) => ({ endFloat: endFloat.map((value) => 10 * value) })),
  },
  {
    name: "drive play too large",
    shows: ["drive play larger than lost motion", "drive play not in these readings"],
    spoil: ofSurvey(() => ({ drivePlay: 1 })),
  },
  {
    name: "limit too small",
    shows: ["limit not attainable"],
    spoil: ofSlide(({ runningClearance = 0 }) => ({ backlashLimit: runningClearance + 0.005 })),
  },
  {
    name: "partner missing",
    shows: ["reading without its partner"],
    canShow: ({ readings }) => readings.some(isPair),
    spoil: ofPositions((readings, random) => {
      const at = Math.floor(random() * readings.length);
      return readings.filter((_, i) => i !== at);
    }),
  },
  {
    name: "run given twice",
    shows: ["run given twice"],
    canShow: ({ readings }) => readings.some(isPair),
    spoil: ofPositions((readings, random) => [...readings, readings[Math.floor(random() * readings.length)]]),
  },
  {
    name: "few runs",
    shows: ["fewer runs than the standard asks for"],
    canShow: ({ readings }) => readings.some(isPair),
    spoil: ofPositions((readings) => readings.filter(({ run }) => run <= 4)),
  },
];

export function placeOf(reading: Reading): number {
  return isPositioning(reading) ? reading.target : reading.position;
}

function lostMotionOf(reading: Reading): number {
  if (isPair(reading)) return reading.advancing - reading.retracting;
  return isPositioning(reading) ? reading.reading : reading.backlash;
}

/** The reading with its lost motion changed. */
function changed(reading: Reading, change: (value: number) => number): Reading {
  if (isPair(reading)) {
    const value = reading.advancing - reading.retracting;
    return { ...reading, retracting: reading.advancing - change(value) };
  }
  return isPositioning(reading) ? reading : { ...reading, backlash: change(reading.backlash) };
}

function ofSurvey(change: (survey: Survey) => Partial<Survey>) {
  return (inspection: Inspection): Inspection => ({
    ...inspection,
    surveys: inspection.surveys.map((survey) => ({ ...survey, ...change(survey) })),
  });
}

function ofSlide(change: (slide: Slide) => Partial<Slide>) {
  return (inspection: Inspection): Inspection => ({
    ...inspection,
    slide: { ...inspection.slide, ...change(inspection.slide) },
  });
}

function ofReadings(change: (readings: readonly Reading[], random: Random) => readonly Reading[]) {
  return (inspection: Inspection, random: Random): Inspection =>
    ofSurvey(({ readings }) => ({ readings: change(readings, random) }))(inspection);
}

function ofOneReading(change: (value: number, random: Random) => number) {
  return ofReadings((readings, random) => {
    const at = Math.floor(random() * readings.length);
    return readings.map((reading, i) =>
      i === at ? changed(reading, (value) => change(value, random)) : reading,
    );
  });
}

/** Another digit in one of the first two places that are not nought. */
function withWrongDigit(value: number, random: Random): number {
  const digits = value.toFixed(4);
  const first = digits.search(/[1-9]/);
  if (first < 0) return value;
  const place = first + (random() < 0.5 ? 0 : 1);
  const at = digits[place] === "." ? place + 1 : place;
  const digit = (Number(digits[at]) + 1 + Math.floor(between(random, 0, 9))) % 10;
  return Number(`${digits.slice(0, at)}${digit}${digits.slice(at + 1)}`);
}

/** The pairs as positions at targets, one run for each time that a place was read. */
function ofPositions(
  change: (readings: readonly PositioningReading[], random: Random) => readonly PositioningReading[],
) {
  return (inspection: Inspection, random: Random): Inspection =>
    ofSurvey(({ readings }) => ({
      method: "positioning",
      readings: change(readings.filter(isPair).flatMap(asPositions), random),
    }))(inspection);
}

function asPositions(
  { position, advancing, retracting }: PairReading,
  index: number,
  all: readonly PairReading[],
): readonly PositioningReading[] {
  const run = all.slice(0, index + 1).filter((other) => other.position === position).length;
  return [
    { target: position, direction: "advancing", reading: position + advancing, run },
    { target: position, direction: "retracting", reading: position + retracting, run },
  ];
}
