import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, test } from "vitest";
import { inOneLineOf, PAPERS } from "./paper.ts";
import { pdfPages } from "./pdfText.ts";
import { type ServedPage, servePage } from "./servedPage.ts";
import { dropFiles } from "./steps.ts";

let served: ServedPage;

beforeAll(async () => {
  served = await servePage();
});

afterAll(() => served.close());

test.each(["remake-screw-worn-middle-boring-mill-table", "measure-more-lathe-4-cross-slide"])(
  "the page on paper has the headings of its readings, and no last page for a line left over: %s",
  async (name) => {
    const page = await served.open();
    await dropFiles(page, [`${name}.json`, readFileSync(`sample-data/${name}.json`, "utf8")]);
    await page.getByText(/^Assumed/).waitFor();
    for (const { format } of PAPERS) {
      const pages = pdfPages(await page.pdf({ format })).map(({ text }) => inOneLineOf(text));
      expect(pages.join(" ")).toMatch(/Position ?mm ?Backlash ?mm/);
      // What is assumed stands whole on the last page, after the end at least of what comes before it.
      expect(pages.at(-1)).toMatch(/ISO 14253-1: .* Assumed \([678]\).* The working range/);
      expect(pages.at(-1)).toContain("How much the nut can still take up is not known.");
    }
    await page.context().close();
  },
);
