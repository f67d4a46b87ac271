import { LEAST_STATIONS } from "../../inspection/leastStations.ts";

/** What there is to tell of a plan. Lengths are in the slide's units. */
export interface PlanFacts {
  readonly stations: number;
  /** The first of two rounds, where not everything is read at once. */
  readonly firstRound: { readonly stations: number; readonly widestGap: number } | undefined;
  /** How many stations the slide needs, when that many can be read. */
  readonly needed: number | undefined;
  /** The travel in turns of the screw. */
  readonly turns: number;
  readonly engagedLength: number;
  readonly widestGap: number;
  /** In degrees. */
  readonly widestAngle: number;
  /** A length with its unit. */
  readonly words: (length: number) => string;
}

/** A quarter of a turn, in degrees, and what rounding a position may add to it. */
const QUARTER = 90;
const ROUNDED = 36;

/** Why the stations lie where they do, and why they are read in that order. */
export function reasonsFor(facts: PlanFacts): readonly string[] {
  const { widestGap, engagedLength, widestAngle, words } = facts;
  const half = engagedLength / 2;
  return [
    "Both ends of the travel are read: an end that is not may be the tightest place.",
    ...(widestGap < half
      ? [
          `Neighbours are ${words(widestGap)} apart at most, less than half of the ${words(engagedLength)} that the nut engages: no tight spot can lie between them unseen.`,
        ]
      : []),
    ...(widestAngle <= QUARTER + ROUNDED
      ? [
          `They meet the screw all round its turn, with no more than ${Math.round(widestAngle)}° left out, and neighbours at different angles: a wobble once per turn is not taken for wear.`,
        ]
      : []),
    ...roundsWords(facts),
    "Read out and back, they show the scatter; a creep of the indicator's stand that is steady shifts all of them alike, and the first one, read last, shows it.",
  ];
}

/** What two rounds are for, and what the first one may miss. */
function roundsWords({ stations, firstRound, words }: PlanFacts): readonly string[] {
  if (firstRound === undefined) return [];
  const between = stations - firstRound.stations;
  return [
    `${firstRound.stations} stations first: they are enough wherever they lead to a verdict. They lie up to ${words(firstRound.widestGap)} apart, and a tight or worn place that shows along less than that can be missed; the chances allow for it. Where they leave the verdict open, what to read next is named, or the other ${between} are read.`,
  ];
}

/** What the plan falls short of, and what that costs. */
export function notesOn(facts: PlanFacts): readonly string[] {
  return [tooFew(facts), tooFar(facts), notAllRound(facts)].filter((note) => note !== undefined);
}

function tooFew({ stations }: PlanFacts): string | undefined {
  if (stations >= LEAST_STATIONS) return undefined;
  return `No verdict is given with fewer than ${LEAST_STATIONS} stations.`;
}

function tooFar({ stations, needed, widestGap, engagedLength, words }: PlanFacts): string | undefined {
  if (widestGap < engagedLength / 2) return undefined;
  const most = `So few stations lie up to ${words(widestGap)} apart, and half the nut's engaged length is ${words(engagedLength / 2)}: the tight spot may lie between them and not be found.`;
  const beyond =
    widestGap > 2 * engagedLength
      ? ` No verdict is given where they lie further apart than twice the engaged length, ${words(2 * engagedLength)}.`
      : "";
  const cure = needed === undefined || needed <= stations ? "" : ` ${needed} stations would do.`;
  return `${most}${beyond}${cure}`;
}

function notAllRound({ turns, widestAngle }: PlanFacts): string | undefined {
  if (widestAngle <= QUARTER + ROUNDED) return undefined;
  const left = `${Math.round(widestAngle)}° of the screw's turn ${turns < 1 ? "are" : "are left"} without a station`;
  return turns < 1
    ? `The travel is less than a turn of the screw, so that ${left}: a wobble once per turn cannot be told from wear.`
    : `With so few stations ${left}: a wobble once per turn may not show.`;
}
