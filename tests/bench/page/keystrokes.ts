import type { Page } from "playwright-core";

/** Each of these changes the reading, and with it the verdict's figures. */
const KEYSTROKES = Array.from({ length: 12 }, (_, index) =>
  index % 2 === 0 ? "Backspace" : String(index % 10),
);
/** Until what a keystroke leads to has surely been done, saving included. */
const REST = 1500;
/** A phone of some years ago, next to the machine that this runs on. */
const SLOWED = 4;
const ASKED = { work: 50, verdict: 100 } as const;

/** How long a keystroke in a reading keeps the main thread of a slow processor busy, and when the new verdict stands. */
export async function measureKeystrokes(name: string, page: Page, label: string): Promise<void> {
  const field = page.getByLabel(label, { exact: true });
  await field.focus();
  await page.keyboard.press("End");
  await page.waitForTimeout(REST);
  const verdicts = await timesToVerdict(page);
  console.log(`${name}, keystroke to new verdict: ${inWords(verdicts)} (asked for: ${ASKED.verdict})`);
  const work = await mainThreadWork(page);
  console.log(
    `${name}, main thread per keystroke, processor slowed ${SLOWED} times: ${inWords(work)} (asked for: ${ASKED.work})`,
  );
}

/** The same in a page that has nothing but as many fields in a table, and does nothing: the browser's own share. */
export async function measureBare(page: Page, rows: number): Promise<void> {
  const row = `<tr>${'<td><input value="0.123"></td>'.repeat(2)}</tr>`;
  await page.setContent(`<table>${row.repeat(rows)}</table>`);
  await page.locator("input").first().focus();
  await page.keyboard.press("End");
  await page.waitForTimeout(REST);
  const work = await mainThreadWork(page);
  console.log(`bare fields in a table of ${rows} rows, the same: ${inWords(work)}`);
}

/** From each keystroke to the frame after its verdict, in milliseconds. */
async function timesToVerdict(page: Page): Promise<readonly number[]> {
  const verdict = page.getByRole("region", { name: "Verdict", exact: true });
  const times = await verdict.evaluateHandle((region) => {
    const taken: number[] = [];
    let begun = 0;
    addEventListener("keydown", ({ timeStamp }) => {
      begun = timeStamp;
    });
    new MutationObserver(() => {
      if (region.getAttribute("aria-busy") === "false")
        requestAnimationFrame(() => setTimeout(() => taken.push(performance.now() - begun)));
    }).observe(region, { attributeFilter: ["aria-busy"] });
    return taken;
  });
  for (const key of KEYSTROKES) {
    await page.keyboard.press(key);
    await page.waitForTimeout(REST);
  }
  return times.jsonValue();
}

/** All that the main thread does for each keystroke, in milliseconds, until it is idle again. */
async function mainThreadWork(page: Page): Promise<readonly number[]> {
  const devtools = await page.context().newCDPSession(page);
  // In the thread's own time, which other programs on the machine do not lengthen; throttling does.
  await devtools.send("Performance.enable", { timeDomain: "threadTicks" });
  await devtools.send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
  const busy = async (): Promise<number> => {
    const { metrics } = await devtools.send("Performance.getMetrics");
    return (metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN) * 1000;
  };
  const work: number[] = [];
  for (const key of KEYSTROKES) {
    const before = await busy();
    await page.keyboard.press(key);
    await page.waitForTimeout(REST);
    work.push((await busy()) - before);
  }
  await devtools.detach();
  return work;
}

function inWords(times: readonly number[]): string {
  const sorted = times.toSorted((a, b) => a - b);
  const median = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
  return `${median.toFixed(0)} ms, at most ${(sorted.at(-1) ?? Number.NaN).toFixed(0)} ms of ${times.length}`;
}
