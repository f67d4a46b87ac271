import { mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium, type Page } from "playwright-core";
import { findChromium } from "../../browser/findChromium.js";
import { ARGUMENTS, servePage } from "../../browser/servedPage.ts";
import { measureBare, measureKeystrokes } from "./keystrokes.ts";
import { judge } from "./lighthouse.ts";

/**
 * How fast the built page is, as Lighthouse judges it and keystroke by keystroke. Other work of the machine shows in
 * the figures, so let it rest meanwhile.
 *
 *   npm run bench:page
 */
const served = await servePage();
const profile = mkdtempSync(join(tmpdir(), "bench-page-"));
const port = await freePort();
const context = await chromium.launchPersistentContext(profile, {
  executablePath: findChromium() ?? "",
  args: [...ARGUMENTS, `--remote-debugging-port=${port}`],
  viewport: { width: 1280, height: 900 },
  locale: "en-GB",
});
try {
  await judge("first screen", served.address, port);
  const page = await openSample(context, /^Boring mill, table/);
  await judge("an inspection", page.url(), port);
  await page.bringToFront();
  await measureKeystrokes("27 readings", page, "Backlash, reading 5");
  const long = await openSample(context, /^Pattern mill/);
  await measureKeystrokes("140 readings", long, "Reading, reading 5");
  await measureBare(await context.newPage(), 27);
} finally {
  await context.close();
  await served.close();
  rmSync(profile, { recursive: true });
}

async function openSample(within: BrowserContext, sample: RegExp): Promise<Page> {
  const page = await within.newPage();
  await page.goto(served.address);
  await page.getByRole("button", { name: sample }).click();
  await page.getByText(/^Saved in this browser, /).waitFor();
  await page.locator("[aria-label=Verdict][aria-busy=false]").waitFor();
  return page;
}

/** A port that nothing listens on. */
function freePort(): Promise<number> {
  return new Promise((found) => {
    const server = createServer().listen(0, "127.0.0.1", () => {
      const address = server.address();
      const free = typeof address === "object" && address !== null ? address.port : 0;
      server.close(() => found(free));
    });
  });
}
