import type { Action, Assessment, Conformance, Estimate } from "../../src/analysis/assessment.ts";
import type { Truth } from "../simulator/simulatedSlide.ts";

/** What one way of judging said of one slide. */
export interface Judgement {
  /** The class it recommends, or undefined where it asks for more readings. */
  readonly decided: Action | undefined;
  readonly bestGuess: Action;
  /** Chance of the best guess, where the way of judging states one. */
  readonly chance?: number;
  readonly uniform?: Estimate;
  readonly uneven?: Estimate;
  readonly greatest?: Estimate;
  /** What adjusting leaves where it is greatest. */
  readonly left?: Estimate;
  readonly unevenChance?: number;
  /** Whether it says that no screw can pass through the readings. */
  readonly misfit?: boolean;
  readonly conformance?: Conformance;
  /** Lost motion that is really there at the place it calls the tight spot. */
  readonly tightSpot?: number;
  readonly profile?: Assessment["profile"];
}

const SURE = 0.95;

/** Counts over many slides, as shares in per cent. */
export class Score {
  private cases = 0;
  private decidedCases = 0;
  private wrong = 0;
  private sureCases = 0;
  private wronglySure = 0;
  private bestRight = 0;
  private evenCases = 0;
  private falseClaims = 0;
  private readonly covered = {
    uniform: [0, 0],
    uneven: [0, 0],
    unevenHigh: [0, 0],
    unevenLow: [0, 0],
    profile: [0, 0],
    tightSpot: [0, 0],
  };

  add(judgement: Judgement, truth: Truth): void {
    this.cases++;
    if (judgement.bestGuess === truth.verdict) this.bestRight++;
    if ((judgement.chance ?? 1) >= SURE) {
      this.sureCases++;
      if (judgement.bestGuess !== truth.verdict) this.wronglySure++;
    }
    if (judgement.decided !== undefined) {
      this.decidedCases++;
      if (judgement.decided !== truth.verdict) this.wrong++;
    }
    if (truth.uneven < 1e-9 && judgement.unevenChance !== undefined) {
      this.evenCases++;
      if (judgement.unevenChance >= SURE) this.falseClaims++;
    }
    const { uniform, uneven, profile, tightSpot } = judgement;
    if (uniform) this.cover("uniform", holds(uniform, truth.uniform));
    if (uneven && truth.uneven > 2 * truth.repeatability) {
      this.cover("uneven", holds(uneven, truth.uneven));
      this.cover("unevenHigh", uneven.low <= truth.uneven);
      this.cover("unevenLow", uneven.high >= truth.uneven);
    }
    if (tightSpot !== undefined) {
      this.cover("tightSpot", tightSpot - truth.uniform <= 2 * truth.repeatability);
    }
    for (const point of profile ?? []) {
      const value = truth.backlash(point.position);
      this.cover("profile", point.low <= value + 1e-12 && value - 1e-12 <= point.high);
    }
  }

  private cover(what: keyof Score["covered"], held: boolean): void {
    this.covered[what][1]++;
    if (held) this.covered[what][0]++;
  }

  private share(what: keyof Score["covered"]): string {
    const [held, all] = this.covered[what];
    return percent(held, all);
  }

  /** One line of figures, in the order of `HEADINGS`. */
  figures(): readonly string[] {
    return [
      String(this.cases),
      percent(this.sureCases, this.cases),
      percent(this.wronglySure, this.sureCases),
      percent(this.decidedCases, this.cases),
      percent(this.wrong, this.decidedCases),
      percent(this.bestRight, this.cases),
      this.share("uniform"),
      this.share("uneven"),
      this.share("unevenHigh"),
      this.share("unevenLow"),
      this.share("profile"),
      this.share("tightSpot"),
      percent(this.falseClaims, this.evenCases),
    ];
  }
}

export const HEADINGS = [
  "cases",
  "sure",
  "wrong",
  "verdict",
  "wrong",
  "best guess",
  "uniform",
  "uneven",
  "not above",
  "not below",
  "profile",
  "tight spot",
  "false claim",
];

/** Whether the interval holds the value. */
export function holds(estimate: Estimate, value: number): boolean {
  return estimate.low - 1e-9 <= value && value <= estimate.high + 1e-9;
}

function percent(part: number, whole: number): string {
  return whole === 0 ? "–" : ((100 * part) / whole).toFixed(1);
}
