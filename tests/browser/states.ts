import type { Page } from "playwright-core";
import { send, withGauge } from "./fakeGauge.ts";
import { PARTS } from "./partStates.ts";
import {
  allKept,
  beside,
  described,
  enter,
  opened,
  reading,
  SAMPLES,
  type State,
  surveyed,
  unfolded,
} from "./reaching.ts";
import { backlash, beginSlide, dropFiles, kept } from "./steps.ts";

const START: readonly State[] = [
  ["the first screen, nothing kept", (served) => served.open()],
  ["the first screen with many slides", allKept],
  [
    "the first screen, searched",
    async (served) => {
      const page = await allKept(served);
      await page.getByLabel("Search by slide or machine").fill("lathe");
      await page.getByRole("status").filter({ hasText: /found/ }).waitFor();
      return page;
    },
  ],
  [
    "the first screen, a slide being renamed",
    async (served) => {
      const page = await allKept(served);
      await page
        .getByRole("button", { name: /^Rename/ })
        .first()
        .click();
      return page;
    },
  ],
  [
    "the first screen, a slide deleted",
    async (served) => {
      const page = await allKept(served);
      await page
        .getByRole("button", { name: /^Delete/ })
        .first()
        .click();
      await page.getByRole("button", { name: "Undo" }).waitFor();
      return page;
    },
  ],
  [
    "the field to paste into",
    async (served) => {
      const page = await served.open();
      await page.getByRole("button", { name: "Paste readings" }).click();
      await page.getByRole("dialog").waitFor();
      return page;
    },
  ],
  [
    "files that cannot be read",
    async (served) => {
      const page = await served.open();
      await dropFiles(page, ["broken.json", "{"], ["notes.csv", "no table in here"]);
      await page.getByRole("button", { name: "Dismiss" }).nth(1).waitFor();
      return page;
    },
  ],
];

const NEW_INSPECTION: readonly State[] = [
  [
    "the slide's description, with entries that cannot be read",
    async (served) => {
      const page = await served.open();
      await page.getByRole("link", { name: "New inspection" }).click();
      await page.getByLabel("Travel from").fill("nought");
      await page.getByLabel("Travel to").fill("300");
      await page.getByLabel("Travel to").press("Enter");
      await page.getByRole("button", { name: "Start reading" }).click();
      await page.getByText("nought", { exact: false }).first().waitFor();
      return page;
    },
  ],
  [
    "the guide, the way of measuring",
    async (served) => {
      const page = await served.open();
      await beginSlide(page);
      return page;
    },
  ],
  [
    "the guide, end float",
    async (served) => {
      const page = await served.open();
      await beginSlide(page);
      await page.getByRole("button", { name: "Next: end float" }).click();
      await page.getByLabel("Sweep at the screw’s end").waitFor();
      await enter(page, "0.01", "0.02");
      return page;
    },
  ],
  [
    "the guide, stations",
    async (served) => {
      const page = await served.open();
      await beginSlide(page);
      await page.getByRole("button", { name: "Next: end float" }).click();
      await page.getByRole("button", { name: "Go on without it" }).click();
      await page.getByLabel("Positions to read at").waitFor();
      return page;
    },
  ],
  [
    "the guide, reading, with a slip and a struck reading",
    async (served) => {
      const page = await served.open();
      await reading(page);
      await enter(page, "0.21", "0.20", "0.21");
      const taken = page.getByRole("list", { name: "Readings taken" }).getByRole("listitem");
      await taken.first().getByRole("button").first().click();
      await page.getByRole("button", { name: "Indicator knocked" }).click();
      await page.getByText("Struck: Indicator knocked").waitFor();
      await page.getByLabel("Sweep of the indicator").fill("2.1");
      await page
        .getByText(/ten times what the readings around it say/)
        .first()
        .waitFor();
      return page;
    },
  ],
  [
    "the guide, all read",
    async (served) => {
      const page = await served.open();
      await reading(page);
      await enter(page, ...["0.21", "0.20", "0.21", "0.20", "0.21", "0.20"]);
      await page.getByText(/^Most telling now/).waitFor();
      return page;
    },
  ],
  [
    "the guide, a gauge connected",
    async (served) => {
      const page = await withGauge(served);
      await reading(page);
      await page.getByText("Gauge on a cable").click();
      await page.getByRole("button", { name: "Connect a gauge" }).click();
      await page.getByText("Nothing yet: press the gauge’s button.").waitFor();
      await send(page, "A1 9.500 +0.213 mm\r\n");
      await page.getByRole("button", { name: "+0.213 mm" }).waitFor();
      return page;
    },
  ],
];

const READINGS: readonly State[] = [
  ["the table of readings, empty, all unfolded", async (served) => unfolded(await described(served))],
  [
    "the table of readings, with errors, struck rows and a slip",
    async (served) => {
      const page = await surveyed(served);
      await backlash(page, 3).fill("2.1");
      await page.getByRole("button", { name: "Strike or delete reading 2" }).click();
      await page.getByRole("button", { name: "Indicator knocked" }).click();
      await backlash(page, 5).fill("much");
      await page.keyboard.press("Tab");
      await page.locator("tightspot-readings-table p.wrong").first().waitFor();
      return page;
    },
  ],
  [
    "the table of readings, a row's choices",
    async (served) => {
      const page = await surveyed(served);
      await page.getByRole("button", { name: "Strike or delete reading 2" }).click();
      return page;
    },
  ],
  [
    "the measuring plan, prepared in the table",
    async (served) => {
      const page = await surveyed(served);
      await page.getByText("Measuring plan", { exact: true }).click();
      await page.getByRole("button", { name: "Prepare the first round" }).click();
      await page.getByText(/wait in the table/).waitFor();
      return page;
    },
  ],
  [
    "the log sheet",
    async (served) => {
      const page = await described(served);
      await page.getByText("Measuring plan", { exact: true }).click();
      return beside(page, "Log sheet to print");
    },
  ],
  [
    "a log before it is taken in",
    async (served) => {
      const page = await described(served);
      const rows = "0,0.21,8,gib\n60,0.20,9,\n75,=1+2,9,\n90,0.20,9,\n";
      await dropFiles(page, ["log.csv", `Position (mm),Reading (mm),Second,Remark\n${rows}`]);
      await page.getByRole("dialog").getByText("3 readings").waitFor();
      return page;
    },
  ],
  [
    "a log whose units are asked about",
    async (served) => {
      const page = await described(served);
      await dropFiles(page, ["log.csv", "Position (mm),Backlash (mm)\n0,12\n3,11\n7,12\n"]);
      await page.getByRole("dialog").getByText("The positions go from 0 to 7 mm").waitFor();
      return page;
    },
  ],
  [
    "a kept inspection whose units are asked about",
    async (served) => {
      const page = await served.open();
      await dropFiles(page, ["log.csv", "Position (mm),Backlash (mm)\n0,0.2\n3,0.21\n7,0.2\n"]);
      await page.getByRole("dialog").getByRole("button", { name: "Take the readings" }).click();
      await page.getByLabel("Travel from").fill("0");
      await page.getByLabel("Travel to").fill("180");
      await page.getByLabel("Lead of the screw").fill("4");
      await page.getByRole("button", { name: "Take the readings" }).click();
      await page.getByText("The positions go from 0 to 7 mm, on a travel of 180 mm.").waitFor();
      return page;
    },
  ],
];

const BORING_MILL = "remake-screw-worn-middle-boring-mill-table.json";

async function zoom(page: Page): Promise<void> {
  const reader = page.getByRole("slider", { name: "Read the profile off" });
  await page.locator(".chart[aria-busy=false]").waitFor();
  await reader.press("PageUp");
  await reader.press("+");
  await page.getByRole("button", { name: "Whole travel" }).waitFor();
  await page
    .locator("tightspot-profile-chart .readout")
    .getByText(/^At .* mm\.$/)
    .waitFor();
}

const RESULTS: readonly State[] = [
  ...SAMPLES.map(
    (name): State => [
      `${name}, all unfolded${name === BORING_MILL ? ", the chart zoomed and read off" : ""}`,
      async (served) => {
        const page = await unfolded(await opened(served, name));
        if (name === BORING_MILL) await zoom(page);
        return page;
      },
    ],
  ),
  ...["Save as CSV", "Report"].map(
    (menu): State => [
      `the menu ${menu}`,
      async (served) => {
        const page = await opened(served, BORING_MILL);
        await page.locator("summary").getByText(menu, { exact: true }).click();
        return page;
      },
    ],
  ),
  [
    "the report",
    async (served) => {
      const page = await opened(served, BORING_MILL);
      await page.locator("summary").getByText("Report", { exact: true }).click();
      return beside(page, "Open to print");
    },
  ],
  [
    "a survey deleted",
    async (served) => {
      const page = await opened(served, "before-and-after-mill-saddle.json");
      await page.getByText("Details", { exact: true }).click();
      await page.getByRole("button", { name: "Delete this survey" }).click();
      await page.getByRole("button", { name: "Undo" }).first().waitFor();
      return page;
    },
  ],
  [
    "an inspection that was changed in another tab",
    async (served) => {
      const page = await surveyed(served);
      await kept(page);
      const other = await served.openBeside(page);
      await backlash(other, 1).waitFor();
      await other.evaluate(() => {
        BroadcastChannel.prototype.postMessage = () => {};
      });
      await backlash(other, 1).fill("0.44");
      await kept(other);
      await page.bringToFront();
      await backlash(page, 1).fill("0.33");
      await page.getByRole("alert").filter({ hasText: "it was changed in another tab" }).waitFor();
      return page;
    },
  ],
];

export const STATES: readonly State[] = [...START, ...NEW_INSPECTION, ...READINGS, ...RESULTS, ...PARTS];
