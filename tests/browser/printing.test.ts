import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { inOneLineOf, PAPERS } from "./paper.ts";
import { pdfPages } from "./pdfText.ts";
import { useServedPage } from "./servedPage.ts";
import { dropFiles, goHome } from "./steps.ts";

const served = useServedPage();

interface PositionFile {
  surveys: {
    readings: { target: number; direction: string; reading: number; run: number; excluded?: string }[];
  }[];
}

const LONG = "positioning-pattern-mill-table";
const longTable = (): PositionFile => JSON.parse(readFileSync(`sample-data/${LONG}.json`, "utf8"));

async function openLongTable(page: Page, file = longTable()): Promise<void> {
  await dropFiles(page, [`${LONG}.json`, JSON.stringify(file)]);
  await page.getByRole("heading", { name: "Readings", exact: true }).waitFor();
}

/** What stands on each page of paper. */
async function pagesOf(page: Page, format: "A4" | "Letter" = "A4"): Promise<readonly string[]> {
  return pdfPages(await page.pdf({ format })).map(({ text }) => inOneLineOf(text));
}

/** Keeps a part of the program from ever being loaded. @returns how often it was asked for */
async function hold(page: Page, part: RegExp): Promise<() => number> {
  let asked = 0;
  await page.route(part, () => {
    asked += 1;
  });
  return () => asked;
}

test.each([
  ["as read", () => false],
  ["with many struck", (run: number) => run > 1],
])("each page that a long table goes on to has its head, and whole rows: %s", async (_, isStruck) => {
  const file = longTable();
  const readings = file.surveys.flatMap((survey) => survey.readings);
  for (const [index, reading] of readings.entries())
    if (isStruck(reading.run)) reading.excluded = `clamp loose at ${index + 1}`;
  const page = await served.open();
  await openLongTable(page, file);
  await page.getByText(/^Assumed/).waitFor();
  for (const { format } of PAPERS) {
    const pages = (await pagesOf(page, format)).map((text) => ({
      heads: text.match(/Target ?mm ?Direction ?Reading ?mm ?Run/g)?.length ?? 0,
      rows: [...text.matchAll(/(\d+) (-?\d+) (adv|ret) (\S+) (\d)( Struck: clamp loose at \1(?!\d))?/g)],
    }));
    expect(pages.filter(({ rows }) => rows.length > 0).length).toBeGreaterThan(3);
    for (const { heads, rows } of pages) expect(heads).toBe(rows.length > 0 ? 1 : 0);
    const told = pages.flatMap(({ rows }) => rows);
    expect(
      told.map(([, number, target, direction, reading, run, struck]) => ({
        number: Number(number),
        target: Number(target),
        direction,
        reading: Number(reading),
        run: Number(run),
        isStruck: struck !== undefined,
      })),
    ).toEqual(
      readings.map(({ target, direction, reading, run }, index) => ({
        number: index + 1,
        target,
        direction: direction.slice(0, 3),
        reading,
        run,
        isStruck: isStruck(run),
      })),
    );
  }
});

test("the heading of the readings stands on the page where their table begins", async () => {
  const page = await served.open();
  await openLongTable(page);
  await page.getByText(/^Assumed/).waitFor();
  // Whatever stands before it, it comes to no foot of a page alone.
  for (const above of [0, 30, 60, 90]) {
    await page.locator("tightspot-readings").evaluate((readings, margin) => {
      readings.style.marginTop = `${margin}px`;
    }, above);
    for (const { format } of PAPERS) {
      const pages = await pagesOf(page, format);
      const begins = pages.filter((text) => /\b1 0 adv -0\.071 1\b/.test(text));
      expect(begins).toHaveLength(1);
      expect(begins[0]).toContain("Readings Way of measuring");
    }
  }
});

test("the profile and the screw are on paper though neither was drawn on the screen", async () => {
  const page = await served.open();
  const asked = await hold(page, /assets\/drawProfile-/);
  await openLongTable(page);
  await page.getByRole("heading", { name: "Adjust the nut" }).waitFor();
  await page.evaluate(() => customElements.whenDefined("tightspot-screw"));
  expect(await page.locator("tightspot-screw").count()).toBe(0);
  const text = (await pagesOf(page)).join(" ");
  expect(asked()).toBeGreaterThan(0);
  expect(text).toMatch(/loosest spot 0\.\d+ mm at \d+ mm/);
  expect(text).toContain("The screw along its travel");
  expect(text).not.toContain("Print it again");
});

test("what has not come to the screen yet is on paper whole", async () => {
  const page = await served.open();
  await openLongTable(page);
  await page.getByText(/^Assumed/).waitFor();
  await goHome(page);
  // From now on there is no further frame.
  await page.evaluate(() => {
    window.requestAnimationFrame = () => 0;
  });
  await page.goBack();
  await page.getByRole("heading", { name: "Adjust the nut" }).waitFor();
  expect(await page.locator("tightspot-readings, tightspot-profile-chart").count()).toBe(0);
  const text = (await pagesOf(page)).join(" ");
  expect(text).toMatch(/loosest spot 0\.\d+ mm at \d+ mm/);
  expect(text).toContain("The screw along its travel");
  expect(text).toMatch(/\b140 0 ret 0\.076 5\b/);
  expect(text).toMatch(/Assumed \(6\)/);
});

test("what is printed before there is a verdict says so, and asks for no readings that there are", async () => {
  const page = await served.open();
  const asked = await hold(page, /assets\/worker-/);
  await openLongTable(page);
  const text = (await pagesOf(page)).join(" ");
  expect(asked()).toBeGreaterThan(0);
  expect(text).toContain("this was printed before they were worked out. Print it again");
  expect(text).not.toContain("Read the backlash at");
});

test("what is printed before the screw could be drawn says so", async () => {
  const page = await served.open();
  const asked = await hold(page, /assets\/screwPanel-/);
  await openLongTable(page);
  await page.getByRole("heading", { name: "Adjust the nut" }).waitFor();
  const text = (await pagesOf(page)).join(" ");
  expect(asked()).toBe(1);
  expect(text).toContain("The drawing of the screw is not here");
});

test("what is printed while a verdict is worked out anew says that it does not know of the last change", async () => {
  const page = await served.open();
  await openLongTable(page);
  await page.getByText(/^Assumed/).waitFor();
  const words = "verdict and profile do not know of the last change yet";
  expect((await pagesOf(page)).join(" ")).not.toContain(words);
  await page.evaluate(() => {
    // Nothing that is asked from now on is answered.
    Worker.prototype.postMessage = () => {};
  });
  await page.getByLabel("Reading, reading 3", { exact: true }).fill("50.93");
  await page.locator("section[aria-label=Verdict][aria-busy=true]").waitFor();
  expect((await pagesOf(page)).join(" ")).toContain(words);
});

test.each(["remake-screw-worn-middle-boring-mill-table", "measure-more-lathe-4-cross-slide"])(
  "the page on paper has the headings of its readings, and no last page for a line left over: %s",
  async (name) => {
    const page = await served.open();
    await dropFiles(page, [`${name}.json`, readFileSync(`sample-data/${name}.json`, "utf8")]);
    await page.getByText(/^Assumed/).waitFor();
    for (const { format } of PAPERS) {
      const pages = pdfPages(await page.pdf({ format })).map(({ text }) => inOneLineOf(text));
      expect(pages.join(" ")).toMatch(/Position ?mm ?Backlash ?mm/);
      // What is assumed stands whole on the last page, after the end at least of what comes before it.
      expect(pages.at(-1)).toMatch(/after ISO 14253-1 .* Assumed \([678]\).* The working range/);
      expect(pages.at(-1)).toContain("How much the nut can still take up is not known.");
    }
  },
);
