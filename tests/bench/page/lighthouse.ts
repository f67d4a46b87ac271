import lighthouse from "lighthouse";
import { median } from "simple-statistics";

/** What the page has to reach, of 100. */
const ASKED = { performance: 95, accessibility: 100, "best-practices": 100 } as const;
/** One judgement is at the mercy of what else the machine does: Lighthouse's own advice is the median of five. */
const RUNS = 5;

/** Has Lighthouse judge an address on a slow phone with a slow network, as it simulates them, and prints its scores. */
export async function judge(name: string, address: string, port: number): Promise<void> {
  const scores = new Map<string, number[]>();
  const short = new Set<string>();
  const blocking: number[] = [];
  for (let run = 0; run < RUNS; run++) {
    const judged = await lighthouse(address, {
      port,
      logLevel: "error",
      onlyCategories: Object.keys(ASKED),
      // The inspection to be shown is in the browser's database.
      disableStorageReset: true,
    });
    if (judged === undefined) throw new Error("Lighthouse has judged nothing.");
    const { categories, audits } = judged.lhr;
    blocking.push(audits["total-blocking-time"]?.numericValue ?? Number.NaN);
    for (const [category, asked] of Object.entries(ASKED)) {
      const { score, auditRefs } = categories[category] ?? { score: null, auditRefs: [] };
      const points = Math.round((score ?? 0) * 100);
      scores.set(category, [...(scores.get(category) ?? []), points]);
      if (points >= asked) continue;
      for (const { id, weight } of auditRefs) {
        const audit = audits[id];
        if (weight > 0 && audit !== undefined && (audit.score ?? 1) < 0.9) short.add(audit.title);
      }
    }
  }
  for (const [category, asked] of Object.entries(ASKED))
    console.log(`${name}, ${category}: ${spread(scores.get(category) ?? [])} (asked for: ${asked})`);
  console.log(`${name}, total blocking time: ${spread(blocking.map(Math.round))} ms`);
  if (short.size > 0) console.log(`  short in one run or more: ${[...short].join(", ")}`);
}

function spread(values: readonly number[]): string {
  return `${median([...values])}, of ${RUNS} runs from ${Math.min(...values)} to ${Math.max(...values)}`;
}
