import type { Estimate } from "../../src/analysis/assessment.ts";
import { compareSurveys } from "../../src/analysis/comparison/compareSurveys.ts";
import { runningInOf } from "../../src/analysis/runningIn/runningInOf.ts";
import type { Inspection } from "../../src/inspection/schema.ts";
import { simulateHistory } from "../simulator/simulatedHistory.ts";
import { simulatePair } from "../simulator/simulatedPair.ts";
import { Tally } from "./tally.ts";

/** How comparisons and trends fare on simulated pairs and histories whose truth is known. */
export function compare(cases: number, base: number): void {
  console.log("before and after");
  pairs(cases, base);
  console.log("\nrunning in");
  histories(Math.ceil(cases / 2), base + 7);
}

function pairs(cases: number, base: number): void {
  const tally = new Tally();
  for (let i = 0; i < cases; i++) {
    const { inspection, done, before, after } = simulatePair(base + i * 7919);
    const compared = compareSurveys(inspection, { from: "before", to: "after" });
    if (!compared.ok) throw new Error(compared.problem.what);
    const { change, acceptance } = compared.value;
    const keeps = after.uniform + after.uneven <= inspection.slide.backlashLimit + 1e-9;
    tally.add("acceptance: claimed", acceptance.conformance !== "not proven");
    if (acceptance.conformance !== "not proven") {
      const wrong = keeps !== (acceptance.conformance === "proven");
      tally.add("acceptance: claims that are wrong", wrong);
      tally.add(`acceptance: "${acceptance.conformance}" that is wrong`, wrong);
    }
    const truth = {
      uniform: after.uniform - before.uniform,
      uneven: after.uneven - before.uneven,
      greatest: after.uniform + after.uneven - before.uniform - before.uneven,
    };
    for (const part of ["uniform", "uneven", "greatest"] as const) {
      const held = holds(change[part], truth[part]);
      tally.add(`change of ${part}: within its interval`, held);
      tally.add(`change of ${part}: within its interval · ${done}`, held);
      tally.add(`change of ${part}: within its interval · ${indicators(inspection)}`, held);
      const toldWrong =
        change[part].low > 0 ? truth[part] <= 1e-9 : change[part].high < 0 && truth[part] >= -1e-9;
      tally.add(`change of ${part}: its direction told wrong`, toldWrong);
    }
    if (change.endFloat !== null) {
      tally.add(
        "change of end float: within its interval",
        holds(change.endFloat, after.endFloat - before.endFloat),
      );
    }
    for (const { position, low, high } of compared.value.difference) {
      const value = after.backlash(position) - before.backlash(position);
      tally.add("difference along the travel: within its band", holds({ value, low, high }, value));
    }
  }
  tally.print();
}

function indicators({ surveys: [before, after] }: Inspection): string {
  if (before.indicator?.error === undefined) return "no error";
  return before.indicator.name === after.indicator?.name ? "one indicator with error" : "two with error";
}

function histories(cases: number, base: number): void {
  const tally = new Tally();
  for (let i = 0; i < cases; i++) {
    const history = simulateHistory(base + i * 7919);
    const { course, uniform, uneven, limit, firstHours, lastHours } = history;
    const found = runningInOf(history.inspection);
    if (!found.ok) throw new Error(found.problem.what);
    if (!("trend" in found.value)) throw new Error("A simulated history has surveys enough.");
    const { trend, growth, limitReached, lookAgain, chances } = found.value;
    const watched = lastHours - firstHours;
    for (const { at, uniform: value, low, high } of trend) {
      const held = holds({ value, low, high }, uniform(at));
      tally.add(`trend: within its band, ${at <= lastHours ? "while watched" : "for as long again"}`, held);
      if (at > lastHours) tally.add(`trend: within its band, for as long again · ${course}`, held);
    }
    const grown = uniform(lastHours) - uniform(firstHours);
    tally.add("growth while watched: within its interval", holds(growth, grown));
    if (course === "constant") tally.add("growth claimed where there is none", chances.constant < 0.05);
    else tally.add("no growth claimed where there is some", chances.constant > 0.95);
    const reached = reachedAt((hours) => uniform(hours) + uneven > limit, firstHours, watched);
    const { low, high } = limitReached;
    const early = low !== null && low <= Math.max(reached, lastHours);
    const late = high === null || high >= Math.max(reached, lastHours) - 1e-6 * watched;
    const within = (low === null ? reached > limitReached.horizon : early) && late;
    tally.add("limit reached: within its interval", within);
    tally.add(`limit reached: within its interval · ${course}`, within);
    tally.add("limit reached: interval told with both ends", low !== null && high !== null);
    tally.add("look again: told in time", lookAgain.at <= Math.max(reached, lastHours) + 1e-6 * watched);
  }
  tally.print();
}

/** When something comes to hold and stays so, to a ten-thousandth of the time watched; Infinity if not within ten times it. */
function reachedAt(holdsAt: (hours: number) => boolean, from: number, watched: number): number {
  for (let step = 0; step <= 100_000; step++) {
    const hours = from + (step / 10_000) * watched;
    if (holdsAt(hours)) return hours;
  }
  return Number.POSITIVE_INFINITY;
}

function holds({ low, high }: Estimate, value: number): boolean {
  return low - 1e-9 <= value && value <= high + 1e-9;
}
