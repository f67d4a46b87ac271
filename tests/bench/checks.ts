import { assessSurvey } from "../../src/analysis/assess.ts";
import type { Assessment, Finding } from "../../src/analysis/assessment.ts";
import { REQUIRED_CHANCE } from "../../src/analysis/decide/chooseVerdict.ts";
import type { ProfileModel } from "../../src/analysis/profile/draws.ts";
import type { Inspection } from "../../src/inspection/schema.ts";
import { FAULTS, type Fault, MISTAKES } from "../simulator/faults.ts";
import { simulateSlide } from "../simulator/simulatedSlide.ts";
import { straightLines } from "./straightLines.ts";

/** Not alarms: they say what the survey left out, and simulated surveys leave some of it out. */
const REMINDERS = ["first station not read again", "no repeats", "gap in coverage", "one or two graduations"];
/** A finding that names more readings than these does not name the one that is wrong. */
const MOST_NAMED = 4;
const STRIDE = 7919;
const UNDECIDED = "measure-more";

/** How often each check speaks on clean surveys (a false alarm), and of the faults that it is there to find. */
export function checks(cases: number, base: number): void {
  const seeds = Array.from({ length: cases }, (_, i) => base + i * STRIDE);
  const clean = seeds.map((seed) => assessed(simulateSlide(seed).inspection));
  console.log("false alarms on clean surveys (each should be at most 1 %):");
  print(countsOf(clean.map(({ checks: found }) => found)), cases, REMINDERS);
  for (const fault of FAULTS) detected(fault, seeds);
  const changing = MISTAKES.flatMap((mistake) => named(mistake, seeds, clean));
  console.log(
    `all these mistakes (named and asked for again should be at least 95 %): ${askedFor(changing)}`,
  );
}

/** Of the surveys that can show a fault, how many do, by the checks that should speak of it. */
function detected(fault: Fault, seeds: readonly number[]): void {
  const found = seeds.flatMap((seed) => {
    if (fault.canShow?.(simulateSlide(seed).inspection.surveys[0]) === false) return [];
    const { inspection } = simulateSlide(seed, fault);
    return [assessed(inspection, fault.needsProfile ? undefined : straightLines).checks];
  });
  const hit = found.filter((findings) => findings.some(({ check }) => fault.shows.includes(check)));
  console.log(`${fault.name}: found in ${share(hit.length, found.length)} of ${found.length}`);
  if (fault.needsProfile) print(countsOf(found), found.length, REMINDERS);
}

/** Of mistakes with one reading, those that change the verdict that the readings by themselves lead to. */
interface Changing {
  /** Those that lead to an action, and another one than before. */
  readonly isMisleading: boolean;
  /** Named by a check, which asks for the reading again and holds the verdict up. */
  readonly isAskedFor: boolean;
}

/** How many mistakes of a kind are named; of those that change the verdict, how many are asked for again. */
function named(mistake: Fault, seeds: readonly number[], clean: readonly Assessment[]): readonly Changing[] {
  let told = 0;
  const changing = seeds.flatMap((seed, i): readonly Changing[] => {
    const { inspection } = simulateSlide(seed, mistake);
    const at = differing(simulateSlide(seed).inspection, inspection);
    const assessment = assessed(inspection);
    const naming = assessment.checks.filter((finding) => names(finding, at, mistake));
    if (naming.length > 0) told++;
    const [before, after] = [leading(clean[i]), leading(assessment)];
    if (before === after) return [];
    return [
      {
        isMisleading: after !== UNDECIDED,
        isAskedFor:
          assessment.verdict === "measure-more" && naming.some(({ severity }) => severity === "stop"),
      },
    ];
  });
  console.log(
    `${mistake.name}: named in ${share(told, seeds.length)} of ${seeds.length}; ${askedFor(changing)}`,
  );
  return changing;
}

function askedFor(changing: readonly Changing[]): string {
  const misleading = changing.filter(({ isMisleading }) => isMisleading);
  const asked = (of: readonly Changing[]): string =>
    share(of.filter(({ isAskedFor }) => isAskedFor).length, of.length);
  return `named and asked for again in ${asked(changing)} of the ${changing.length} that change the verdict, ${asked(misleading)} of the ${misleading.length} that lead to another action`;
}

function names({ check, severity, readings }: Finding, at: number, { shows }: Fault): boolean {
  return (
    severity !== "note" && shows.includes(check) && readings.length <= MOST_NAMED && readings.includes(at)
  );
}

function countsOf(found: readonly (readonly Finding[])[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const findings of found) {
    for (const check of new Set(findings.map((finding) => finding.check))) {
      counts.set(check, (counts.get(check) ?? 0) + 1);
    }
  }
  return counts;
}

function print(counts: ReadonlyMap<string, number>, cases: number, leftOut: readonly string[]): void {
  const told = [...counts]
    .filter(([check]) => !leftOut.includes(check))
    .sort((a, b) => b[1] - a[1])
    .map(([check, count]) => `${check} ${share(count, cases)}`);
  console.log(`    ${told.length === 0 ? "no check speaks" : told.join(", ")}`);
}

function share(count: number, of: number): string {
  return of === 0 ? "none" : `${((100 * count) / of).toFixed(1)} %`;
}

function assessed(inspection: Inspection, model?: ProfileModel): Assessment {
  const outcome = assessSurvey(inspection, inspection.surveys[0].id, model);
  if (!outcome.ok) throw new Error(outcome.problem.what);
  return outcome.value;
}

function differing(a: Inspection, b: Inspection): number {
  const [first, second] = [a, b].map(({ surveys }) => surveys[0].readings);
  return first.findIndex((reading, i) => JSON.stringify(reading) !== JSON.stringify(second[i]));
}

/** What the readings by themselves lead to, whatever checks say of them. */
function leading({ likeliest, chances }: Assessment): string {
  return likeliest !== null && chances !== null && chances[likeliest] >= REQUIRED_CHANCE
    ? likeliest
    : UNDECIDED;
}
