import { assessSurvey } from "../../src/analysis/assess.ts";
import type { Assessment } from "../../src/analysis/assessment.ts";
import { type Fault, type SimulatedSlide, simulateSlide } from "../simulator/simulatedSlide.ts";

const FAULTS: readonly Fault[] = ["none", "slip", "drift", "wobble"];
/** Not alarms: they say what the survey left out, and every simulated survey leaves some of it out. */
const REMINDERS = ["first station not read again", "no repeats", "gap in coverage", "one or two graduations"];

/** How often each check speaks on clean surveys (a false alarm) and on surveys with one fault laid over them. */
export function checks(cases: number, base: number): void {
  for (const fault of FAULTS) {
    const counts = new Map<string, number>();
    for (let i = 0; i < cases; i++) {
      const { checks: found } = assessed(simulateSlide(base + i * 7919, fault));
      for (const name of new Set(found.map(({ check }) => check)))
        counts.set(name, (counts.get(name) ?? 0) + 1);
    }
    const told = [...counts]
      .filter(([name]) => !REMINDERS.includes(name))
      .sort((a, b) => b[1] - a[1])
      .map(([name, count]) => `${name} ${((100 * count) / cases).toFixed(1)} %`);
    console.log(`${fault === "none" ? "clean" : fault}: ${told.length === 0 ? "no alarm" : told.join(", ")}`);
  }
  slips(cases, base);
}

/** Of the slips that change the verdict: how many are named, and how many make the verdict ask again. */
function slips(cases: number, base: number): void {
  let changing = 0;
  let named = 0;
  let asked = 0;
  for (let i = 0; i < cases; i++) {
    const clean = simulateSlide(base + i * 7919);
    const slipped = simulateSlide(base + i * 7919, "slip");
    const at = differing(clean, slipped);
    const assessment = assessed(slipped);
    if (at < 0 || leading(assessed(clean)) === leading(assessment)) continue;
    changing++;
    const finding = assessment.checks.find(
      ({ severity, readings }) => severity !== "note" && readings.includes(at),
    );
    if (finding !== undefined) named++;
    if (assessment.verdict === "measure-more") asked++;
  }
  const share = (count: number): string => `${((100 * count) / changing).toFixed(1)} %`;
  console.log(
    `slips that change the verdict: ${changing}; named ${share(named)}, asked for again ${share(asked)}`,
  );
}

function assessed({ inspection }: SimulatedSlide): Assessment {
  const outcome = assessSurvey(inspection, inspection.surveys[0].id);
  if (!outcome.ok) throw new Error(outcome.problem.what);
  return outcome.value;
}

function differing(a: SimulatedSlide, b: SimulatedSlide): number {
  const [first, second] = [a, b].map(({ inspection }) => inspection.surveys[0].readings);
  return first.findIndex((reading, i) => JSON.stringify(reading) !== JSON.stringify(second[i]));
}

function leading({ likeliest, chances }: Assessment): string {
  return likeliest !== null && chances !== null && chances[likeliest] >= 0.95
    ? likeliest
    : `perhaps ${likeliest}`;
}
