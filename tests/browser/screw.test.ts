import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { useServedPage } from "./servedPage.ts";

const served = useServedPage();

async function opened(width = 360, sample = /^Boring mill, table/): Promise<Page> {
  const page = await served.open({ width, height: 740 });
  await page.getByRole("button", { name: sample }).click();
  await page.locator("tightspot-screw-section").scrollIntoViewIfNeeded();
  await nutOf(page).waitFor();
  return page;
}

const nutOf = (page: Page): Locator => page.getByRole("slider", { name: "Nut", exact: true });
const at = async (page: Page): Promise<number> => Number(await nutOf(page).getAttribute("aria-valuenow"));

/** Drags from the middle of the nut sideways and down, with a mouse. */
async function drag(page: Page, across: number): Promise<void> {
  await nutOf(page).scrollIntoViewIfNeeded();
  const box = await nutOf(page).boundingBox();
  if (box === null) throw new Error("The nut is not shown.");
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + across / 2, y + 5, { steps: 4 });
  await page.mouse.move(x + across, y + 5, { steps: 4 });
  await page.mouse.up();
}

test("the screw is loaded with the first verdict, and drawn once it comes near the screen", async () => {
  const page = await served.open();
  const loaded = () =>
    page.evaluate(() => performance.getEntriesByType("resource").some(({ name }) => /screwPanel/.test(name)));
  expect(await loaded()).toBe(false);
  await page.getByRole("button", { name: /^Boring mill, table/ }).click();
  await page.locator("canvas").waitFor();
  expect(await page.locator("tightspot-screw").count()).toBe(0);
  await page.locator("tightspot-screw-section").scrollIntoViewIfNeeded();
  await nutOf(page).waitFor();
  expect(await loaded()).toBe(true);
});

test.each([320, 360, 412, 820, 1440])(
  "where it is %i px wide, what stands below the screw hardly moves when the screw comes",
  async (width) => {
    const page = await served.open({ width, height: 740 });
    await page.getByRole("button", { name: /^Boring mill, table/ }).click();
    const part = page.locator("tightspot-screw-section");
    const high = async () => (await part.boundingBox())?.height ?? Number.NaN;
    await part.waitFor();
    expect(await nutOf(page).count()).toBe(0);
    const before = await high();
    await part.scrollIntoViewIfNeeded();
    await nutOf(page).waitFor();
    expect(Math.abs((await high()) - before)).toBeLessThan(48);
    await page.close();
  },
);

test("keys move the nut, and each place is told in words", async () => {
  const page = await opened();
  const nut = nutOf(page);
  await nut.press("Home");
  expect(await at(page)).toBe(0);
  expect(await nut.getAttribute("aria-valuetext")).toMatch(
    /^Nut at 0 mm: lost motion 0\.\d\d mm, give or take .*of lost motion would be left here\. .*\.$/,
  );
  await nut.press("PageUp");
  await nut.press("ArrowRight");
  expect(await at(page)).toBe(52);
  await page.getByRole("heading", { name: "Nut at 52 mm" }).waitFor();
  await nut.press("End");
  expect(await at(page)).toBe(420);
});

test("the nut follows a drag, and comes to where the screw is pressed", async () => {
  const page = await opened(820);
  await nutOf(page).press("Home");
  await drag(page, 200);
  const dragged = await at(page);
  expect(dragged).toBeGreaterThan(80);
  expect(dragged).toBeLessThan(200);
  const box = await page.locator("tightspot-screw .stage").boundingBox();
  if (box === null) throw new Error("The screw is not shown.");
  await page.mouse.click(box.x + box.width * 0.8, box.y + box.height / 2);
  expect(await at(page)).toBeGreaterThan(300);
});

test("a finger may drag it sideways, and scrolls the page up and down over it", async () => {
  const page = await opened();
  const touchAction = await page
    .locator("tightspot-screw .stage")
    .evaluate((stage) => getComputedStyle(stage).touchAction);
  expect(touchAction).toBe("pan-y");
  const before = await at(page);
  // What the browser tells when it takes a touch over for scrolling: the nut stays.
  await page.locator("tightspot-screw .stage").evaluate((stage) => {
    const pointer = {
      pointerId: 7,
      pointerType: "touch",
      clientX: 20,
      clientY: 100,
      bubbles: true,
      button: 0,
    };
    stage.dispatchEvent(new PointerEvent("pointerdown", pointer));
    stage.dispatchEvent(new PointerEvent("pointercancel", pointer));
    stage.dispatchEvent(new PointerEvent("pointerup", pointer));
  });
  expect(await at(page)).toBe(before);
});

test("a move of the nut leaves the drawing of the screw as it is, and is quick", async () => {
  const page = await opened();
  const nut = nutOf(page);
  await nut.focus();
  const took = await nut.evaluate(async (grip) => {
    const root = grip.getRootNode() as ShadowRoot;
    const panel = root.host as HTMLElement & { updateComplete: Promise<boolean> };
    const thread = root.querySelector(".stage svg path");
    const started = performance.now();
    for (let move = 0; move < 50; move++) {
      grip.dispatchEvent(new KeyboardEvent("keydown", { key: "ArrowLeft", bubbles: true }));
      await panel.updateComplete;
    }
    if (root.querySelector(".stage svg path") !== thread) throw new Error("The screw was drawn anew.");
    return (performance.now() - started) / 50;
  });
  console.info(`A move of the nut: ${took.toFixed(2)} ms.`);
  expect(took).toBeLessThan(12);
});

test("taken up, less clearance is drawn; the factor that it is drawn larger by is told", async () => {
  const page = await opened();
  const clearance = page.getByRole("img", { name: /^Screw and nut cut open: a clearance of / });
  const before = await clearance.getAttribute("aria-label");
  await page.getByRole("radio", { name: "Taken up" }).check({ force: true });
  await page.waitForFunction(([label]) => !document.querySelector(`[aria-label="${label}"]`), [before ?? ""]);
  expect(await clearance.getAttribute("aria-label")).not.toBe(before);
  await page.getByText(/Clearance of the nut here, drawn \d+ times as large as it is/).waitFor();
  await page.getByText(/^The screw along its travel, wear drawn \d+ times as large as it is$/).waitFor();
});

test("one press brings the nut to the tight spot, where it would bind nowhere", async () => {
  const page = await opened();
  await page.getByText(/Taken up until it fits here, it would bind from/).waitFor();
  await page.getByRole("button", { name: "Nut to the tight spot" }).click();
  await page.getByText("Taken up until it fits here, it would bind nowhere.").waitFor();
});

test("of a screw that holds up a load it is not told what taking up would do", async () => {
  const page = await opened(360, /^Mill, knee/);
  expect(await page.getByRole("radio", { name: "Taken up" }).count()).toBe(0);
  expect(await page.getByText(/Taken up until/).count()).toBe(0);
});
