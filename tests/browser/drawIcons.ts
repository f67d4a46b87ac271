import { readFileSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { findChromium } from "./findChromium.js";
import { ARGUMENTS } from "./servedPage.ts";

/** Draws the icons that have to be PNG from the ones that are drawn as SVG: `npm run icons`. */

const FOLDER = join(import.meta.dirname, "../../src/app/public");
const DRAWN = [
  ["icon", 192],
  ["icon", 512],
  ["icon-maskable", 192],
  ["icon-maskable", 512],
] as const;

const executablePath = findChromium();
if (executablePath === null) throw new Error("There is no Chromium: see tests/browser/findChromium.js.");
const browser = await chromium.launch({ executablePath, args: ARGUMENTS });
for (const [name, size] of DRAWN) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  const svg = readFileSync(join(FOLDER, `${name}.svg`), "utf8");
  await page.setContent(`<style>body { margin: 0 } svg { display: block }</style>${svg}`);
  await page.screenshot({ path: join(FOLDER, `${name}-${size}.png`), omitBackground: true });
}
await browser.close();
