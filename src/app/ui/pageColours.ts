import { LIGHT_PALETTE, type Palette } from "../../picture/palette.ts";

/** The pictures' colours as they are on the page: those of its tokens, which follow the light and the reader's choice. */
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
 * A drawn picture in the colours that the page has, which follow the reader's choice of light or dark and are light on
 * paper. Only whole values of attributes are changed: no text has a quotation mark that is not escaped.
 */
export function inPageColours(svg: string): string {
  return svg.replace(/"(#[0-9a-f]{6})"/g, (value, colour: string) => {
    const onPage = ON_PAGE.get(colour);
    return onPage === undefined ? value : `"${onPage}"`;
  });
}
