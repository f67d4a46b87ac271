import lighthouse from "lighthouse";

/** What the page has to reach, of 100. */
const ASKED = { performance: 95, accessibility: 100, "best-practices": 100 } as const;

/** Has Lighthouse judge an address on a slow phone with a slow network, as it simulates them, and prints its scores. */
export async function judge(name: string, address: string, port: number): Promise<void> {
  const judged = await lighthouse(address, {
    port,
    logLevel: "error",
    onlyCategories: Object.keys(ASKED),
    // The inspection to be shown is in the browser's database.
    disableStorageReset: true,
  });
  if (judged === undefined) throw new Error("Lighthouse has judged nothing.");
  const { categories, audits } = judged.lhr;
  for (const [category, asked] of Object.entries(ASKED)) {
    const { score, auditRefs } = categories[category] ?? { score: null, auditRefs: [] };
    const points = Math.round((score ?? 0) * 100);
    console.log(`${name}, ${category}: ${points} (asked for: ${asked})`);
    if (points >= asked) continue;
    for (const { id, weight } of auditRefs) {
      const audit = audits[id];
      if (weight === 0 || audit === undefined || (audit.score ?? 1) >= 0.9) continue;
      console.log(`  ${audit.title}: ${audit.displayValue ?? audit.explanation ?? "fails"}`);
    }
  }
}
