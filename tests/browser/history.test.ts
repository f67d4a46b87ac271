import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import packageFile from "../../package.json" with { type: "json" };
import { SMALL, withPhotographs } from "./photographs.ts";
import { useServedPage } from "./servedPage.ts";
import { backlash, dropFiles, EVEN, goHome, kept, openSlide, typeReadings } from "./steps.ts";
import { everythingIn, held, recordsOf } from "./store.ts";

const served = useServedPage();

const LATHE = readFileSync("sample-data/adjust-nut-lathe-2-cross-slide.json", "utf8");

interface Saved {
  readonly events?: readonly Record<string, unknown>[];
  readonly verdicts?: readonly Record<string, unknown>[];
}

const verdict = (page: Page) => page.getByRole("region", { name: "Verdict" }).getByRole("heading").first();
const history = (page: Page) => page.getByRole("list", { name: /^History, / });
const item = (page: Page, text: string | RegExp) =>
  history(page).locator(":scope > li").filter({ hasText: text });
const form = (page: Page) => page.getByRole("group", { name: "Event" });

async function openHistory(page: Page): Promise<void> {
  await page.getByText("History", { exact: true }).click();
  await page.getByRole("button", { name: "Add an event" }).waitFor();
}

async function opened(file = LATHE, open = () => served.open()): Promise<Page> {
  const page = await open();
  await dropFiles(page, ["slide.json", file]);
  await verdict(page).waitFor();
  await kept(page);
  return page;
}

async function savedFile(page: Page): Promise<Saved> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save a file" }).click(),
  ]);
  return JSON.parse(readFileSync(await download.path(), "utf8"));
}

const keptInspection = async (page: Page): Promise<Saved> =>
  (await recordsOf(page))[0]?.inspection as unknown as Saved;

/** A picture as a camera makes it, larger than is kept, drawn in the browser. */
const photograph = (page: Page, width: number, height: number): Promise<Buffer> =>
  page
    .evaluate(
      async ([wide, high]) => {
        const canvas = document.createElement("canvas");
        canvas.width = wide;
        canvas.height = high;
        const context = canvas.getContext("2d");
        context?.fillRect(0, 0, wide / 2, high);
        return canvas.toDataURL("image/png").split(",")[1] ?? "";
      },
      [width, height] as const,
    )
    .then((data) => Buffer.from(data, "base64"));

test("an event is written, kept as it is typed, found again and edited; newest first, or oldest", async () => {
  const page = await opened();
  await openHistory(page);
  await page.getByRole("button", { name: "Add an event" }).press("Enter");
  await form(page).getByLabel("Date").fill("2020-02-29");
  await form(page).getByLabel("What it was").selectOption("Adjusted");
  await form(page).getByLabel("What was done").fill("Nut taken up by a quarter of a turn.");
  await kept(page);
  await page.reload();
  await openHistory(page);
  await item(page, "Nut taken up").waitFor();
  const headings = () => history(page).getByRole("heading").allInnerTexts();
  expect((await headings()).map((text) => text.split(/\s\s|\n/)[0]?.slice(0, 6))).toEqual([
    "Survey",
    "Adjust",
  ]);
  await page.getByRole("button", { name: "Oldest first" }).click();
  expect((await headings())[0]).toContain("29 Feb 2020");

  await page.getByRole("button", { name: "Edit: adjusted, 29 Feb 2020" }).click();
  await form(page).getByLabel("What was done").fill("Nut taken up by half a turn.");
  await form(page).getByRole("button", { name: "Done" }).click();
  await item(page, "Nut taken up by half a turn.").waitFor();
  expect((await savedFile(page)).events).toEqual([
    { date: "2020-02-29", kind: "adjusted", note: "Nut taken up by half a turn." },
  ]);
});

test("a deleted event comes back with its photographs, by the notice and by Ctrl+Z", async () => {
  const page = await opened(withPhotographs());
  await openHistory(page);
  const before = (await keptInspection(page)).events;
  await page.getByRole("button", { name: /^Delete: adjusted/ }).click();
  await expect.poll(() => item(page, "Nut taken up").count()).toBe(0);
  await page.getByRole("button", { name: "Undo" }).click();
  await item(page, "Nut taken up").waitFor();
  await kept(page);
  expect((await keptInspection(page)).events).toEqual(before);

  await page.getByRole("button", { name: /^Delete: adjusted/ }).click();
  await backlash(page, 1).press("Control+z");
  await item(page, "Nut taken up").getByRole("img").nth(1).waitFor();
});

test("photographs are shown small and large with their caption, and are in the saved file byte for byte", async () => {
  const file = withPhotographs();
  const page = await opened(file);
  const light = JSON.stringify(await recordsOf(page));
  expect(light).not.toContain(SMALL.toString("base64").slice(0, 40));
  await openHistory(page);
  await item(page, "Nut taken up")
    .getByRole("img", { name: "The nut before it was taken up" })
    .nth(1)
    .waitFor();
  await page
    .getByRole("button", { name: "Show large: The nut before it was taken up" })
    .first()
    .press("Enter");
  const large = page.getByRole("dialog", { name: "The nut before it was taken up" });
  const image = large.getByRole("img");
  await image.waitFor();
  expect(await image.evaluate((element) => (element as HTMLImageElement).naturalWidth)).toBe(192);
  await page.keyboard.press("Escape");
  await expect.poll(() => large.count()).toBe(0);
  expect((await savedFile(page)).events).toEqual(JSON.parse(file).events);
});

test("a large photograph is made smaller, a small one is kept byte for byte, and what is none is refused", async () => {
  const page = await opened();
  const large = await photograph(page, 4000, 3000);
  await openHistory(page);
  await page.getByRole("button", { name: "Add an event" }).click();
  await page.getByLabel("Add photographs").setInputFiles([
    { name: "screw.png", mimeType: "image/png", buffer: large },
    { name: "notes.png", mimeType: "image/png", buffer: Buffer.from("no picture") },
    { name: "nut.png", mimeType: "image/png", buffer: SMALL },
  ]);
  await page
    .getByRole("alert")
    .filter({ hasText: "notes.png: this browser cannot show it as a picture" })
    .waitFor();
  await form(page).getByLabel("What it shows").nth(1).waitFor();
  await form(page).getByLabel("What it shows").first().fill("The middle of the screw");
  await form(page).getByRole("button", { name: "Done" }).click();
  await item(page, /^\s*Other/)
    .getByRole("img", { name: "The middle of the screw" })
    .waitFor();
  const [event] = (await savedFile(page)).events ?? [];
  const [screw, nut] = (event?.pictures ?? []) as Record<string, unknown>[];
  expect(screw).toMatchObject({
    type: "image/jpeg",
    width: 1600,
    height: 1200,
    name: "screw.png",
    caption: "The middle of the screw",
  });
  // The first bytes of a JPEG, ISO/IEC 10918-1: start of image, then a marker.
  expect(Buffer.from(String(screw?.data), "base64").subarray(0, 3)).toEqual(Buffer.of(0xff, 0xd8, 0xff));
  expect(nut).toMatchObject({ type: "image/png", width: 192, height: 192, data: SMALL.toString("base64") });
});

test("what a file carried is there when it is opened in another browser", async () => {
  const page = await opened(withPhotographs());
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save a file" }).click(),
  ]);
  const other = await opened(readFileSync(await download.path(), "utf8"));
  await openHistory(other);
  await item(other, "Nut taken up").getByRole("img").nth(1).waitFor();
});

test("pictures that nothing refers to go after a day, and not while a deletion can be taken back", async () => {
  const page = await opened(withPhotographs(), () => served.openApart());
  await goHome(page);
  const stored = async () =>
    JSON.parse(await everythingIn(page)).find(([name]: [string]) => name === "pictures")[1];
  expect(await stored()).toHaveLength(2);
  await page.getByRole("button", { name: /^Delete / }).click();
  const days = async (count: number) => {
    await page.clock.setFixedTime(Date.now() + count * 86_400_000);
    const other = await served.openBeside(page);
    await other.getByRole("heading", { name: "Look at a sample" }).waitFor();
    await other.waitForLoadState("networkidle");
    await other.close();
  };
  await page.clock.install();
  await days(0);
  await expect.poll(async () => (await stored())[0]?.unusedSince).toBeDefined();
  expect(await stored()).toHaveLength(2);
  await days(2);
  await expect.poll(async () => (await stored()).length).toBe(0);
  // The notice that offers to take it back is still there, and brings back all of it.
  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(async () => (await stored()).length).toBe(2);
  await days(4);
  await expect.poll(async () => (await stored())[0]?.unusedSince).toBe(undefined);
  expect(await stored()).toHaveLength(2);
});

test("a verdict is noted when readings were changed and a file is saved, once, with version and chance", async () => {
  const page = await opened();
  expect((await savedFile(page)).verdicts).toBe(undefined);
  await backlash(page, 2).fill("0.234");
  await held(page, "0.234");
  await page.locator("[aria-busy=false]").first().waitFor();
  await kept(page);
  const title = await verdict(page).textContent();
  const saved = await savedFile(page);
  expect(saved.verdicts).toEqual([
    {
      survey: JSON.parse(LATHE).surveys[0].id,
      given: expect.stringMatching(/^\d{4}-\d{2}-\d{2}T/),
      version: packageFile.version,
      verdict: "adjust-nut",
      title: title?.trim(),
      chance: expect.any(Number),
      summary: expect.stringContaining("Take up the nut"),
    },
  ]);
  expect((await savedFile(page)).verdicts).toHaveLength(1);
  await page.getByText(/, and in a file$/).waitFor();
  await openHistory(page);
  await item(page, title?.trim() ?? "")
    .getByText(`by version ${packageFile.version}`)
    .waitFor();
});

test("looking at an inspection notes nothing; its report and an event note the verdict, and its file stays its own", async () => {
  const page = await opened();
  await goHome(page);
  await page.getByRole("region", { name: "Saved in this browser" }).getByRole("link").click();
  await verdict(page).waitFor();
  await goHome(page);
  expect((await keptInspection(page)).verdicts).toBe(undefined);
  await page
    .getByText(/saved /)
    .first()
    .waitFor();

  await page.getByRole("region", { name: "Saved in this browser" }).getByRole("link").click();
  await page.getByText("Report", { exact: true }).click();
  await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("link", { name: "Save as a file" }).click(),
  ]);
  await expect.poll(async () => (await keptInspection(page)).verdicts?.length).toBe(1);
  // The same file opened again is still the same inspection.
  await dropFiles(page, ["slide.json", LATHE]);
  await verdict(page).waitFor();
  expect(await recordsOf(page)).toHaveLength(1);
});

test("a verdict is noted when another survey is begun or the inspection is left, and goes with its survey", async () => {
  const page = await served.open();
  await openSlide(page, EVEN.slice(0, -1));
  await typeReadings(page, EVEN.slice(-1));
  await page
    .getByRole("heading", { name: "Measure more before deciding" })
    .or(verdict(page))
    .first()
    .waitFor();
  await page.getByRole("region", { name: "Verdict" }).and(page.locator("[aria-busy=false]")).waitFor();
  await kept(page);
  await page.getByRole("button", { name: "New survey" }).click();
  await kept(page);
  await expect.poll(async () => (await keptInspection(page)).verdicts?.length).toBe(1);
  await page.getByLabel("Survey", { exact: true }).selectOption({ index: 0 });
  await page.getByText("Details", { exact: true }).click();
  await page.getByRole("button", { name: "Delete this survey" }).click();
  await kept(page);
  await expect.poll(async () => (await keptInspection(page)).verdicts).toBe(undefined);
  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(async () => (await keptInspection(page)).verdicts?.length).toBe(1);

  const left = await opened();
  await backlash(left, 2).fill("0.234");
  await held(left, "0.234");
  await left.locator("[aria-busy=false]").first().waitFor();
  await goHome(left);
  await expect.poll(async () => (await keptInspection(left)).verdicts?.length).toBe(1);
});

test("on a phone the history fits, by day and by night, and all in it is 48 pixels high", async () => {
  const page = await served.open({ width: 360, height: 740 });
  await dropFiles(page, ["slide.json", withPhotographs()]);
  await verdict(page).waitFor();
  await openHistory(page);
  await page.getByRole("button", { name: /^Edit: adjusted/ }).click();
  await form(page).getByLabel("What it shows").first().waitFor();
  const wide = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(wide).toBe(0);
  const targets = page
    .locator("tightspot-history")
    .locator("button:visible, input:visible, select, textarea");
  const heights = await targets.evaluateAll((found) =>
    found.map((element) => element.getBoundingClientRect().height),
  );
  expect(heights.length).toBeGreaterThan(10);
  expect(Math.min(...heights)).toBeGreaterThanOrEqual(48);
});
