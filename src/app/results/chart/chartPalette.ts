import { DARK_PALETTE, LIGHT_PALETTE, type Palette } from "../../../picture/palette.ts";

const DARK = matchMedia("(prefers-color-scheme: dark)");
const FORCED = matchMedia("(forced-colors: active)");

/** The colours of the page for a canvas, which does not follow them by itself. */
export function chartPalette(): Palette {
  if (FORCED.matches) return forced();
  return DARK.matches ? DARK_PALETTE : LIGHT_PALETTE;
}

/** Calls `changed` whenever the colours change. @returns a function that ends this */
export function watchPalette(changed: () => void): () => void {
  for (const query of [DARK, FORCED]) query.addEventListener("change", changed);
  return () => {
    for (const query of [DARK, FORCED]) query.removeEventListener("change", changed);
  };
}

/** The few colours of the reader's system. */
function forced(): Palette {
  const paper = systemColour("Canvas");
  const ink = systemColour("CanvasText");
  const marked = systemColour("LinkText");
  const faint = systemColour("GrayText");
  return {
    paper,
    ink,
    paleInk: ink,
    grid: faint,
    band: faint,
    outside: paper,
    nut: marked,
    screw: ink,
    screwBody: paper,
    limit: marked,
  };
}

function systemColour(name: string): string {
  const probe = document.createElement("i");
  probe.style.color = name;
  document.body.append(probe);
  const { color } = getComputedStyle(probe);
  probe.remove();
  return color;
}
