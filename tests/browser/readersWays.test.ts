import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { useServedPage } from "./servedPage.ts";
import { beginSlide, EVEN, openSlide } from "./steps.ts";

const served = useServedPage();

/** Goes by Tab to what has this name. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  for (let presses = 0; presses < 80; presses++) {
    if ((await target.and(page.locator("*:focus")).count()) > 0) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`Tab does not lead to ${target}.`);
}

async function type(page: Page, ...figures: readonly string[]): Promise<void> {
  for (const figure of figures) {
    await page.keyboard.type(figure);
    await page.keyboard.press("Enter");
  }
}

test("the keyboard alone leads from the first screen through slide and readings to the verdict, which is spoken", async () => {
  const page = await served.open();
  await tabTo(page, page.getByRole("link", { name: "New inspection" }));
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "Which slide is it?" }).and(page.locator("*:focus")).waitFor();
  await tabTo(page, page.getByLabel("Travel from"));
  await type(page, "0", "300", "4");
  await tabTo(page, page.getByRole("button", { name: "Start reading" }));
  await page.keyboard.press("Enter");
  const table = page.getByRole("button", { name: "Table", exact: true });
  await table.waitFor();
  await tabTo(page, table);
  await page.keyboard.press("Enter");
  await tabTo(page, page.getByLabel("Position, next reading"));
  await type(page, ...EVEN.flat());
  await tabTo(page, page.getByLabel("End float of the screw"));
  await type(page, "0.01 0.01");
  await page.getByRole("heading", { name: "Adjust the nut", level: 2 }).waitFor();
  const spoken = page.getByRole("status").filter({ hasText: "Adjust the nut" });
  await spoken.waitFor({ state: "attached" });
});

/** What lasts longer than an instant, of all that moves or fades on the page. */
const moving = (page: Page) =>
  page.evaluate(() => {
    const within = (root: ParentNode): readonly Element[] =>
      [...root.querySelectorAll("*")].flatMap((element) => [
        element,
        ...(element.shadowRoot === null ? [] : within(element.shadowRoot)),
      ]);
    const lasting = (durations: string) => durations.split(", ").some((text) => Number.parseFloat(text) > 0);
    return within(document)
      .filter((element) => {
        const { transitionDuration, animationDuration, scrollBehavior } = getComputedStyle(element);
        return lasting(transitionDuration) || lasting(animationDuration) || scrollBehavior === "smooth";
      })
      .map(({ localName, className }) => `${localName} ${className}`);
  });

test("nothing moves or fades where the reader wants less motion", async () => {
  const page = await served.open();
  await page.getByRole("button", { name: /^Boring mill, table/ }).click();
  await page.getByRole("heading", { name: /with nuts to match/ }).waitFor();
  expect((await moving(page)).length).toBeGreaterThan(0);
  await page.emulateMedia({ reducedMotion: "reduce" });
  expect(await moving(page)).toEqual([]);
});

const groundOf = (element: Locator) => element.evaluate((it) => getComputedStyle(it).backgroundColor);
const inkOf = (element: Locator) => element.evaluate((it) => getComputedStyle(it).color);

test.each(["light", "dark"] as const)(
  "in colours that the reader has chosen, %s, what is chosen has another ground than what is not, and is read on it",
  async (colorScheme) => {
    const page = await served.open();
    await page.emulateMedia({ forcedColors: "active", colorScheme });
    await page.getByRole("link", { name: "New inspection" }).click();
    const units = (name: string) => page.locator("label").filter({ hasText: name });
    await expect.poll(() => groundOf(units("Millimetres"))).not.toBe(await groundOf(units("Inches")));
    expect(await inkOf(units("Millimetres"))).not.toBe(await groundOf(units("Millimetres")));

    await page.getByRole("link", { name: "Tightspot" }).click();
    await beginSlide(page);
    const view = (name: string) => page.getByRole("button", { name, exact: true });
    await expect.poll(() => groundOf(view("Step by step"))).not.toBe(await groundOf(view("Table")));
    expect(await inkOf(view("Step by step"))).not.toBe(await groundOf(view("Step by step")));
  },
);

test("in colours that the reader has chosen, chances are still drawn as bars", async () => {
  const page = await served.open();
  await page.emulateMedia({ forcedColors: "active" });
  await openSlide(page, EVEN);
  const bar = page.locator(".bar:has(> i)").first();
  await bar.waitFor({ state: "attached" });
  expect(await groundOf(bar.locator("i"))).not.toBe(await groundOf(bar));
});
