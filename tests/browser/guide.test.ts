import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import type { PairReading } from "../../src/inspection/schema.ts";
import { useServedPage } from "./servedPage.ts";
import { beginSlide, dropFiles, kept } from "./steps.ts";

const served = useServedPage();

const SAMPLE = JSON.parse(readFileSync("sample-data/remake-screw-worn-at-one-end-planer-head.json", "utf8"));
const [SURVEY] = SAMPLE.surveys;
const READINGS: readonly PairReading[] = SURVEY.readings;

test("13 stations read twice with the keyboard alone, with slips repaired and a reload, lead to the file's verdict", async () => {
  const page = await served.open();
  const { endFloat, ...survey } = SURVEY;
  await dropFiles(page, [
    "slide.json",
    JSON.stringify({ ...SAMPLE, surveys: [{ ...survey, readings: [] }] }),
  ]);
  await page.getByRole("radio", { name: "Handwheel dial", checked: true }).waitFor();
  await tabTo(page, "Next: end float");
  await page.keyboard.press("Enter");
  await page.getByLabel("Sweep at the screw’s end").and(page.locator("*:focus")).waitFor();
  for (const sweep of endFloat) await enter(page, String(sweep));
  await enter(page, "");
  await page.getByRole("heading", { name: /stations?, \d+ readings/ }).waitFor();

  // Thirteen stations, out and back; the sample reads the first one once more at the end.
  const stations = READINGS.slice(0, 13).map(({ position }) => position);
  await page.keyboard.press("Shift+Tab");
  while (!(await page.getByLabel("Positions to read at").evaluate(isFocused)))
    await page.keyboard.press("Shift+Tab");
  await page.keyboard.press("ControlOrMeta+a");
  await page.keyboard.type(stations.join(" "));
  await page.getByRole("heading", { name: "13 stations, 26 readings" }).waitFor();
  await tabTo(page, "Start reading");
  await page.keyboard.press("Enter");

  const [out, half, rest] = [READINGS.slice(0, 8), READINGS[8], READINGS.slice(9, 26)];
  for (const reading of out) await enterPair(page, reading);

  // The first slip: a decimal point that slipped. It is told at once, and corrected in its place.
  if (half === undefined) throw new Error("The sample has more readings.");
  await enter(page, String(half.advancing));
  await enter(page, String(half.advancing + 10 * (half.retracting - half.advancing)));
  await page.getByRole("alert").filter({ hasText: "Reading 9" }).filter({ hasText: "ten times" }).waitFor();
  await page.keyboard.press("ArrowUp");
  await page.getByRole("heading", { name: `Correcting reading 9, at ${half.position} in` }).waitFor();
  await page.keyboard.press("Enter");
  await enter(page, String(half.retracting));
  await page.getByRole("heading", { name: `${READINGS[9]?.position} in`, exact: true }).waitFor();

  for (const reading of rest.slice(0, 5)) await enterPair(page, reading);

  // In the middle of a pair, the page is loaded again.
  const [middle] = rest.slice(5);
  await enter(page, String(middle?.advancing));
  await page.keyboard.type(String(middle?.retracting).slice(0, 1));
  await kept(page);
  await page.reload();
  const field = page.getByLabel("Dial, retracting, div.");
  await field.and(page.locator("*:focus")).waitFor();
  expect(await field.inputValue()).toBe(String(middle?.retracting).slice(0, 1));
  await page.keyboard.press("End");
  await enter(page, String(middle?.retracting).slice(1));

  // The second slip: figures of another station. It is taken back as a whole, and read again.
  await enterPair(page, READINGS[0] ?? half);
  await page.keyboard.press("ControlOrMeta+z");
  await page
    .getByRole("status")
    .filter({ hasText: "Taken back: the reading at" })
    .waitFor({ state: "attached" });
  for (const reading of rest.slice(6)) await enterPair(page, reading);

  await page.getByRole("heading", { name: "All that was planned is read" }).waitFor();
  await tabTo(page, "Another position");
  await page.keyboard.press("Enter");
  await enter(page, "0");
  await enterPair(page, READINGS[26] ?? half);

  const byHand = await verdictOf(page);
  const saved = JSON.parse(await savedText(page));
  const entered: readonly PairReading[] = saved.surveys[0].readings;
  expect(entered.map(({ time: _time, ...reading }) => reading)).toEqual(READINGS);
  const times = entered.map(({ time }) => Date.parse(time ?? ""));
  expect(times).toEqual([...times].sort((a, b) => a - b));
  expect(saved.surveys[0].endFloat).toEqual(endFloat);

  const fromFile = await served.open();
  await dropFiles(fromFile, ["sample.json", JSON.stringify(SAMPLE)]);
  expect(byHand).toEqual(await verdictOf(fromFile));
});

test("a gauge that types its value and Enter is enough, wherever the cursor was left", async () => {
  const page = await served.open();
  await begin(page, "0 25 50");
  await page.getByRole("heading", { name: "0 mm", exact: true }).click();
  await page.locator("body").evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await page.keyboard.type("+0.213");
  await page.keyboard.press("Enter");
  await page.keyboard.type("0.210 mm");
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "50 mm", exact: true }).waitFor();
  expect(await figures(page)).toEqual(["0.210 mm", "0.213 mm"]);
});

test("values are read as machinists write them, in the unit shown", async () => {
  const page = await served.open();
  await begin(page, "0 25 50 75");
  await enter(page, "8 thou");
  await page.getByLabel("Unit of a bare number").selectOption("thou");
  await page.getByLabel("Sweep of the indicator, thou").and(page.locator("*:focus")).waitFor();
  await enter(page, "8");
  await page.getByLabel("Unit of a bare number").selectOption("mm");
  await enter(page, "5 tenths");
  await page.getByText("a tenth is a tenth of a thousandth of an inch").first().waitFor();
  await enter(page, "0,21");
  await page.getByRole("heading", { name: "75 mm", exact: true }).waitFor();
  expect(await figures(page)).toEqual(["0.21 mm", "0.2032 mm", "0.2032 mm"]);
});

test("a value that looks like a slip is marked while it is typed, before it is entered", async () => {
  const page = await served.open();
  await begin(page, "0 25 50 75");
  for (const value of ["0.21", "0.20", "0.21"]) await enter(page, value);
  await page.keyboard.type("2.1");
  await page.getByText("2.10 mm is ten times what the readings around it say (0.21 mm)").waitFor();
  await page.keyboard.press("Escape");
  await page.getByText("ten times").waitFor({ state: "detached" });
  await page.keyboard.type("0.21");
  await page.keyboard.press("Enter");
  await page.getByRole("list", { name: "Readings taken" }).getByRole("listitem").nth(3).waitFor();
  expect(await page.getByText("ten times").count()).toBe(0);
});

test("a reading is struck with a reason and stays, or is taken again", async () => {
  const page = await served.open();
  await begin(page, "0 25 50 75");
  for (const value of ["0.21", "0.35", "0.21"]) await enter(page, value);
  const taken = page.getByRole("list", { name: "Readings taken" }).getByRole("listitem");
  await taken.nth(1).getByRole("button").first().click();
  await page.getByRole("button", { name: "Take it again" }).click();
  await page.getByRole("heading", { name: "25 mm", exact: true }).waitFor();
  await enter(page, "0.20");
  await page.getByText("Struck: Taken again").waitFor();
  await page.getByRole("heading", { name: "75 mm", exact: true }).waitFor();

  await taken.first().getByRole("button").first().click();
  await page.getByRole("button", { name: "Indicator knocked" }).click();
  await page.getByText("Struck: Indicator knocked").waitFor();
  // Its station has no reading any more, and is asked for again.
  await page.getByRole("heading", { name: "25 mm", exact: true }).waitFor();
  expect(await taken.count()).toBe(4);
});

test("once there are readings enough, the station that tells most is offered, and can be gone to", async () => {
  const page = await served.open();
  await begin(page, "0 10 20 30 40 50");
  for (const value of ["0.20", "0.21", "0.20", "0.21", "0.20"]) await enter(page, value);
  const offer = page.getByText(/^Most telling now: 300 mm/);
  await offer.waitFor();
  await page.getByRole("button", { name: "Read at 300" }).click();
  await page.getByText("Off the plan, first reading").waitFor();
  await enter(page, "0.20");
  await page.getByRole("heading", { name: "50 mm", exact: true }).waitFor();
  expect((await figures(page)).length).toBe(6);
});

test("on a phone all that is needed for a reading is in sight, and keys are 48 pixels or more", async () => {
  const page = await served.open({ width: 360, height: 740 });
  await begin(page, "0 25 50");
  for (const digit of ["0", "point", "2", "1"]) {
    await page
      .getByRole("group", { name: "Keypad" })
      .getByRole("button", { name: digit, exact: true })
      .click();
  }
  await page.getByRole("group", { name: "Keypad" }).getByRole("button", { name: "Enter" }).click();
  await page.getByRole("heading", { name: "25 mm", exact: true }).waitFor();
  expect(await figures(page)).toEqual(["0.21 mm"]);
  const keys = page.getByRole("group", { name: "Keypad" }).getByRole("button");
  const boxes = () =>
    keys.evaluateAll((all) =>
      all
        .map((key) => key.getBoundingClientRect())
        .map(({ width, height, bottom }) => ({ width, height, bottom })),
    );
  // The page may still be scrolling to them, or make room for the verdict.
  await expect
    .poll(async () => Math.max(...(await boxes()).map(({ bottom }) => bottom)))
    .toBeLessThanOrEqual(740);
  const sizes = (await boxes()).flatMap(({ width, height }) => [width, height]);
  expect(sizes).toHaveLength(28);
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(48);
  const station = await page.getByRole("heading", { name: "25 mm", exact: true }).boundingBox();
  expect(station?.y).toBeGreaterThan(0);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
});

test("on a phone the field stays where it is while the verdict comes above it, however fast one types", async () => {
  const page = await served.open({ width: 360, height: 740 });
  await begin(page, "0 25 50 75 100 125 150");
  const field = page.getByLabel("Sweep of the indicator");
  const top = async () => Math.round((await field.boundingBox())?.y ?? 0);
  await enter(page, "0.21");
  await page.getByRole("heading", { name: "25 mm", exact: true }).waitFor();
  const before = await top();
  expect(before).toBeGreaterThan(0);
  for (const value of ["0.20", "0.21", "0.20", "0.21"]) await enter(page, value);
  const verdict = page.getByRole("region", { name: "Verdict", exact: true });
  // Each figure typed makes the browser scroll to the field by itself.
  for (let count = 0; count < 40 && (await verdict.getByRole("heading").count()) < 2; count++)
    await page.keyboard.type("1");
  await page.getByText(/^Most telling now/).waitFor();
  await page.keyboard.type("1");
  await expect.poll(top).toBe(before);
});

test("each way of measuring and each correction is drawn, with a description", async () => {
  const page = await served.open();
  await beginSlide(page);
  for (const description of [
    /handwheel is held still/,
    /same mark of its dial twice/,
    /just returns to its mark/,
  ]) {
    await page.getByRole("img", { name: description }).waitFor();
  }
  await page.getByText("Corrections, where they are needed").click();
  await page.getByRole("img", { name: /at an angle a to the travel/ }).waitFor();
  await page.getByRole("radio", { name: "Handwheel dial" }).check();
  await page.getByRole("img", { name: /its zero in the middle/ }).waitFor();
  await page.getByRole("img", { name: /graduated on diameter shows two/ }).waitFor();
  await page.getByRole("img", { name: /key is narrower than the keyway/ }).waitFor();
  expect(await page.getByRole("button", { name: "Next: end float" }).isDisabled()).toBe(true);
  await page.getByLabel("Travel per division").fill("0.02");
  await page.getByRole("button", { name: "Next: end float" }).click();
  await page.getByRole("img", { name: /indicator on the end of the screw/ }).waitFor();
  await page.getByText("no adjusting of the nut removes it").waitFor();
});

/** Describes a slide and goes on to reading at the given stations, once. */
async function begin(page: Page, stations: string): Promise<void> {
  await beginSlide(page);
  await page.getByRole("button", { name: "Next: end float" }).click();
  await page.getByRole("button", { name: "Go on without it" }).click();
  await page.getByLabel("Read each again on the way back").uncheck();
  await page.getByLabel("Positions to read at").fill(stations);
  await page.getByRole("button", { name: "Start reading" }).click();
  await page.getByLabel("Sweep of the indicator").and(page.locator("*:focus")).waitFor();
}

async function enter(page: Page, text: string): Promise<void> {
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
}

async function enterPair(page: Page, { advancing, retracting }: PairReading): Promise<void> {
  await enter(page, String(advancing));
  await enter(page, String(retracting));
}

const isFocused = (element: Element): boolean => element.matches(":focus");

/** Moves on with Tab until the button of that name has the cursor. */
async function tabTo(page: Page, name: string): Promise<void> {
  const button = page.getByRole("button", { name, exact: true });
  await button.waitFor();
  for (let count = 0; count < 80 && !(await button.evaluate(isFocused)); count++)
    await page.keyboard.press("Tab");
  expect(await button.evaluate(isFocused)).toBe(true);
}

/** The figures of the readings taken, the latest first. */
async function figures(page: Page): Promise<readonly string[]> {
  return page.getByRole("list", { name: "Readings taken" }).locator(".figure").allInnerTexts();
}

async function verdictOf(page: Page): Promise<readonly (string | null)[]> {
  const verdict = page.getByRole("region", { name: "Verdict", exact: true });
  await verdict.getByRole("heading", { name: /remake the screw, with nuts to match/i }).waitFor();
  await expect.poll(() => verdict.getAttribute("aria-busy")).toBe("false");
  return [
    await verdict.getByRole("heading").first().textContent(),
    await verdict.locator(".summary").textContent(),
  ];
}

async function savedText(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save a file" }).click(),
  ]);
  return readFileSync(await download.path(), "utf8");
}
