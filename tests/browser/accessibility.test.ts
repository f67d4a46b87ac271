import axe from "axe-core";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { useServedPage } from "./servedPage.ts";
import { STATES } from "./states.ts";

const served = useServedPage();

const PHONE = { width: 360, height: 740 };
const DESK = { width: 1440, height: 900 };
/** What 200 % leaves of a window 640 pixels wide. */
const ZOOMED = { width: 320, height: 370 };

/** Each width and each scheme of colours once: all pairs of them would take twice as long. */
const LOOKS = [
  [DESK, "light"],
  [PHONE, "dark"],
] as const;

/** What axe-core finds wrong: rule, element and what is the matter with it. */
async function violations(page: Page): Promise<readonly string[]> {
  return page.evaluate(async () => {
    const { axe } = globalThis as typeof globalThis & { readonly axe: typeof import("axe-core") };
    // Of what is in order, axe would list every element.
    const found = await axe.run({ resultTypes: ["violations"] });
    return found.violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id} at ${target.flat().join(" ")}: ${failureSummary}`),
    );
  });
}

/** What can be pressed and is lower than a finger needs: 48 pixels, or within a text its line, 24 pixels. */
async function tooLow(page: Page): Promise<readonly string[]> {
  return page.locator("button, a, summary, input, select, textarea, [role=slider]").evaluateAll((elements) =>
    elements
      .filter((element) => element.checkVisibility({ visibilityProperty: true, contentVisibilityAuto: true }))
      // What is chosen by pressing its label is as high as that.
      .map(
        (element) =>
          (element.matches("[type=radio], [type=checkbox]") && element.closest("label")) || element,
      )
      .map((element) => ({
        name: element.getAttribute("aria-label") ?? element.textContent?.trim() ?? "",
        height: element.getBoundingClientRect().height,
        least: getComputedStyle(element).display === "inline" ? 24 : 48,
      }))
      .filter(({ height, least }) => height > 1 && height < least)
      .map(({ name, height }) => `${name} is ${height} pixels high`),
  );
}

/** By how many pixels the page is wider than the window, once it has settled. */
async function widerThanWindow(page: Page): Promise<number> {
  const over = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  const settled = Date.now() + 1000;
  while ((await over()) > 0 && Date.now() < settled);
  return over();
}

test.each(STATES)("nothing stands in anyone's way: %s", async (_name, reach) => {
  const page = await reach(served);
  await page.evaluate(axe.source);
  const found: string[] = [];
  for (const [size, colorScheme] of LOOKS) {
    await page.setViewportSize(size);
    // Otherwise colours would be on their way from one to the other.
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    const where = `${size.width} pixels, ${colorScheme}`;
    found.push(...(await violations(page)).map((violation) => `${where}: ${violation}`));
  }
  found.push(...(await tooLow(page)));
  await page.setViewportSize(ZOOMED);
  const over = await widerThanWindow(page);
  if (over > 0) found.push(`200 %: ${over} pixels wider than the window`);
  expect(found).toEqual([]);
});
