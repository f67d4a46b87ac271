import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { useServedPage } from "./servedPage.ts";

const PAGE = "dist/page";
const KILOBYTE = 1000;

const served = useServedPage();

const gzipped = (path: string) => gzipSync(readFileSync(join(PAGE, path)), { level: 9 }).length;

/** Runs `act` on a new page and returns the scripts and styles loaded by then, workers' too. */
async function loadedBy(act: (page: Page) => Promise<void>): Promise<readonly string[]> {
  const page = await served.openApart();
  const paths = new Set<string>();
  page.context().on("request", (request) => paths.add(new URL(request.url()).pathname.slice(1)));
  await page.reload();
  await act(page);
  await page.waitForLoadState("networkidle");
  await page.context().close();
  return [...paths].filter((path) => /\.(js|css)$/.test(path) && path !== "sw.js");
}

const kilobytes = (paths: readonly string[]) =>
  paths.reduce((sum, path) => sum + gzipped(path), 0) / KILOBYTE;

test("the first screen loads at most 42 kB of script and style, gzipped", async () => {
  const paths = await loadedBy(async (page) => {
    await page.getByRole("button", { name: /^Lathe 2/ }).waitFor();
  });
  expect(paths.length).toBeGreaterThanOrEqual(2);
  expect(kilobytes(paths)).toBeLessThanOrEqual(42);
});

test("no worker loads the schema's library", () => {
  const assets = readdirSync(join(PAGE, "assets"));
  const code = new Map(assets.map((name) => [name, readFileSync(join(PAGE, "assets", name), "utf8")]));
  const loads = (name: string, found = new Set<string>()): ReadonlySet<string> => {
    if (found.has(name)) return found;
    found.add(name);
    for (const [, other = ""] of (code.get(name) ?? "").matchAll(/(?:from|import)\s*"\.\/([^"]+)"/g))
      loads(other, found);
    return found;
  };
  const hasZod = (name: string) => /_zod\b/.test(code.get(name) ?? "");
  const workers = assets.filter(
    (name) => /^(?:\w*[wW]orker)-.*\.js$/.test(name) && !name.startsWith("serviceWorker"),
  );
  expect(workers.length).toBeGreaterThanOrEqual(2);
  expect(assets.filter(hasZod)).toHaveLength(1);
  for (const worker of workers) expect([...loads(worker)].filter(hasZod), worker).toEqual([]);
});

const ofThread = (name: string) => name.startsWith("thread-");
const parts = () => readdirSync(join(PAGE, "assets")).filter((name) => /\.(js|css)$/.test(name));

/** Whatever is loaded when it is first used, workers included; the service worker and the replacement thread apart. PapaParse is 7 kB of it. */
test("all script and style together are at most 292 kB, gzipped", () => {
  const others = parts().filter((name) => !ofThread(name));
  expect(kilobytes(others.map((name) => `assets/${name}`))).toBeLessThanOrEqual(292);
});

test("the replacement thread is one part of at most 12 kB, gzipped", () => {
  const thread = parts().filter(ofThread);
  expect(thread).toHaveLength(1);
  expect(kilobytes(thread.map((name) => `assets/${name}`))).toBeLessThanOrEqual(12);
});
