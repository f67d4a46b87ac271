import type { Page } from "playwright-core";
import { pdfPages } from "./pdfText.ts";
import { blankPage } from "./servedPage.ts";

/** Paper in points, and in the pixels between margins of 14 mm. */
export const PAPERS = [
  { format: "A4", width: 595, height: 842, between: ((210 - 28) / 25.4) * 96 },
  { format: "Letter", width: 612, height: 792, between: ((8.5 * 25.4 - 28) / 25.4) * 96 },
] as const;

/** The pages that a document is printed on. */
export async function printed(report: string, format: "A4" | "Letter") {
  const page = await blankPage();
  await page.setContent(report);
  const pdf = await page.pdf({ format });
  await page.close();
  return pdfPages(pdf);
}

export const inOneLineOf = (text: string): string => text.replace(/\s+/g, " ");

/** Where text would be painted beyond the edges of the page or of the cell that it stands in. */
export function cutOff(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const edge = document.documentElement.clientWidth + 0.5;
    return [...document.querySelectorAll("body *:not(svg *), svg text")]
      .filter((part) => {
        const { left, right } = part.getBoundingClientRect();
        const frame = part.closest("svg")?.getBoundingClientRect();
        const isWider = part instanceof HTMLElement && part.scrollWidth > part.clientWidth + 1;
        const hasBox = part instanceof HTMLElement && getComputedStyle(part).display !== "inline";
        return (
          right > Math.min(edge, frame?.right ?? edge) ||
          left < Math.max(-0.5, frame?.left ?? 0) - 0.5 ||
          (hasBox && isWider)
        );
      })
      .map((part) => `${part.tagName}: ${part.textContent?.slice(0, 60)}`);
  });
}
