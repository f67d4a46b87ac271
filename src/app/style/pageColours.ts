import { LIGHT_PALETTE, type Palette } from "../../picture/palette.ts";

/** Where the page has each colour of the pictures. */
const TOKENS: Readonly<Record<keyof Palette, string>> = {
  paper: "--sheet",
  ink: "--ink",
  paleInk: "--ink-pale",
  grid: "--grid",
  band: "--band",
  outside: "--outside",
  nut: "--brass",
  screw: "--steel",
  screwBody: "--steel-body",
  limit: "--limit",
};

const COLOURS = new Map(
  (Object.keys(TOKENS) as (keyof Palette)[]).map((role) => [LIGHT_PALETTE[role], TOKENS[role]]),
);

/**
 * A drawn picture in the colours that the page has, which follow the reader's choice of light or dark and are light on
 * paper. Only whole values of attributes are changed: no text has a quotation mark that is not escaped.
 */
export function inPageColours(svg: string): string {
  return svg.replace(/"(#[0-9a-f]{6})"/g, (value, colour: string) => {
    const token = COLOURS.get(colour);
    return token === undefined ? value : `"var(${token})"`;
  });
}
