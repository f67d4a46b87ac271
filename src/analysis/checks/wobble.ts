import { mean, sum } from "simple-statistics";
import { SAME_PLACE } from "../correct/samePlace.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import type { Check, Surveyed } from "./check.ts";

/** Stations whose angles differ by less than this share of a turn tell nothing of what changes within it. */
const NOTHING = 1e-9;

/**
 * How far what is left of the stations' means beside the profile rises and falls once per turn of the screw, in
 * millimetres; undefined where chance brings as much. A sine and a cosine of the screw's angle are fitted by least
 * squares; by Fisher's test with 2 and ν degrees of freedom, the chance of leaving no more than a share of the sum of
 * squares unexplained is that share to the power ν/2, held against the rate of `isTooRare`.
 */
export function wobbleOf({ stations, clean, fitted, settings }: Surveyed): number | undefined {
  const freedom = clean.length - 3;
  if (freedom < 1) return undefined;
  const angles = clean.map(({ position }) => (2 * Math.PI * position) / settings.lead);
  const sines = centred(angles.map(Math.sin));
  const cosines = centred(angles.map(Math.cos));
  const off = centred(
    clean.map(({ position, mean: found }) => {
      const at = stations.findIndex((station) => Math.abs(station.position - position) <= SAME_PLACE);
      return found - fitted[at];
    }),
  );
  const [ss, cc, sc] = [dot(sines, sines), dot(cosines, cosines), dot(sines, cosines)];
  const determinant = ss * cc - sc ** 2;
  if (determinant < NOTHING) return undefined;
  const [so, co, total] = [dot(sines, off), dot(cosines, off), dot(off, off)];
  const sine = (cc * so - sc * co) / determinant;
  const cosine = (ss * co - sc * so) / determinant;
  const unexplained = 1 - (sine * so + cosine * co) / total;
  return isSignificant(Math.max(0, unexplained) ** (freedom / 2)) ? 2 * Math.hypot(sine, cosine) : undefined;
}

/** Lost motion that rises and falls once per turn: a screw that is bent, or turns off its centre. */
export const wobble: Check = (surveyed) => {
  const { corrected, settings, lengths } = surveyed;
  const found = wobbleOf(surveyed);
  if (found === undefined) return [];
  return [
    {
      check: "wobble once per turn",
      severity: "warning",
      message: `Lost motion rises and falls by about ${lengths.lostMotion(found)} once per turn of the screw (lead ${lengths.position(settings.lead)}), beside what wear explains: a screw that is bent, or turns off its centre. Read one stretch again at every quarter of a turn.`,
      readings: corrected.readings.flatMap((reading) => reading.from),
    },
  ];
};

function centred(values: readonly number[]): readonly number[] {
  const middle = mean([...values]);
  return values.map((value) => value - middle);
}

function dot(a: readonly number[], b: readonly number[]): number {
  return sum(a.map((value, i) => value * b[i]));
}
