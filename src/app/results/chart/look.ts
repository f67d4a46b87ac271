import { DARK_PALETTE, LIGHT_PALETTE, type Palette } from "../../../picture/palette.ts";

const DARK = matchMedia("(prefers-color-scheme: dark)");
const FORCED = matchMedia("(forced-colors: active)");

/** The colours that a canvas is drawn in: a canvas does not follow the page's by itself. */
export function look(): Palette {
  if (FORCED.matches) return forced();
  return DARK.matches ? DARK_PALETTE : LIGHT_PALETTE;
}

/** Tells whenever the colours change. @returns what ends that */
export function watchLook(changed: () => void): () => void {
  for (const query of [DARK, FORCED]) query.addEventListener("change", changed);
  return () => {
    for (const query of [DARK, FORCED]) query.removeEventListener("change", changed);
  };
}

/** The few colours that the reader's system has. */
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
