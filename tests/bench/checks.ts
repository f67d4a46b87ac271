import { assessSurvey } from "../../src/analysis/assess.ts";
import type { Assessment, Finding } from "../../src/analysis/assessment.ts";
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

/** How often each check speaks on clean surveys (a false alarm), and of the faults that it is there to find. */
export function checks(cases: number, base: number): void {
  const seeds = Array.from({ length: cases }, (_, i) => base + i * STRIDE);
  const clean = seeds.map((seed) => assessed(simulateSlide(seed).inspection));
  console.log("false alarms on clean surveys (each should be at most 1 %):");
  print(countsOf(clean.map(({ checks: found }) => found)), cases, REMINDERS);
  for (const fault of FAULTS) detected(fault, seeds);
  for (const mistake of MISTAKES) named(mistake, seeds, clean);
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

/** Of the mistakes with one reading that change the verdict: how many are named, and how many stop the verdict. */
function named(mistake: Fault, seeds: readonly number[], clean: readonly Assessment[]): void {
  let [told, changing, toldChanging, asked] = [0, 0, 0, 0];
  seeds.forEach((seed, i) => {
    const { inspection } = simulateSlide(seed, mistake);
    const at = differing(simulateSlide(seed).inspection, inspection);
    const assessment = assessed(inspection);
    const isNamed = assessment.checks.some((finding) => names(finding, at, mistake));
    if (isNamed) told++;
    if (at < 0 || leading(clean[i]) === leading(assessment)) return;
    changing++;
    if (isNamed) toldChanging++;
    if (assessment.verdict === "measure-more") asked++;
  });
  console.log(
    `${mistake.name}: named in ${share(told, seeds.length)} of ${seeds.length}; of the ${changing} that change the verdict, named ${share(toldChanging, changing)}, asked for again ${share(asked, changing)}`,
  );
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

function leading({ likeliest, chances }: Assessment): string {
  return likeliest !== null && chances !== null && chances[likeliest] >= 0.95
    ? likeliest
    : `perhaps ${likeliest}`;
}
