import { readFileSync } from "node:fs";
import { withPhotographs } from "./photographs.ts";
import { opened, type State, sample } from "./reaching.ts";
import type { ServedPage } from "./servedPage.ts";
import { backlash, dropFiles, goHome, kept } from "./steps.ts";
import { held } from "./store.ts";

/** A slide with two events, one of them with photographs. */
async function history(served: ServedPage) {
  const page = await served.open();
  await dropFiles(page, ["slide.json", withPhotographs()]);
  await page.getByText(/^Assumed/).waitFor();
  await page.getByText("History", { exact: true }).click();
  await page.locator("tightspot-history img").nth(1).waitFor();
  return page;
}

/** A backup of three slides, of which one was changed since and another deleted. */
async function backup(served: ServedPage) {
  const page = await served.open();
  const slides = [
    "measure-more-lathe-4-cross-slide.json",
    "no-verdict-mill-knee.json",
    "adjust-nut-lathe-2-cross-slide.json",
  ];
  await dropFiles(page, ...slides.map(sample));
  await page.getByRole("button", { name: "Save a file" }).waitFor();
  await kept(page);
  await goHome(page);
  const entries = page.getByRole("region", { name: "Saved in this browser" }).getByRole("link");
  await entries.nth(2).waitFor();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save all as one backup" }).click(),
  ]);
  const saved = readFileSync(await download.path(), "utf8");
  await entries.filter({ hasText: /^\s*Knee/ }).click();
  await backlash(page, 1).fill("0.777");
  await held(page, "0.777");
  await kept(page);
  await goHome(page);
  await page
    .getByRole("button", { name: /^Delete .*Cross slide/ })
    .first()
    .click();
  await entries.nth(2).waitFor({ state: "detached" });
  await dropFiles(page, ["backup.json", saved]);
  return page;
}

/** What lies beside readings and verdict: a slide's history, a backup, help. */
export const PARTS: readonly State[] = [
  [
    "a slide's history with photographs and a verdict, an event being written",
    async (served) => {
      const page = await history(served);
      await page.getByRole("button", { name: "Add an event" }).click();
      await page.getByRole("group", { name: "Event" }).waitFor();
      await page.locator("tightspot-history .verdicts").waitFor();
      return page;
    },
  ],
  [
    "a photograph of a slide's history",
    async (served) => {
      const page = await history(served);
      await page.getByRole("button", { name: "The nut before it was taken up" }).first().click();
      await page.getByRole("dialog").getByRole("img").waitFor();
      return page;
    },
  ],
  [
    "a backup before it is restored, one slide to be replaced",
    async (served) => {
      const page = await backup(served);
      const dialog = page.getByRole("dialog");
      for (const heading of ["Not the same here as in the backup: 1", "New here: 1", "The same here: 1"])
        await dialog.getByText(heading).waitFor();
      await dialog.getByRole("radio", { name: "Take the backup’s" }).check();
      await dialog.getByText(/^Replaced by the backup’s: /).waitFor();
      return page;
    },
  ],
  [
    "help, at a topic",
    async (served) => {
      const page = await served.open();
      await page.goto(`${served.address}#/help/take-up`);
      await page.getByRole("heading", { name: "What is take-up?" }).waitFor();
      return page;
    },
  ],
  [
    "a topic of help in place",
    async (served) => {
      const page = await opened(served, "adjust-nut-lathe-2-cross-slide.json");
      await page.getByRole("button", { name: "What is take-up?" }).first().click();
      await page.getByRole("dialog", { name: "What is take-up?" }).waitFor();
      return page;
    },
  ],
];
