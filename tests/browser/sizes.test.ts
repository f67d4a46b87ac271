import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type ServedPage, servePage } from "./servedPage.ts";

const PAGE = "dist/page";
const KILOBYTE = 1000;

let served: ServedPage;

beforeAll(async () => {
  served = await servePage();
});

afterAll(() => served.close());

const gzipped = (path: string) => gzipSync(readFileSync(join(PAGE, path)), { level: 9 }).length;

test("script and style of the first screen are at most 60 kB as they travel", async () => {
  const page = await served.open();
  await page.waitForLoadState("networkidle");
  const loaded = await page.evaluate(() =>
    performance.getEntriesByType("resource").map(({ name }) => new URL(name).pathname.slice(1)),
  );
  const parts = loaded.filter((path) => /\.(js|css)$/.test(path) && path !== "sw.js");
  expect(parts.length).toBeGreaterThanOrEqual(2);
  const size = parts.reduce((sum, path) => sum + gzipped(path), 0);
  expect(size).toBeLessThanOrEqual(60 * KILOBYTE);
});

/** Each part that is loaded when first used, and both workers with what they share with the page. */
test("all script and style together do not grow beyond 290 kB, the service worker apart", () => {
  const parts = readdirSync(join(PAGE, "assets")).filter((name) => /\.(js|css)$/.test(name));
  const size = parts.reduce((sum, name) => sum + gzipped(`assets/${name}`), 0);
  expect(size).toBeLessThanOrEqual(290 * KILOBYTE);
});
