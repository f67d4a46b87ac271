import type { FileProblem } from "../../inspection/problem.ts";
import { HOLDS_LOAD, ISOLATE, MAKER_FIRST } from "../cautions.ts";
import { dayWritten } from "../inspectionWords.ts";
import { items } from "../plainText.ts";
import { estimateWords } from "../words.ts";
import { calledOf, lengthsOf, type SlideOverview, takenOf, toBeDone } from "./slideOverview.ts";
import { worstFirst } from "./worstFirst.ts";

const WIDTH = 80;
const GAP = "  ";

/**
 * Many slides on a terminal, a line each, the worst first. The lines are as long as they need to be: they are looked
 * down, compared and searched, each whole.
 *
 * @param unread what could not be read and so is not, or not whole, among them
 */
export function overviewText(slides: readonly SlideOverview[], unread: readonly FileProblem[]): string {
  const sections: readonly (readonly string[])[] = [
    [headingOf(slides, unread)],
    inColumns(worstFirst(slides).map(cellsOf)),
    ["Cautions", ...items(cautionsFor(slides), WIDTH)],
  ];
  return `${sections.map((lines) => lines.join("\n")).join("\n\n")}\n`;
}

/** The number of slides, and the number of files of which something is missing. */
export function headingOf(slides: readonly SlideOverview[], unread: readonly FileProblem[]): string {
  const shown = slides.length === 1 ? "1 slide" : `${slides.length} slides, the worst first`;
  const files = new Set(unread.map(({ file }) => file)).size;
  return files === 0 ? shown : `${shown}; ${files} ${files === 1 ? "file" : "files"} could not be read whole`;
}

/** The cautions for every slide; those of one slide stand in its own assessment. */
export function cautionsFor(slides: readonly SlideOverview[]): readonly string[] {
  const holdsLoad = slides.some(({ assessment }) => assessment.settings.holdsLoad);
  return [
    ...(holdsLoad ? [HOLDS_LOAD] : []),
    ISOLATE,
    MAKER_FIRST,
    "Assess a slide's file by itself for its own cautions, checks and further readings.",
  ];
}

function cellsOf(slide: SlideOverview): readonly string[] {
  const { greatest, settings } = slide.assessment;
  const lengths = lengthsOf(slide);
  return [
    calledOf(slide),
    toBeDone(slide),
    `lost motion ${estimateWords(greatest, lengths)}; limit ${lengths.position(settings.limit)}`,
    dayWritten(takenOf(slide)),
    slide.file,
  ].map(onOneLine);
}

/** A name may hold anything, line ends and a terminal's control characters included. */
function onOneLine(text: string): string {
  return text.replace(/[\s\p{Cc}]+/gu, " ").trim();
}

function inColumns(rows: readonly (readonly string[])[]): readonly string[] {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((cells) => lengthOf(cells[column]))),
  );
  return rows.map((cells) =>
    cells
      .map((cell, column) => cell + " ".repeat((widths[column] ?? 0) - lengthOf(cell)))
      .join(GAP)
      .trimEnd(),
  );
}

function lengthOf(text = ""): number {
  return [...text].length;
}
