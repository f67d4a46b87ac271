import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { send, withGauge } from "./fakeGauge.ts";
import { useServedPage } from "./servedPage.ts";
import { beginSlide, openSlide } from "./steps.ts";

const served = useServedPage();

async function connect(page: Page): Promise<void> {
  await page.getByText("Gauge on a cable").click();
  await page.getByRole("button", { name: "Connect a gauge" }).click();
  await page.getByText("Nothing yet: press the gauge’s button.").waitFor();
}

async function beginReading(page: Page): Promise<void> {
  await beginSlide(page);
  await page.getByRole("button", { name: "Next: end float" }).click();
  await page.getByRole("button", { name: "Go on without it" }).click();
  await page.getByLabel("Positions to read at").fill("0 25 50 75");
  await page.getByRole("button", { name: "Start reading" }).click();
}

test("a gauge's own button takes the value of each station, whose number is picked in the raw line", async () => {
  const page = await withGauge(served);
  await beginReading(page);
  await page.getByText("Gauge on a cable").click();
  await page.getByLabel("Baud rate").selectOption("4800");
  await page.getByLabel("Data, parity, stop").selectOption("7E1");
  await page.getByRole("button", { name: "Connect a gauge" }).click();
  await page.getByText("connected", { exact: true }).waitFor();
  expect(await page.evaluate(() => window.fakeGauge.opened)).toEqual({
    baudRate: 4800,
    dataBits: 7,
    parity: "even",
    stopBits: 1,
  });

  await send(page, "A1 9.500 +0.2");
  await send(page, "13 mm\r\n");
  const taken = page.getByRole("list", { name: "Readings taken" }).locator(".figure");
  await expect.poll(() => taken.allTextContents()).toEqual(["9.500 mm"]);

  // That was the wrong number: it is taken back, and the right one picked.
  await page.getByRole("button", { name: "+0.213 mm" }).click();
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByRole("button", { name: "Take this value" }).click();
  await expect.poll(() => taken.allTextContents()).toEqual(["0.213 mm"]);
  await send(page, "A1 9.600 +0.211 mm\r\n");
  await expect.poll(() => taken.allTextContents()).toEqual(["0.211 mm", "0.213 mm"]);
  await page.getByRole("heading", { name: "50 mm", exact: true }).waitFor();
});

test("a pattern picks what pressing a number cannot, and is there when the page is loaded again, with the gauge", async () => {
  const page = await withGauge(served);
  await beginReading(page);
  await connect(page);
  await page.getByLabel("A pattern of your own").fill("Y=(");
  await page.getByLabel("A pattern of your own").press("Enter");
  await page.getByText("This is no pattern").waitFor();
  await page.getByLabel("A pattern of your own").fill("Y=([-+.0-9]+)");
  await page.getByLabel("A pattern of your own").press("Enter");
  await send(page, "X=0.100;Y=0.210\r");
  const taken = page.getByRole("list", { name: "Readings taken" }).locator(".figure");
  await expect.poll(() => taken.allTextContents()).toEqual(["0.210 mm"]);
  await page.getByText(/^Saved in this browser, /).waitFor();

  await page.reload();
  await page.getByText("connected", { exact: true }).waitFor();
  await send(page, "X=0.100;Y=0.220\r");
  await expect.poll(() => taken.allTextContents()).toEqual(["0.220 mm", "0.21 mm"]);
});

test("a gauge that sends without being asked fills no stations, and says so", async () => {
  const page = await withGauge(served);
  await beginReading(page);
  await connect(page);
  for (let count = 0; count < 10; count++) await send(page, `0.2${count}\r\n`);
  await page.getByText("The gauge sends faster than a slide can be moved").waitFor();
  expect(await page.getByRole("list", { name: "Readings taken" }).count()).toBe(0);
  expect(await page.getByLabel("Take each value that the gauge’s button sends").isChecked()).toBe(false);
});

test("in the table a value goes where the cursor is, and the cursor goes on", async () => {
  const page = await withGauge(served);
  await openSlide(page);
  await connect(page);
  await page.getByLabel("Position, next reading").fill("25");
  await page.getByLabel("Backlash, reading that cannot be read yet").focus();
  await send(page, "0.213\r\n");
  await page.getByLabel("Backlash, reading 1", { exact: true }).waitFor();
  expect(await page.getByLabel("Backlash, reading 1", { exact: true }).inputValue()).toBe("0.213");
  await page.getByLabel("Position, next reading").and(page.locator("*:focus")).waitFor();
});

test("a cable that is unplugged is told, and what was taken stays", async () => {
  const page = await withGauge(served);
  await beginReading(page);
  await connect(page);
  await send(page, "0.213\r\n");
  const taken = page.getByRole("list", { name: "Readings taken" }).locator(".figure");
  await expect.poll(() => taken.allTextContents()).toEqual(["0.213 mm"]);
  await send(page, null);
  await page.getByText("The cable was unplugged. Connect it again; what was taken is kept.").waitFor();
  await page.getByRole("button", { name: "Connect a gauge" }).waitFor();
});

test("where the browser offers no serial ports, nothing of it is shown", async () => {
  const page = await served.open();
  await page.addInitScript(() => {
    Reflect.deleteProperty(Navigator.prototype, "serial");
  });
  await page.reload();
  await beginReading(page);
  expect(await page.getByText("Gauge on a cable").count()).toBe(0);
});
