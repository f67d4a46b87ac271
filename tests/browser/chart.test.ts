import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { useServedPage } from "./servedPage.ts";
import { dropFiles } from "./steps.ts";

const served = useServedPage();

/** A slide worn in the middle: two equal readings every 25 mm, and a struck reading at 75 mm. */
const INSPECTION = JSON.stringify({
  format: "tightspot-inspection",
  version: 1,
  slide: {
    id: "cross-slide",
    name: "Cross slide",
    units: "mm",
    travel: { from: 0, to: 300 },
    screw: { lead: 4 },
    backlashLimit: 0.15,
  },
  surveys: [
    {
      id: "before",
      taken: "2026-03-14",
      stage: "before-repair",
      method: "push-pull",
      endFloat: [0.01],
      readings: [
        ...Array.from({ length: 13 }, (_, index) => index * 25).flatMap((position) => {
          const backlash = Number((0.11 + 0.2 * Math.exp(-(((position - 150) / 45) ** 2))).toFixed(2));
          return [
            { position, backlash },
            { position, backlash },
          ];
        }),
        { position: 75, backlash: 0.24, excluded: "stand bumped" },
      ],
    },
  ],
});

async function opened(width = 820): Promise<Page> {
  const page = await served.open({ width, height: 900 });
  await dropFiles(page, ["cross-slide.json", INSPECTION]);
  await page.getByRole("heading", { name: /Remake the screw/ }).waitFor();
  await page.locator("canvas").waitFor();
  await reader(page).scrollIntoViewIfNeeded();
  await page.locator(".chart[aria-busy=false]").waitFor();
  return page;
}

/** The colour of the profile and its readings in light mode. */
const LAYOUT_BLUE = "18,58,107";

/** The opaque colours on the canvas. */
function coloursOf(canvas: HTMLCanvasElement): string[] {
  const { data } = canvas.getContext("2d")?.getImageData(0, 0, canvas.width, canvas.height) ?? { data: [] };
  const seen = new Set<string>();
  for (let i = 0; i < data.length; i += 4)
    if (data[i + 3] === 255) seen.add(`${data[i]},${data[i + 1]},${data[i + 2]}`);
  return [...seen];
}

const reader = (page: Page): Locator => page.getByRole("slider", { name: "Read the profile off" });
const said = (page: Page): Promise<string | null> => reader(page).getAttribute("aria-valuetext");
const readout = (page: Page): Locator => page.locator("tightspot-profile-chart .readout");
const canvasOf = (page: Page): Locator => page.locator("tightspot-profile-chart canvas");
const drawn = (page: Page): Promise<string> =>
  canvasOf(page).evaluate((element) => (element as HTMLCanvasElement).toDataURL());

/** The point of the screen at a share of the chart's width, halfway up. */
async function placeOf(page: Page, share: number): Promise<{ readonly x: number; readonly y: number }> {
  const box = await reader(page).boundingBox();
  if (box === null) throw new Error("The chart is not shown.");
  return { x: box.x + box.width * share, y: box.y + box.height / 2 };
}

test("keys move from station to station and read off the profile, the readings and struck ones, with units", async () => {
  const page = await opened();
  await reader(page).focus();
  for (let station = 0; station < 3; station++) await page.keyboard.press("PageUp");
  const words = await said(page);
  expect(words).toMatch(/^At 75 mm\. Lost motion 0\.12 mm, give or take /);
  expect(words).toMatch(
    /About 0\.0\d mm left after adjusting\. Read here: 0\.12 and 0\.12 mm\. Struck: 0\.24 mm\./,
  );
  await page.keyboard.press("ArrowRight");
  expect(await said(page)).toMatch(/^At 76 mm\. Lost motion /);
  await page.keyboard.press("End");
  expect(await said(page)).toMatch(/^At 300 mm\. /);
  await readout(page).getByText("At 300 mm.").waitFor();
});

test("a pointer reads off the place it is at, and the chart marks the place", async () => {
  const page = await opened();
  expect(await canvasOf(page).evaluate(coloursOf)).toContain(LAYOUT_BLUE);
  const before = await drawn(page);
  await readout(page)
    .getByText(/Touch the chart, point at it/)
    .waitFor();
  const { x, y } = await placeOf(page, 0.5);
  await page.mouse.move(x, y);
  await readout(page)
    .getByText(/^At 1\d\d mm\. Lost motion 0\.\d\d mm/)
    .waitFor();
  await expect.poll(() => drawn(page)).not.toBe(before);
});

test("a finger reads off and can still scroll the page", async () => {
  const page = await opened(360);
  const touchAction = await reader(page).evaluate((element) => getComputedStyle(element).touchAction);
  expect(touchAction).toBe("pan-y");
});

test("dragging over a part zooms to it, and a button shows the whole travel again", async () => {
  const page = await opened();
  const [start, end] = [await placeOf(page, 0.4), await placeOf(page, 0.6)];
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move(end.x, end.y, { steps: 6 });
  await page.mouse.up();
  await page
    .getByRole("status")
    .filter({ hasText: /^Shown from 1\d\d mm to 1\d\d mm\.$/ })
    .waitFor({ state: "attached" });
  await page.getByText("The same as a table").click();
  const stations = page.getByRole("table", { name: "Readings at each station" }).getByRole("row");
  expect(await stations.count()).toBeLessThan(6);
  await page.getByRole("button", { name: "Whole travel" }).click();
  expect(await stations.count()).toBe(14);
});

test("keys and buttons zoom, and the place that is read off stays in view", async () => {
  const page = await opened();
  const status = (text: RegExp) => page.getByRole("status").filter({ hasText: text });
  await reader(page).focus();
  await page.keyboard.press("Home");
  await page.keyboard.press("+");
  await status(/^Shown from 0 mm to 150 mm\.$/).waitFor({ state: "attached" });
  await page.getByRole("button", { name: "Show it closer" }).click();
  await status(/^Shown from 0 mm to 75 mm\.$/).waitFor({ state: "attached" });
  await page.getByRole("button", { name: "Further along the travel" }).click();
  await status(/^Shown from 38 mm to 113 mm\.$/).waitFor({ state: "attached" });
  await reader(page).focus();
  await page.keyboard.press("End");
  await page.getByText("The same as a table").click();
  await page
    .getByRole("table", { name: "Readings at each station" })
    .getByRole("rowheader", { name: "300", exact: true })
    .waitFor();
  await reader(page).press("0");
  await status(/^The whole travel is shown\.$/).waitFor({ state: "attached" });
  expect(await page.getByRole("button", { name: "Show more of it" }).isDisabled()).toBe(true);
});

test("with Control the wheel zooms at the pointer; without, it scrolls the page", async () => {
  const page = await opened();
  const { x, y } = await placeOf(page, 0.5);
  await page.mouse.move(x, y);
  await page.mouse.wheel(0, 40);
  expect(await page.getByRole("button", { name: "Whole travel" }).count()).toBe(0);
  await reader(page).scrollIntoViewIfNeeded();
  const again = await placeOf(page, 0.5);
  await page.mouse.move(again.x, again.y);
  await page.keyboard.down("Control");
  await page.mouse.wheel(0, -40);
  await page.keyboard.up("Control");
  await page.getByRole("button", { name: "Whole travel" }).waitFor();
});

test("the table has the readings of each station, struck ones apart", async () => {
  const page = await opened();
  await page.getByText("The same as a table").click();
  const row = page
    .getByRole("table", { name: "Readings at each station" })
    .getByRole("row")
    .filter({ has: page.getByRole("rowheader", { name: "75", exact: true }) });
  expect(await row.getByRole("cell").allInnerTexts()).toEqual(["0.12 0.12", "0.24"]);
});

test("far from the viewport the chart is not redrawn at every key; back in view it is up to date", async () => {
  const page = await opened(412);
  const title = () => canvasOf(page).getAttribute("aria-label");
  const before = { drawn: await drawn(page), title: await title() };
  const last = page.getByLabel("Backlash, reading 26", { exact: true });
  await last.evaluate((cell) => cell.scrollIntoView());
  await last.fill("0.93");
  await expect.poll(title, { timeout: 10_000 }).not.toBe(before.title);
  expect(await drawn(page)).toBe(before.drawn);
  await canvasOf(page).scrollIntoViewIfNeeded();
  await expect.poll(() => drawn(page)).not.toBe(before.drawn);
});

test("the print has the whole profile as SVG, and the screw, wherever the page is scrolled", async () => {
  const page = await opened(1280);
  await page.getByRole("button", { name: "Show it closer" }).click();
  await page.evaluate(() => {
    window.dispatchEvent(new Event("beforeprint"));
  });
  await page.emulateMedia({ media: "print" });
  await page.getByRole("img", { name: /^Lost motion: 0\.11 mm at the tight spot/ }).waitFor();
  expect(await page.locator("canvas").isVisible()).toBe(false);
  const printed = page.locator("tightspot-profile-chart .printed");
  expect(await printed.getByText("300", { exact: true }).count()).toBe(1);
  await page.getByText(/^The screw along its travel, wear drawn/).waitFor();
});

test("with forced colours the chart takes the reader's colours", async () => {
  const page = await opened();
  const colours = () => canvasOf(page).evaluate(coloursOf);
  await expect.poll(colours).toContain(LAYOUT_BLUE);
  await page.emulateMedia({ forcedColors: "active" });
  await expect.poll(colours).not.toContain(LAYOUT_BLUE);
});
