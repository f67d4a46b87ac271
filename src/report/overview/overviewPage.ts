import { type FileProblem, inOneLine } from "../../inspection/problem.ts";
import type { Column } from "../blocks.ts";
import { documentShell } from "../document/documentShell.ts";
import { lines, type MarkupRow, section, table } from "../document/pieces.ts";
import { dateWords } from "../inspectionWords.ts";
import { html } from "../markup.ts";
import { conformanceWords, estimateWords } from "../words.ts";
import { cautionsFor, headingOf } from "./overviewText.ts";
import { calledOf, lengthsOf, type SlideOverview, takenOf, toBeDone } from "./slideOverview.ts";
import { worstFirst } from "./worstFirst.ts";

const COLUMNS: readonly Column[] = [
  "Slide, survey and file",
  "What to do",
  "Greatest lost motion",
  "Limit, and whether it is kept",
  "Uniform part",
  "Uneven part",
].map((name) => ({ name, holds: "words" }));

/**
 * Many slides as one self-contained document to print or pass on: a table with the worst first, and what could not be
 * read, so that nothing is missing unsaid.
 */
export function overviewPage(slides: readonly SlideOverview[], unread: readonly FileProblem[]): string {
  const heading = headingOf(slides, unread);
  return documentShell({
    title: `Lost motion of ${heading}`,
    foot: `Lost motion of ${heading}`,
    content: [
      html`<header class="head"><h1>Lost motion of ${heading}</h1></header>`,
      html`<section class="wide">${table(COLUMNS, worstFirst(slides).map(row))}</section>`,
      ...(unread.length === 0
        ? []
        : [section({ title: "Not read, or not whole", content: lines(unread.map(problemWords)) })]),
      section({ title: "Cautions", content: lines(cautionsFor(slides)), as: "whole" }),
    ],
  });
}

function row(slide: SlideOverview): MarkupRow {
  const { greatest, uniform, uneven, settings, conformance } = slide.assessment;
  const lengths = lengthsOf(slide);
  const place = `${dateWords(takenOf(slide))}, ${slide.file}`;
  return {
    cells: [
      html`<b>${calledOf(slide)}</b><br><small>${place}</small>`,
      toBeDone(slide),
      estimateWords(greatest, lengths),
      `${lengths.position(settings.limit)}: ${conformanceWords(conformance)}`,
      estimateWords(uniform, lengths),
      estimateWords(uneven, lengths),
    ],
  };
}

function problemWords({ file, problem }: FileProblem): string {
  const where = [file, problem.where].filter((part) => part !== "").join(": ");
  return inOneLine({ ...problem, where });
}
