import { mean, sum } from "simple-statistics";
import { SAME_PLACE } from "../correct/samePlace.ts";
import { isSignificant } from "../statistics/falsePositiveRate.ts";
import type { Check, CheckInput } from "./check.ts";

/** Below this determinant all stations are at one angle of the turn. */
const SINGULAR = 1e-9;

/**
 * How far the stations' deviations from the profile rise and fall once per turn of the screw, in millimetres; undefined
 * if that is not significant. A sine and a cosine of the screw's angle are fitted by least squares. By Fisher's test with
 * 2 and ν degrees of freedom, the chance of leaving at most a share u of the sum of squares unexplained is u^(ν/2).
 */
export function wobbleHeight({ stations, clean, fitted, settings }: CheckInput): number | undefined {
  const freedom = clean.length - 3;
  if (freedom < 1) return undefined;
  const angles = clean.map(({ position }) => (2 * Math.PI * position) / settings.lead);
  const sines = centred(angles.map(Math.sin));
  const cosines = centred(angles.map(Math.cos));
  const deviations = centred(
    clean.map(({ position, mean: value }) => {
      const at = stations.findIndex((station) => Math.abs(station.position - position) <= SAME_PLACE);
      return value - fitted[at];
    }),
  );
  const [ss, cc, sc] = [dot(sines, sines), dot(cosines, cosines), dot(sines, cosines)];
  const determinant = ss * cc - sc ** 2;
  if (determinant < SINGULAR) return undefined;
  const [sd, cd, total] = [dot(sines, deviations), dot(cosines, deviations), dot(deviations, deviations)];
  const sine = (cc * sd - sc * cd) / determinant;
  const cosine = (ss * cd - sc * sd) / determinant;
  const unexplained = 1 - (sine * sd + cosine * cd) / total;
  return isSignificant(Math.max(0, unexplained) ** (freedom / 2)) ? 2 * Math.hypot(sine, cosine) : undefined;
}

/** Lost motion that rises and falls once per turn: a screw that is bent, or turns off its centre. */
export const wobble: Check = (input) => {
  const { corrected, settings, lengths } = input;
  const height = wobbleHeight(input);
  if (height === undefined) return [];
  return [
    {
      check: "wobble once per turn",
      severity: "warning",
      message: `Lost motion rises and falls by about ${lengths.lostMotion(height)} once per turn of the screw (lead ${lengths.position(settings.lead)}), beside what wear explains: a screw that is bent, or turns off its centre. Read one stretch again at every quarter of a turn.`,
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
