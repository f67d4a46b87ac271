import { LIGHT_PALETTE as COLOUR } from "./palette.ts";
import { TITLE_SIZE } from "./profileFrame.ts";
import { element, escapeMarkup, FONT, textElement } from "./svg.ts";

const TITLE = { x: 24, y: 34 };

interface Named {
  readonly title: string;
  readonly description: string;
}

interface Sheet {
  readonly width: number;
  readonly height: number;
  /** Patterns and clips that the content refers to. */
  readonly defs?: readonly string[];
  /** False if the text around it gives the title. */
  readonly isTitled?: boolean;
}

/** A self-contained SVG document with background and title, described for screen readers. */
export function svgDocument(
  { title, description }: Named,
  { width, height, defs = [], isTitled = true }: Sheet,
  ...content: readonly string[]
): string {
  const svg = element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: "img",
      "font-family": FONT,
    },
    element("title", {}, escapeMarkup(title)),
    element("desc", {}, escapeMarkup(description)),
    ...(defs.length > 0 ? [element("defs", {}, ...defs)] : []),
    element("rect", { width, height, fill: COLOUR.paper }),
    ...(isTitled
      ? [textElement(TITLE.x, TITLE.y, title, { size: TITLE_SIZE, fill: COLOUR.ink, weight: 600 })]
      : []),
    ...content,
  );
  return `${svg}\n`;
}
