import { LIGHT_PALETTE, type Palette } from "../../picture/palette.ts";

/** The colours of pictures on the page: its CSS tokens, which follow light and dark mode. */
export const PAGE_COLOURS: Readonly<Record<keyof Palette, string>> = {
  paper: "var(--sheet)",
  ink: "var(--ink)",
  paleInk: "var(--ink-pale)",
  grid: "var(--grid)",
  band: "var(--band)",
  outside: "var(--outside)",
  nut: "var(--brass)",
  screw: "var(--steel)",
  screwBody: "var(--steel-body)",
  limit: "var(--limit)",
};

const ON_PAGE = new Map(
  (Object.keys(PAGE_COLOURS) as (keyof Palette)[]).map((role) => [LIGHT_PALETTE[role], PAGE_COLOURS[role]]),
);

/**
 * An SVG picture in the colours of the page, which follow light and dark mode and are light in print. Replaces only whole
 * attribute values: quotation marks in text are escaped.
 */
export function inPageColours(svg: string): string {
  return svg.replace(/"(#[0-9a-f]{6})"/g, (value, colour: string) => {
    const onPage = ON_PAGE.get(colour);
    return onPage === undefined ? value : `"${onPage}"`;
  });
}
