import { screwProfile } from "../../src/analysis/profile/screw.ts";
import type { Kind } from "../simulator/kinds/kind.ts";
import { type SimulatedKind, simulatedKind } from "../simulator/simulatedKind.ts";
import { screwProfile as candidateProfile } from "./candidate/screw.ts";
import { greatestShare } from "./greatestShare.ts";
import { smoothProfile } from "./plain/smooth.ts";
import { holds, type Judgement } from "./score.ts";
import { byModel, bySpreadsheet } from "./ways.ts";

const WAYS = {
  tightspot: byModel(screwProfile),
  candidate: byModel(candidateProfile),
  plain: byModel(smoothProfile),
  spreadsheet: bySpreadsheet,
};

/** What is counted: how many of the slides that are asked about it is true of. */
const COUNTS = {
  decided: ({ decided }: Judgement) => decided !== undefined,
  wrong: ({ decided }: Judgement, { truth }: SimulatedKind) =>
    decided === undefined ? undefined : !truth.answers.some(({ verdict }) => verdict === decided),
  uniform: covers("uniform", ({ truth }) => [truth.uniform]),
  uneven: covers("uneven", ({ truth }) => [truth.uneven]),
  greatest: covers("greatest", ({ truth }) => [truth.greatest]),
  left: covers("left", ({ truth }) => truth.answers.map(({ left }) => left)),
  misfit: ({ misfit }: Judgement) => misfit,
  // Slides over the limit that are said to keep it for sure.
  "false proven": ({ conformance }: Judgement, { truth }: SimulatedKind) =>
    truth.overLimit && conformance !== undefined ? conformance === "proven" : undefined,
  "even remade": ({ decided }: Judgement, { truth }: SimulatedKind) =>
    isEven(truth) ? decided === "remake-screw" : undefined,
  "even uneven": ({ unevenChance }: Judgement, { truth }: SimulatedKind) =>
    isEven(truth) && unevenChance !== undefined ? unevenChance >= 0.95 : undefined,
} as const;
type Counted = keyof typeof COUNTS;

const COLUMNS = ["decided", "wrong", "up to", "uniform", "uneven", "greatest", "left", "profile"] as const;
const MORE = ["misfit", "false proven", "even remade", "even uneven"] as const;
const NAMES_WIDTH = 38;
const FIGURES_WIDTH = 14;

/**
 * How the ways of judging fare on each kind of wear by itself, and on all by what they were read with, in per cent;
 * beside the first is of how many where that is not all. "up to" is the upper end of the 95 % interval of the share of
 * verdicts that are wrong. Coverage is counted where readings carry no wobble, which is none of the lost motion that is
 * true. Each kind is printed as soon as it is judged.
 */
export function kinds(cases: number, base: number, judged: readonly Kind[]): void {
  const groups = new Map<string, KindScore>();
  const verdicts = new Map<string, number>();
  printRow(`${cases} cases a kind`, [...COLUMNS, ...MORE]);
  for (const kind of judged) {
    const ofKind = new Map<string, KindScore>();
    for (let i = 0; i < cases; i++) {
      const slide = simulatedKind(kind, base + i * 7919);
      verdicts.set(slide.truth.verdict, (verdicts.get(slide.truth.verdict) ?? 0) + 1);
      for (const [name, way] of Object.entries(WAYS)) {
        const judgement = way(slide);
        scoreOf(ofKind, `${kind.name} · ${name}`).add(judgement, slide);
        for (const group of groupsOf(slide)) scoreOf(groups, `${group} · ${name}`).add(judgement, slide);
      }
    }
    for (const [name, score] of ofKind) printRow(name, score.figures());
  }
  for (const name of [...groups.keys()].sort()) printRow(name, scoreOf(groups, name).figures());
  console.log(`right answers: ${[...verdicts].map(([name, count]) => `${name} ${count}`).join(", ")}`);
}

function groupsOf({ inspection, truth }: SimulatedKind): readonly string[] {
  const [{ method }] = inspection.surveys;
  return ["all", method, truth.error > 0 ? "indicator in error" : "indicator without error"];
}

function scoreOf(scores: Map<string, KindScore>, name: string): KindScore {
  const score = scores.get(name) ?? new KindScore();
  scores.set(name, score);
  return score;
}

function printRow(name: string, figures: readonly string[]): void {
  console.log(name.padEnd(NAMES_WIDTH) + figures.map((each) => each.padStart(FIGURES_WIDTH)).join(""));
}

/** Counts over the slides of a kind. */
class KindScore {
  private readonly counts = new Map<Counted | "profile", { held: number; all: number }>();

  add(judgement: Judgement, slide: SimulatedKind): void {
    for (const name of Object.keys(COUNTS) as Counted[]) {
      const held = COUNTS[name](judgement, slide);
      if (held !== undefined) this.count(name, held);
    }
    if (slide.truth.wobble > 0) return;
    for (const { position, low, high } of judgement.profile ?? []) {
      const there = slide.truth.backlash(position);
      this.count("profile", low - 1e-9 <= there && there <= high + 1e-9);
    }
  }

  private count(name: Counted | "profile", held: boolean): void {
    const count = this.counts.get(name) ?? { held: 0, all: 0 };
    this.counts.set(name, { held: count.held + (held ? 1 : 0), all: count.all + 1 });
  }

  /** One line, in the order of the columns. */
  figures(): readonly string[] {
    const of = (name: Counted | "profile") => this.counts.get(name) ?? { held: 0, all: 0 };
    const { held, all } = of("wrong");
    const shares = COLUMNS.map((name) => {
      if (name === "up to") return all === 0 ? "–" : percent(greatestShare(held, all));
      return shareOf(of(name));
    });
    const more = MORE.map((name) => {
      const count = of(name);
      return name === "misfit" ? shareOf(count) : count.all === 0 ? "–" : `${shareOf(count)} of ${count.all}`;
    });
    return [...shares, ...more];
  }
}

function covers(what: "uniform" | "uneven" | "greatest" | "left", truly: (slide: SimulatedKind) => number[]) {
  return (judgement: Judgement, slide: SimulatedKind): boolean | undefined => {
    const estimate = judgement[what];
    if (estimate === undefined || slide.truth.wobble > 0) return undefined;
    return truly(slide).some((value) => holds(estimate, value));
  };
}

function isEven({ uneven }: SimulatedKind["truth"]): boolean {
  return uneven < 1e-9;
}

function shareOf({ held, all }: { readonly held: number; readonly all: number }): string {
  return all === 0 ? "–" : percent(held / all);
}

function percent(share: number): string {
  return (100 * share).toFixed(1);
}
