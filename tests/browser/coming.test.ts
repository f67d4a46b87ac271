import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { type Size, useServedPage } from "./servedPage.ts";
import { kept } from "./steps.ts";

const served = useServedPage();

/** A sample opened, kept, and then opened again from the address. */
async function openedAgain(sample: RegExp, size: Size, before: () => void): Promise<Page> {
  const page = await served.open(size);
  await page.getByRole("button", { name: sample }).click();
  await kept(page);
  await page.addInitScript(before);
  await page.reload();
  return page;
}

/** As the browser itself counts it, 0 for nothing: https://w3c.github.io/layout-instability/. */
function countJumps(): void {
  const counted = window as { jumped?: number };
  counted.jumped = 0;
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries())
      counted.jumped = (counted.jumped ?? 0) + Reflect.get(entry, "value");
  }).observe({ type: "layout-shift", buffered: true });
}

/** What web.dev calls good is at most this. */
const GOOD = 0.1;

test.each([
  ["a phone", { width: 360, height: 740 }],
  ["a tablet", { width: 820, height: 1180 }],
  ["a desk", { width: 1440, height: 900 }],
])("on %s nothing jumps while an inspection comes to be", async (_device, size) => {
  const page = await openedAgain(/^Boring mill, table/, size, countJumps);
  await page.getByRole("heading", { name: /remake the screw, with nuts to match$/ }).waitFor();
  await page.locator(".chart[aria-busy=false]").waitFor();
  await page.getByRole("heading", { name: "History" }).waitFor();
  const jumped = await page.evaluate(() => Reflect.get(window, "jumped"));
  expect(jumped).toBeLessThan(GOOD / 2);
});

test("until there is a verdict on what was read, it is said that it is being worked out", async () => {
  const page = await openedAgain(/^Boring mill, table/, { width: 820, height: 1180 }, () => {
    const held: (() => void)[] = [];
    window.Worker = class extends Worker {
      override postMessage(message: unknown): void {
        held.push(() => super.postMessage(message));
      }
    };
    Reflect.set(window, "letWork", () => {
      for (const send of held) send();
    });
  });
  const verdict = page.getByRole("region", { name: "Verdict", exact: true });
  await verdict.getByText("The verdict is being worked out.").waitFor();
  expect(await verdict.getAttribute("aria-busy")).toBe("true");
  expect(await page.getByText("The verdict will stand here").count()).toBe(0);
  await page.evaluate(() => Reflect.get(window, "letWork")());
  await page.getByRole("heading", { name: /remake the screw, with nuts to match$/ }).waitFor();
  expect(await verdict.getAttribute("aria-busy")).toBe("false");
});

test("a long table of 140 readings comes whole, and in the order of reading", async () => {
  const page = await openedAgain(/^Pattern mill/, { width: 1280, height: 900 }, () => {});
  await page.getByLabel("Reading, reading 140", { exact: true }).waitFor();
  const names = await page
    .getByLabel(/^Reading, /)
    .evaluateAll((cells) => cells.map((cell) => cell.getAttribute("aria-label")));
  expect(names).toEqual([
    ...Array.from({ length: 140 }, (_, index) => `Reading, reading ${index + 1}`),
    "Reading, next reading",
  ]);
});
