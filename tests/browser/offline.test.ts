import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type OwnServedPage, servePage } from "./servedPage.ts";
import { describeSlide, dropFiles, EVEN, goHome, kept, takeLog, typeReadings, WORN } from "./steps.ts";

/** A copy of the built page, so that a newer version can take its place. */
const folder = mkdtempSync(join(tmpdir(), "page-"));
let served: OwnServedPage;

beforeAll(async () => {
  cpSync("dist/page", folder, { recursive: true });
  served = await servePage(folder, ["--host-resolver-rules=MAP shop.example 127.0.0.1"]);
});

afterAll(async () => {
  await served.close();
  rmSync(folder, { recursive: true });
});

const LOG = ["Position (mm);Backlash (mm)", "0;0,21", "60;0,20", "120;0,22"].join("\n");

/** Waits until all of the page is kept in the browser. */
const worksOffline = (page: Page) => page.getByText("The page works without network.").waitFor();

const verdict = (page: Page) => page.getByRole("heading", { name: /with nuts to match/ });

test("after the first load all of it works with the network cut", async () => {
  const page = await served.openToStay();
  await worksOffline(page);
  await page.context().setOffline(true);
  await page.reload();
  await describeSlide(page);
  await typeReadings(page, WORN);
  await verdict(page).waitFor();
  await kept(page);
  await goHome(page);
  await page.getByRole("button", { name: /^Boring mill, table/ }).click();
  await verdict(page).waitFor();
  await goHome(page);
  await dropFiles(page, ["log.csv", LOG]);
  await takeLog(page);
  await page.getByText("3 readings are waiting for this.").waitFor();
  await page.goto(served.address);
  await page.getByRole("link", { name: /^Slide 0 to 300 mm/ }).click();
  expect(await page.getByLabel("Backlash, reading 13", { exact: true }).inputValue()).toBe(WORN[12]?.[1]);
  await page.goto(`${served.address}licences.txt`);
  await page.getByText("## chart.js").waitFor();
});

test("no request goes to any other host, whatever is done", async () => {
  const page = await served.openToStay();
  const asked: string[] = [];
  page.context().on("request", (request) => asked.push(request.url()));
  page.on("websocket", (socket) => asked.push(socket.url()));
  await page.reload();
  await worksOffline(page);
  await describeSlide(page);
  await typeReadings(page, WORN);
  await verdict(page).waitFor();
  await page.getByRole("button", { name: "Step by step", exact: true }).click();
  await page.getByText("Details", { exact: true }).click();
  await goHome(page);
  for (const sample of [/^Pattern mill/, /^Mill, knee/]) {
    await page.getByRole("button", { name: sample }).click();
    await page.getByRole("button", { name: "Save a file" }).waitFor();
    await kept(page);
    await goHome(page);
  }
  await dropFiles(page, ["log.csv", LOG]);
  await takeLog(page);
  await page.getByText("3 readings are waiting for this.").waitFor();
  expect(asked.length).toBeGreaterThan(20);
  expect(asked.filter((url) => !/^(blob:|data:)/.test(url) && !url.startsWith(served.address))).toEqual([]);
});

test("the page can be installed: its manifest is sound, and its icons have the sizes that it states", async () => {
  const page = await served.openToStay();
  const devtools = await page.context().newCDPSession(page);
  const { errors, url } = await devtools.send("Page.getAppManifest");
  expect(errors).toEqual([]);
  const manifest = await (await page.request.get(url)).json();
  const drawn = manifest.icons.filter(({ type }: { type: string }) => type === "image/png");
  expect(drawn.length).toBeGreaterThanOrEqual(4);
  for (const { src, sizes } of drawn) {
    const png = await (await page.request.get(new URL(src, url).href)).body();
    expect(`${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`).toBe(sizes);
  }
});

test("an address that is not secure is told once, on the first screen, and the rest works there", async () => {
  const page = await served.openToStay();
  await page.goto(served.address.replace("127.0.0.1", "shop.example"));
  expect(await page.evaluate(() => isSecureContext)).toBe(false);
  await page.getByText("This address is not secure (https)").waitFor();
  expect(await page.getByText("The page works without network.").count()).toBe(0);
  await describeSlide(page);
  await typeReadings(page, EVEN.slice(0, 6));
  await kept(page);
  expect(await page.getByText("not secure").count()).toBe(0);
  await page.reload();
  expect(await page.getByLabel("Backlash, reading 6", { exact: true }).inputValue()).toBe("0.20");
});

test("a newer version is offered and not forced; what is typed is kept when it is loaded", async () => {
  const page = await served.openToStay();
  await worksOffline(page);
  await describeSlide(page);
  await typeReadings(page, EVEN.slice(0, 2));
  const other = await served.openBeside(page);
  await other.getByLabel("Backlash, reading 2", { exact: true }).waitFor();

  const index = join(folder, "index.html");
  writeFileSync(index, readFileSync(index, "utf8").replace('lang="en"', 'lang="en" class="newer"'));
  const worker = join(folder, "sw.js");
  const revised = readFileSync(worker, "utf8").replace(/(url:"index\.html",revision:")\w/, "$1x");
  expect(revised).not.toBe(readFileSync(worker, "utf8"));
  writeFileSync(worker, revised);
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());

  const offer = page.getByRole("status").filter({ hasText: "A newer Tightspot is ready." });
  await offer.waitFor();
  await page.getByLabel("Backlash, reading 2", { exact: true }).fill("0.27");
  const isNewer = (tab: Page) => tab.evaluate(() => document.documentElement.classList.contains("newer"));
  expect(await isNewer(page)).toBe(false);
  await offer.getByRole("button", { name: "Load it" }).click();
  await page.waitForFunction(() => document.documentElement.classList.contains("newer"));
  expect(await page.getByLabel("Backlash, reading 2", { exact: true }).inputValue()).toBe("0.27");

  await other.getByText("A newer Tightspot is in use in another tab.").waitFor();
  expect(await isNewer(other)).toBe(false);
  await other.getByRole("button", { name: "Load it" }).click();
  await other.waitForFunction(() => document.documentElement.classList.contains("newer"));
});
