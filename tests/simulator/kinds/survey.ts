import { normals, type Random } from "../../../src/analysis/statistics/random.ts";
import type { Method, Reading, Survey } from "../../../src/inspection/schema.ts";
import { MILLIMETRES_PER_INCH, type Units } from "../../../src/inspection/units.ts";
import { between, logBetween } from "../wear.ts";
import type { Screw } from "./kind.ts";

const INCH = MILLIMETRES_PER_INCH;
/** Graduations of indicators and dials, mm: fine, usual and coarse. */
const GRADUATIONS = {
  mm: [[0.001, 0.002], [0.01], [0.02, 0.05]],
  in: [[0.0001 * INCH], [0.0005 * INCH, 0.001 * INCH], [0.002 * INCH]],
} as const;
const DIALS = {
  mm: [[0.01], [0.01, 0.02], [0.02, 0.025, 0.05]],
  in: [[0.0005 * INCH], [0.001 * INCH], [0.002 * INCH]],
} as const;
const POSITION_STEPS = { mm: [0.1, 0.5], in: [0.01 * INCH, 0.05 * INCH] } as const;

export interface Circumstances {
  readonly method: Exclude<Method, "positioning">;
  readonly endFloat: number;
  /** Part of the lost motion of pairs, and stated there; 0 for push–pull readings. */
  readonly drivePlay: number;
  /** How far the indicator's readings may be off, ±, mm; 0 for one without error. */
  readonly error: number;
  /** Rise and fall of readings once per turn of the screw, each, mm. */
  readonly wobble: number;
}

export interface Taken {
  /** Lengths in mm, whatever the unit of the graduation. */
  readonly survey: Survey;
  readonly repeatability: number;
  /** The graduation that end float was read to, mm. */
  readonly graduation: number;
  readonly stations: number;
}

/** Draws what a survey is taken with and how; push–pull readings carry no drive play. */
export function drawCircumstances(random: Random): Circumstances {
  const method = (["push-pull", "indicator-pair", "dial-pair"] as const)[Math.floor(random() * 3)];
  const endFloat = random() < 0.4 ? 0 : logBetween(random, 0.003, 0.1);
  const play = random() < 0.35 ? logBetween(random, 0.003, 0.05) : 0;
  const error = random() < 0.4 ? logBetween(random, 0.002, 0.015) : 0;
  const wobble = random() < 0.12 ? between(random, 0.002, 0.01) : 0;
  return {
    method,
    endFloat,
    drivePlay: method === "push-pull" ? 0 : play,
    error: method === "dial-pair" ? 0 : error,
    wobble,
  };
}

/** A survey of lost motion that is known, end float and drive play included, mm. */
export function readSurvey(
  lostMotion: (position: number) => number,
  screw: Screw,
  circumstances: Circumstances,
  units: Units,
  random: Random,
): Taken {
  const { method, endFloat, drivePlay, error, wobble } = circumstances;
  const normal = normals(random);
  const fineness = random() < 0.3 ? 0 : random() < 0.65 ? 1 : 2;
  const offered = (method === "dial-pair" ? DIALS : GRADUATIONS)[units][fineness];
  const graduation = offered[Math.floor(random() * offered.length)];
  const repeatability = between(random, 0.15, 0.5) * Math.max(graduation, 0.008);
  const shown = showing(error, lostMotion, screw, random);
  const phase = between(random, 0, 2 * Math.PI);
  const there = (position: number): number =>
    shown(lostMotion(position) + wobble * Math.sin((2 * Math.PI * position) / screw.lead + phase));
  const read = reader(method, graduation, repeatability, screw.lead, random, normal);
  const places = drawPlaces(screw, units, random);
  const repeats = 1 + Math.floor(random() * 4);
  const visits = Array.from({ length: repeats }, (_, i) =>
    i % 2 === 0 ? places : [...places].reverse(),
  ).flat();
  if (random() < 0.5) visits.push(places[0]);
  const endFloatGraduation = method === "dial-pair" ? GRADUATIONS[units][1][0] : graduation;
  const endFloatReadings = Array.from({ length: [0, 1, 2, 2, 3][Math.floor(random() * 5)] }, () =>
    Math.max(0, rounded(shown(endFloat) + repeatability * normal(), endFloatGraduation)),
  );
  const dial = dialOf(graduation, screw.lead, random() < 0.3);
  const stated = random() < 0.7 ? { resolution: graduation } : {};
  const survey: Survey = {
    id: "survey",
    taken: "2026-03-14",
    stage: "before-repair",
    method,
    ...(method === "dial-pair" ? { dial } : { indicator: { ...stated, ...(error > 0 ? { error } : {}) } }),
    ...(endFloatReadings.length > 0 ? { endFloat: endFloatReadings } : {}),
    ...(drivePlay > 0 ? { drivePlay } : {}),
    readings: visits.map((position) => read(position, there(position))),
  };
  return { survey, repeatability, graduation: endFloatGraduation, stations: places.length };
}

/**
 * What an indicator shows of a movement: off by one amount throughout, but for movements so small that its hand hardly
 * turns, or in proportion.
 */
function showing(
  error: number,
  lostMotion: (position: number) => number,
  { travel }: Screw,
  random: Random,
): (movement: number) => number {
  const off = error * between(random, -1, 1);
  const greatest = Math.max(...Array.from({ length: 101 }, (_, i) => lostMotion((i / 100) * travel)));
  const range = random() < 0.5 ? Math.min(0.01, greatest) : greatest;
  return (movement) => movement + off * Math.min(1, Math.max(0, movement) / range);
}

/** How a lost motion is read and written down by each way of measuring. Dial readings are in divisions. */
function reader(
  method: Circumstances["method"],
  graduation: number,
  repeatability: number,
  lead: number,
  random: Random,
  normal: () => number,
): (position: number, value: number) => Reading {
  const sign = random() < 0.5 ? 1 : -1;
  const each = repeatability / Math.SQRT2;
  const origin = between(random, 0.5, 2);
  const part = random() < 0.3 ? 0.5 : 1;
  const turn = Math.round(lead / graduation);
  const divisions = (place: number): number => {
    const onDial = rounded(place / graduation, part) % turn;
    return onDial < 0 ? onDial + turn : onDial;
  };
  return (position, value) => {
    if (method === "push-pull")
      return { position, backlash: rounded(value + repeatability * normal(), graduation) };
    const start = method === "dial-pair" ? random() * lead : origin;
    const [advancing, retracting] = [start + each * normal(), start - sign * value + each * normal()];
    return method === "dial-pair"
      ? { position, advancing: divisions(advancing), retracting: divisions(retracting) }
      : { position, advancing: rounded(advancing, graduation), retracting: rounded(retracting, graduation) };
  };
}

/** A dial whose division stands for the given travel, mm; one graduated on diameter is printed with twice as much. */
function dialOf(division: number, lead: number, graduatedOnDiameter: boolean): Survey["dial"] {
  const divisions = Math.round(lead / division);
  return graduatedOnDiameter
    ? { travelPerDivision: 2 * division, divisions, graduatedOnDiameter }
    : { travelPerDivision: division, divisions };
}

/** Stations over the travel: mostly closer than the nut is long, and mostly at both ends. */
function drawPlaces({ travel, engaged }: Screw, units: Units, random: Random): readonly number[] {
  const apart = engaged * between(random, 0.5, 1.8);
  const wanted = random() < 0.15 ? 8 : 1 + Math.ceil(travel / apart);
  const count = Math.min(40, Math.max(6 + Math.floor(random() * 8), wanted));
  const jitter = random() < 0.5 ? 0 : 0.6;
  const step = POSITION_STEPS[units][Math.floor(random() * 2)];
  const short = () => (random() < 0.8 ? 0 : Math.min(0.1 * travel, between(random, 0, 0.7) * engaged));
  const [from, to] = [short(), travel - short()];
  const places = Array.from({ length: count }, (_, i) => {
    const share = (i + (i > 0 && i < count - 1 ? jitter * (random() - 0.5) : 0)) / (count - 1);
    return Math.min(travel, rounded(from + share * (to - from), step));
  });
  return [...new Set(places)];
}

/** To a whole number of steps, without the traces of binary fractions. */
function rounded(value: number, step: number): number {
  return Number((Math.round(value / step) * step).toPrecision(12));
}
