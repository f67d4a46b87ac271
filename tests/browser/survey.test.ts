import { expect, test } from "vitest";
import { useServedPage } from "./servedPage.ts";
import { describeSlide, dropFiles, EVEN, kept, openSlide, typeReadings, WORN } from "./steps.ts";

const served = useServedPage();

test("a survey typed with the keyboard gets a verdict, which changes with the readings", async () => {
  const page = await served.open();
  await describeSlide(page);
  await page.getByRole("heading", { name: "The verdict will stand here" }).waitFor();
  await typeReadings(page, EVEN.slice(0, 3));
  await page.getByRole("heading", { name: "2 more stations to a first verdict" }).waitFor();
  await typeReadings(page, EVEN.slice(3));
  await page.getByLabel("End float of the screw").fill("0.01 0.01");
  await page.getByRole("heading", { name: "Adjust the nut" }).waitFor();
  await page.getByRole("status").filter({ hasText: "Adjust the nut" }).waitFor({ state: "attached" });

  for (const [index, [, backlash]] of WORN.entries()) {
    await page.getByLabel(`Backlash, reading ${index + 1}`, { exact: true }).fill(backlash);
  }
  await page.getByRole("heading", { name: "Remake the screw, with nuts to match" }).waitFor();
});

test("a decimal comma is read, and figures that cannot be read stay as typed with the reason", async () => {
  const page = await served.open();
  await openSlide(page);
  await typeReadings(page, [
    ["0", "0,21"],
    ["50", "0.2x"],
    ["100", "0.20"],
  ]);
  await page.getByText('Backlash is "0.2x", and "x" is not a known unit').waitFor();
  expect(await page.getByLabel("Backlash, reading 1", { exact: true }).inputValue()).toBe("0,21");
  expect(await page.getByLabel("Backlash, reading that cannot be read yet").inputValue()).toBe("0.2x");
  expect(await page.getByLabel("Position, reading 2", { exact: true }).inputValue()).toBe("100");
});

test("a figure beyond ten metres is unreadable, and does not count", async () => {
  const page = await served.open();
  await openSlide(page, EVEN);
  await typeReadings(page, [
    ["150", "1e308"],
    ["20000", "0.2"],
    ["400 in", "0.2"],
  ]);
  await page.getByText("Backlash is too large. No slide is longer than 10 m.").waitFor();
  expect(await page.getByText("Position is too large. No slide is longer than 10 m.").count()).toBe(2);
  await page.getByLabel("End float of the screw").fill("0.01 0.01");
  await page.getByRole("heading", { name: "Adjust the nut" }).waitFor();
  expect(await page.getByText(/NaN|Infinity/).count()).toBe(0);
});

test("what was entered is there when the page is loaded again, unreadable figures too", async () => {
  const page = await served.open();
  await openSlide(page);
  await typeReadings(page, [
    ["0", "0.21"],
    ["50", "0.2x"],
    ["100", "0.20"],
  ]);
  await kept(page);
  await page.reload();
  expect(await page.getByLabel("Backlash, reading that cannot be read yet").inputValue()).toBe("0.2x");
  expect(await page.getByLabel("Position, reading 2", { exact: true }).inputValue()).toBe("100");

  await page.getByRole("link", { name: "Tightspot" }).click();
  await page.getByRole("link", { name: "Slide 0 to 300 mm" }).click();
  expect(await page.getByLabel("Backlash, reading 1", { exact: true }).inputValue()).toBe("0.21");
});

test("a struck reading stays, with its reason, and does not count", async () => {
  const page = await served.open();
  await openSlide(page, EVEN);
  await typeReadings(page, [["150", "0.90"]]);
  const findings = page.getByText(/Readings 7 and 14 at 150 mm do not agree/);
  await findings.first().waitFor({ state: "attached" });
  await page.getByRole("button", { name: /^Strike or delete reading 14/ }).click();
  await page.keyboard.type("Indicator knocked");
  await page.keyboard.press("Enter");
  await page.getByText("Struck: Indicator knocked").waitFor();
  await findings.first().waitFor({ state: "detached" });
  expect(await page.getByLabel("Backlash, reading 14", { exact: true }).inputValue()).toBe("0.90");
});

test("a deleted reading can be brought back", async () => {
  const page = await served.open();
  await openSlide(page, EVEN.slice(0, 3));
  await page.getByRole("button", { name: "Strike or delete reading 2" }).click();
  await page.getByRole("button", { name: "Delete", exact: true }).click();
  expect(await page.getByLabel("Position, reading 2", { exact: true }).inputValue()).toBe("50");
  await page.getByRole("button", { name: "Undo" }).click();
  expect(await page.getByLabel("Position, reading 2", { exact: true }).inputValue()).toBe("25");
});

test("a file that cannot be read gives one message, and nothing entered is lost", async () => {
  const page = await served.open();
  await openSlide(page, EVEN);
  await page.getByLabel("End float of the screw").fill("0.01 0.01");
  await page.getByRole("heading", { name: "Adjust the nut" }).waitFor();
  for (const [name, content, message] of [
    ["broken.json", '{"format": "tightspot-inspection", ', "broken.json: line 1, column 36"],
    [
      "newer.json",
      '{"format": "tightspot-inspection", "version": 9}',
      "newer.json: version: the file is of version 9",
    ],
    ["picture.csv", "no table in here", "picture.csv: there is no row of headings"],
  ] as const) {
    await dropFiles(page, [name, content]);
    const messages = page.getByRole("alert").getByRole("paragraph");
    await messages.filter({ hasText: message }).waitFor();
    expect(await messages.count()).toBe(1);
  }
  expect(await page.getByLabel("Position, reading 13", { exact: true }).inputValue()).toBe("300");
  expect(await page.getByRole("heading", { name: "Adjust the nut" }).isVisible()).toBe(true);
});
