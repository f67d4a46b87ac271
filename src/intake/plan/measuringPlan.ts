import { engagedLengthOf } from "../../inspection/engagedLength.ts";
import { lengthsIn } from "../../inspection/lengths.ts";
import type { PlannableSlide } from "../../inspection/plannableSlide.ts";
import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import { roundTo, toMillimetres, type Units } from "../../inspection/units.ts";
import { rounding } from "./rounding.ts";
import { roundsOf } from "./rounds.ts";
import { fewestStations, type Spacing, spacingOf, widestArc } from "./spacing.ts";
import { notesOn, reasonsFor } from "./words.ts";

export interface PlanOptions {
  /** How many stations to read, instead of as many as the slide needs. */
  readonly stations?: number;
}

/** A place to take readings at; positions are in the slide's units. */
export interface PlannedStation {
  readonly position: number;
  /** How far the screw turns from the station before, in turns; 0 for the first. */
  readonly turns: number;
  /** Where in its turn the screw stands, in degrees on from where it stands at the first station. */
  readonly angle: number;
}

/** A reading to take: which station, from 0, and on which way along the travel. */
export interface PlannedReading {
  readonly station: number;
  readonly position: number;
  readonly pass: "out" | "back";
  /** Which round, from 0. */
  readonly round: number;
}

/** Where to take readings along a slide, in which order and why. Lengths are in the slide's units. */
export interface Plan {
  readonly units: Units;
  readonly engagedLength: number;
  /** Along the travel. */
  readonly stations: readonly PlannedStation[];
  /**
   * Which stations are read in which round, from 0 and in order along the travel. Where there are two rounds, the first
   * may be enough: the second is read where it leaves the verdict open.
   */
  readonly rounds: readonly (readonly number[])[];
  /** Every reading in the order it is taken: each round out along the travel and back, and the first station last. */
  readonly readings: readonly PlannedReading[];
  /** The widest way from one station to the next. */
  readonly widestGap: number;
  /** The widest part of the screw's turn that no station meets, in degrees. */
  readonly widestAngle: number;
  readonly reasons: readonly string[];
  /** What the slide does not say and was taken instead. */
  readonly assumed: readonly string[];
  /** What the plan falls short of. */
  readonly notes: readonly string[];
}

/** Fewer are not planned unless they are asked for: repeats at ten stations tell scatter from wear. */
const GOOD_STATIONS = 10;
const MOST_STATIONS = 500;
/** Stations cannot be told apart closer together than this, in millimetres. */
const CLOSEST = 0.1;
const END_DECIMALS = { mm: 3, in: 4 } as const;

/**
 * The measuring plan of a slide: stations closer together than half the nut's engaged length, both ends of the travel
 * among them, spread over the turn of the screw, at positions that can be set at the machine. Fails where so many
 * stations as are asked for, or are needed, cannot be read, or the travel is none.
 */
export function measuringPlan(slide: PlannableSlide, { stations }: PlanOptions = {}): Outcome<Plan> {
  const { units, travel, screw } = slide;
  const length = travel.to - travel.from;
  const most = Math.min(MOST_STATIONS, Math.floor(toMillimetres(length, units) / CLOSEST) + 1);
  if (most < 2) {
    return failed("travel", "it is too short to tell two stations apart", "Check the travel and its unit.");
  }
  if (stations !== undefined && !isCount(stations, most)) {
    return failed(
      "stations",
      `${stations} is not a number of stations for this travel`,
      `Both ends of the travel are read: plan 2 to ${most} stations.`,
    );
  }
  const turns = length / screw.lead;
  const engaged = engagedLengthOf(slide);
  const half = engaged.length / 2;
  const fineness = Math.min(screw.lead, half) / 10;
  // Rounding may bring two neighbours further apart by one step.
  const limit = (half - fineness) / screw.lead;
  const needed = fewestStations(turns, limit, Math.min(GOOD_STATIONS, most), most);
  const spacing = stations === undefined ? needed : spacingOf(turns, stations - 1);
  if (spacing === undefined) {
    const lengths = lengthsIn(units);
    return failed(
      "stations",
      `it would take more than ${most} stations to have them closer than half the nut's engaged length, ${lengths.position(toMillimetres(half, units))}`,
      "Check the travel, the lead and the engaged length, or say how many stations to read.",
    );
  }
  const positions = placed(spacing, slide, fineness);
  // Whoever says how many stations to read has them all at once.
  const isAtOnce = stations !== undefined;
  return succeeded(planOf(slide, positions, { engaged, needed: needed?.turns.length, isAtOnce }));
}

function isCount(stations: number, most: number): boolean {
  return Number.isInteger(stations) && stations >= 2 && stations <= most;
}

/** The stations' positions as they can be set at the machine; the ends of the travel are as they are stated. */
function placed(
  { turns }: Spacing,
  { travel, screw, units }: PlannableSlide,
  fineness: number,
): readonly number[] {
  const exact = turns.map((turn) => travel.from + turn * screw.lead);
  const rounded = rounding(Math.min(fineness, Math.min(...gapsOf(exact)) / 2));
  // An end that was stated in the other unit has decimals that nobody can set.
  const end = (position: number): number => roundTo(position, END_DECIMALS[units]);
  return [end(travel.from), ...exact.slice(1, -1).map(rounded), end(travel.to)];
}

/** From each place to the next, without the traces of binary fractions. */
function gapsOf(places: readonly number[]): readonly number[] {
  return places.slice(1).map((place, index) => roundTo(place - (places[index] ?? 0), 9));
}

interface Grounds {
  readonly engaged: ReturnType<typeof engagedLengthOf>;
  /** How many stations the slide needs, when that many can be read. */
  readonly needed: number | undefined;
  readonly isAtOnce: boolean;
}

function planOf(
  slide: PlannableSlide,
  positions: readonly number[],
  { engaged, needed, isAtOnce }: Grounds,
): Plan {
  const { units, travel, screw } = slide;
  const turnsAt = positions.map((position) => (position - travel.from) / screw.lead);
  const gaps = gapsOf(positions);
  const lengths = lengthsIn(units);
  const words = (length: number): string => lengths.position(toMillimetres(length, units));
  const rounds = isAtOnce
    ? [positions.map((_, station) => station)]
    : roundsOf(turnsAt, (2 * engaged.length) / screw.lead);
  const gapIn = (stations: readonly number[]): number =>
    Math.max(...gapsOf(stations.map((station) => positions[station] ?? 0)));
  const [first = [], ...others] = rounds;
  const facts = {
    firstRound: others.length === 0 ? undefined : { stations: first.length, widestGap: gapIn(first) },
    stations: positions.length,
    needed,
    turns: (travel.to - travel.from) / screw.lead,
    engagedLength: engaged.length,
    widestGap: Math.max(...gaps),
    widestAngle: roundTo(widestArc(turnsAt) * 360, 6),
    words,
  };
  return {
    units,
    engagedLength: roundTo(engaged.length, 6),
    stations: positions.map((position, index) => ({
      position,
      turns: index === 0 ? 0 : roundTo((gaps[index - 1] ?? 0) / screw.lead, 6),
      angle: roundTo((turnsAt[index] ?? 0) * 360, 6) % 360,
    })),
    rounds,
    readings: rounds.flatMap((stations, round) => outAndBack(stations, round, positions)),
    widestGap: facts.widestGap,
    widestAngle: facts.widestAngle,
    reasons: reasonsFor(facts),
    assumed:
      engaged.assumedAs === undefined
        ? []
        : [`The nut engages ${words(engaged.length)} of the screw (${engaged.assumedAs}).`],
    notes: notesOn(facts),
  };
}

function outAndBack(
  stations: readonly number[],
  round: number,
  positions: readonly number[],
): readonly PlannedReading[] {
  const reading = (station: number, pass: "out" | "back"): PlannedReading => ({
    station,
    position: positions[station] ?? 0,
    pass,
    round,
  });
  return [
    ...stations.map((station) => reading(station, "out")),
    ...stations.toReversed().map((station) => reading(station, "back")),
    // The first station once more, which shows what crept since the first round.
    ...(round === 0 ? [] : [reading(0, "back")]),
  ];
}
