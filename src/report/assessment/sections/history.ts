import { type Picture, pictureAddress, picturesIn } from "../../../inspection/pictures.ts";
import { type TimelineEntry, timelineOf } from "../../../inspection/timeline.ts";
import { type MarkupRow, table } from "../../document/pieces.ts";
import { dateWords, kindWords, STAGE_WORDS } from "../../inspectionWords.ts";
import { html, type Markup } from "../../markup.ts";
import type { Reported, SectionMaker } from "../reported.ts";

/** The other surveys of the slide and what was done to it, with photographs; nothing where this survey is all. */
export const history: SectionMaker = (reported) => {
  const entries = timelineOf(reported.inspection);
  if (entries.length < 2) return null;
  const columns = [
    { name: "Date", holds: "words" },
    { name: "What", holds: "words" },
    { name: "Note", holds: "words" },
  ] as const;
  const pictures = picturesIn(reported.inspection.events ?? []);
  return {
    title: "History of the slide",
    content: [
      html`<div class="compact">${table(
        columns,
        entries.map((entry) => rowOf(entry, reported)),
      )}</div>`,
      ...(pictures.length === 0
        ? []
        : [
            html`<div class="photographs">${pictures.map((picture, index) => photograph(picture, index))}</div>`,
          ]),
    ],
  };
};

function rowOf(entry: TimelineEntry, { survey }: Reported): MarkupRow {
  if (entry.of === "event") {
    const { date, kind, note } = entry.event;
    return { cells: [dateWords(date), kindWords(kind), note] };
  }
  const own = entry.survey.id === survey.id ? ", this report" : "";
  const last = entry.verdicts.at(-1);
  const verdict =
    last === undefined
      ? ""
      : `${last.title ?? last.verdict} (given on ${dateWords(last.given)} by version ${last.version})`;
  const what = `Survey, ${STAGE_WORDS[entry.survey.stage]}${own}`;
  return { cells: [dateWords(entry.date), what, own === "" ? verdict : ""] };
}

function photograph(picture: Picture, index: number): Markup {
  const address = pictureAddress(picture);
  const words = picture.caption || `Photograph ${index + 1}`;
  const { width, height } = picture;
  return address === null
    ? html`<p>${words}: the photograph is not in this file.</p>`
    : html`<figure><img src="${address}" alt="" width="${width}" height="${height}"><figcaption>${words}</figcaption></figure>`;
}
