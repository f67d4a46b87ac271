import { describe, expect, test } from "vitest";
import { threadPicture } from "../../src/picture/thread/threadPicture.ts";
import { threadSvg } from "../../src/picture/thread/threadSvg.ts";
import { threadSlip } from "../../src/report/thread/threadSlip.ts";
import { EVERY_FORM, saidBy } from "../report/thread/said.ts";
import { cutOff, inOneLineOf, PAPERS, printed } from "./paper.ts";
import { blankPage } from "./servedPage.ts";

describe.each(PAPERS)(
  "on $format, in portrait, the slip for the lathe",
  ({ format, width, height, between }) => {
    test.each(EVERY_FORM)("is one page with everything on it: %s", async (words) => {
      const pages = await printed(threadSlip(saidBy(words)), format);
      expect(pages).toHaveLength(1);
      const [page] = pages;
      if (page === undefined) throw new Error("Nothing was printed.");
      expect(Math.abs(page.width - width)).toBeLessThan(2);
      expect(Math.abs(page.height - height)).toBeLessThan(2);
      for (const part of [
        "The thread",
        "Cut to this",
        "Tool for the nut",
        "Passes",
        "Take care",
        "Worked out by",
      ])
        expect(inOneLineOf(page.text)).toContain(part);
    });

    test("cuts nothing off at its edges", async () => {
      const page = await blankPage({ width: Math.round(between), height: 900 });
      await page.setContent(threadSlip(saidBy(EVERY_FORM[1])));
      expect(await cutOff(page)).toEqual([]);
      await page.close();
    });
  },
);

/** Labels of a drawing that run over each other or out of it, as the browser sets them. */
async function collisions(svg: string, width: number): Promise<readonly string[]> {
  const page = await blankPage({ width: width + 40, height: 900 });
  await page.setContent(`<body style="margin:0">${svg}`);
  const found = await page.evaluate(() => {
    const frame = document.querySelector("svg")?.getBoundingClientRect();
    const boxes = [...document.querySelectorAll("svg text")].map((text) => ({
      text: text.textContent ?? "",
      box: text.getBoundingClientRect(),
    }));
    const outside = boxes
      .filter(
        ({ box }) =>
          frame === undefined ||
          box.left < frame.left ||
          box.right > frame.right ||
          box.bottom > frame.bottom,
      )
      .map(({ text }) => `${text} is cut off`);
    const meeting = boxes.flatMap((a, index) =>
      boxes
        .slice(index + 1)
        .filter(
          (b) =>
            a.box.left < b.box.right &&
            b.box.left < a.box.right &&
            a.box.top + 2 < b.box.bottom - 2 &&
            b.box.top + 2 < a.box.bottom - 2,
        )
        .map((b) => `${a.text} meets ${b.text}`),
    );
    return [...outside, ...meeting];
  });
  await page.close();
  return found;
}

describe("the drawing of a thread", () => {
  test.each(EVERY_FORM)("has its labels clear of each other on a phone and on paper: %s", async (words) => {
    const { thread, units } = saidBy(words);
    const picture = threadPicture(thread, units);
    expect(await collisions(threadSvg(picture, 360, false), 360)).toEqual([]);
    expect(await collisions(threadSvg(picture), 960)).toEqual([]);
  });
});
