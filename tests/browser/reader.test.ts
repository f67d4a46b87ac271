import { expect, test } from "vitest";
import { useServedPage } from "./servedPage.ts";
import { EVEN, openSlide, WORN } from "./steps.ts";

const served = useServedPage();

test("by keyboard, a new inspection begins at its heading, then asks for the units", async () => {
  const page = await served.open();
  await page.getByRole("link", { name: "New inspection" }).press("Enter");
  const focused = page.locator("*:focus");
  await page.getByRole("heading", { name: "Which slide is it?" }).and(focused).waitFor();
  await page.keyboard.press("Tab");
  await page.getByRole("radio", { name: "Millimetres" }).and(focused).waitFor();
  await page.keyboard.press("ArrowRight");
  await page.getByRole("radio", { name: "Inches", checked: true }).waitFor();
  await page.keyboard.press("Tab");
  await page.getByLabel("Travel from, in").and(focused).waitFor();
});

test("a change of verdict is announced once, politely", async () => {
  const page = await served.open();
  await openSlide(page, EVEN);
  await page.getByLabel("End float of the screw").fill("0.01 0.01");
  const verdict = page.getByRole("status").filter({ hasText: "Adjust the nut" });
  await verdict.waitFor({ state: "attached" });
  const spoken = await verdict.evaluateHandle((status) => {
    const said: string[] = [];
    new MutationObserver(() => said.push(status.textContent ?? "")).observe(status, {
      characterData: true,
      childList: true,
      subtree: true,
    });
    return said;
  });
  for (const [index, [, backlash]] of WORN.entries()) {
    await page.getByLabel(`Backlash, reading ${index + 1}`, { exact: true }).fill(backlash);
  }
  await page.getByRole("heading", { name: "Remake the screw, with nuts to match" }).waitFor();
  const said = await spoken.jsonValue();
  expect(said.at(-1)).toBe("Remake the screw, with nuts to match");
  expect(said.filter((text, index) => text === said[index - 1])).toEqual([]);
  expect(await page.getByRole("alert").getByRole("paragraph").count()).toBe(0);
});

test("the tables have headings, and the chart is described in words", async () => {
  const page = await served.open();
  await page.getByRole("button", { name: /^Boring mill, table/ }).click();
  const readings = page.getByRole("table", { name: /^Readings/ });
  await readings.getByRole("columnheader", { name: "Position mm" }).waitFor();
  await readings.getByRole("rowheader").nth(2).waitFor();
  await page.getByRole("img", { name: /^Lost motion against position along the travel from 0 mm/ }).waitFor();
  await page.getByText("The same as a table").click();
  const profile = page.getByRole("table", { name: "Lost motion along the travel" });
  expect(await profile.getByRole("columnheader").allInnerTexts()).toEqual([
    "Position, mm",
    "Lost motion, mm",
    "95 % from",
    "to",
    "Left after adjusting",
  ]);
});
