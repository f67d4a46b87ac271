import { drawIndex, type Random } from "../../../src/analysis/statistics/random.ts";
import { MILLIMETRES_PER_INCH, type Units } from "../../../src/inspection/units.ts";
import { between, logBetween } from "../wear.ts";
import type { Kind, Screw } from "./kind.ts";

/** What lengths a unit's workshop uses, mm: travels and nuts come in such steps, screws in such leads. */
const USAGE = {
  mm: { grid: 0.25, travel: 5, nut: 0.5, limit: 0.005, leads: [2.5, 3, 4, 5, 6] },
  in: {
    grid: MILLIMETRES_PER_INCH / 64,
    travel: MILLIMETRES_PER_INCH / 4,
    nut: MILLIMETRES_PER_INCH / 16,
    limit: MILLIMETRES_PER_INCH / 2000,
    leads: [0.1, 0.2, 0.25].map((lead) => lead * MILLIMETRES_PER_INCH),
  },
} as const;

/** A screw and nut of the kind's lengths, with the step of the grid, mm, on which its wear is looked up. */
export function drawScrew(kind: Kind, units: Units, random: Random): Screw & { readonly grid: number } {
  const usage = USAGE[units];
  const inSteps = (length: number, step: number): number => Math.max(1, Math.round(length / step)) * step;
  const travel = inSteps(logBetween(random, ...(kind.travel ?? [60, 600])), usage.travel);
  const longest = (kind.engagedShare ?? 0.45) * travel;
  const engaged = inSteps(Math.min(between(random, ...(kind.engaged ?? [15, 70])), longest), usage.nut);
  const lead = usage.leads[Math.floor(random() * usage.leads.length)];
  return { travel, engaged, lead, grid: usage.grid };
}

/** What of a slide decides, mm, but for the limit: lost motion without end float and drive play, and these. */
export interface Found {
  readonly worst: number;
  readonly tight: number;
  readonly endFloat: number;
  readonly drivePlay: number;
  readonly runningClearance: number;
  readonly endFloatAttainable: number;
}

const GREATEST_LIMIT = 0.6;
const LEAST_LIMIT = 0.03;
/** How often each answer is aimed at, where it can be had: leave alone, end float, take up the nut, remake. */
const AIMS = [0.2, 0.15, 0.4, 0.25] as const;

/** A limit, mm, that makes one of the answers right, by a margin of 0.003 to 0.15 mm. */
export function drawLimit(found: Found, units: Units, random: Random): number {
  const { worst, tight, endFloat, drivePlay, runningClearance, endFloatAttainable } = found;
  const left = Math.min(endFloat, endFloatAttainable);
  const least = Math.max(LEAST_LIMIT, runningClearance + endFloatAttainable + 0.003);
  const [asFound, corrected] = [worst + endFloat + drivePlay, worst + left];
  const takenUp = worst - tight + runningClearance + left;
  const toStep = (limit: number): number => Math.round(limit / USAGE[units].limit) * USAGE[units].limit;
  for (let attempt = 0; attempt < 100; attempt++) {
    const aim = drawIndex(AIMS, random);
    const margin = logBetween(random, 0.003, 0.15);
    const fromBelow = random() < 0.7;
    const limit = [
      asFound + margin,
      between(random, corrected, asFound),
      fromBelow ? takenUp + margin : corrected - margin,
      takenUp - margin,
    ][aim];
    const inReach = [true, asFound - corrected > 0.004, limit > takenUp && limit < corrected, true][aim];
    if (inReach && limit >= least && limit <= GREATEST_LIMIT) return toStep(limit);
  }
  return toStep(Math.max(least, asFound + 0.02));
}
