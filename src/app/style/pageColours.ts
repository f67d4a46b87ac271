import type { Palette } from "../../picture/palette.ts";

/** The pictures' colours as they are on the page: those of its tokens, which follow the light and the reader's choice. */
export const PAGE_COLOURS: Omit<Palette, "band" | "outside"> = {
  paper: "var(--sheet)",
  ink: "var(--ink)",
  paleInk: "var(--ink-pale)",
  grid: "var(--grid)",
  nut: "var(--brass)",
  screw: "var(--steel)",
  screwBody: "var(--steel-body)",
  limit: "var(--limit)",
};
