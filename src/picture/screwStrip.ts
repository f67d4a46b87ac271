import { LIGHT_PALETTE as COLOUR } from "./palette.ts";
import { type Candidate, placeLabels } from "./placeLabels.ts";
import { LABEL_SIZE, type ProfileFrame } from "./profileFrame.ts";
import { textWidth } from "./profileLabels.ts";
import type { LabelledInterval, ProfilePicture } from "./profilePicture.ts";
import { element, pathThrough, textElement } from "./svg.ts";

const PATTERN_ID = "thread-of-the-screw";
/** Width of one drawn turn of the thread, in pixels; not to scale. */
const TURN = 9;
/** Drawn depth of the deepest wear on either side, as a share of the screw's height; not to scale. */
const DEEPEST = 0.22;

interface Notch {
  readonly from: number;
  readonly to: number;
  readonly depth: number;
}

/** The screw under the plot, thinner where it has worn. */
export function screwStrip({ wornZones }: ProfilePicture, frame: ProfileFrame): string {
  const { screw } = frame;
  if (screw === null) return "";
  const deepest = Math.max(...wornZones.map(({ atLeast }) => atLeast));
  const notches = wornZones.map((zone) => ({
    from: frame.x(zone.from),
    to: frame.x(zone.to),
    depth: (zone.atLeast / deepest) * DEEPEST * screw.height,
  }));
  const steps = depthsAlong(notches, screw.x, screw.x + screw.width);
  const upper = steps.map(({ x, depth }) => ({ x, y: screw.y + depth }));
  const lower = steps.map(({ x, depth }) => ({ x, y: screw.y + screw.height - depth })).reverse();
  return element(
    "g",
    {},
    element("defs", {}, threadPattern()),
    element("path", {
      d: `${pathThrough([...upper, ...lower])}Z`,
      fill: `url(#${PATTERN_ID})`,
      stroke: COLOUR.screw,
      "stroke-width": 1.25,
      "stroke-linejoin": "round",
    }),
    ...zoneLabels(wornZones, frame, screw.y + screw.height),
  );
}

/** The depth of the deepest notch along the screw, as corners of its edge. */
function depthsAlong(
  notches: readonly Notch[],
  start: number,
  end: number,
): readonly { readonly x: number; readonly depth: number }[] {
  const places = [start, end, ...notches.flatMap(({ from, to }) => [from, to])].sort((a, b) => a - b);
  return places.slice(1).flatMap((to, index) => {
    const from = places[index] ?? start;
    const covering = notches.filter((notch) => notch.from <= from && notch.to >= to);
    const depth = Math.max(0, ...covering.map((notch) => notch.depth));
    return [
      { x: from, depth },
      { x: to, depth },
    ];
  });
}

/** A label under each worn zone, the deepest first if there is not room for all. */
function zoneLabels(
  zones: ProfilePicture["wornZones"],
  frame: ProfileFrame,
  level: number,
): readonly string[] {
  const ranked = [...zones].sort((a, b) => b.atLeast - a.atLeast);
  const requests = ranked.map((zone) => {
    const width = textWidth(zone.label);
    return { width, height: LABEL_SIZE, candidates: under(zone, width, frame, level + 8) };
  });
  const bounds = { x: 0, y: 0, width: frame.width, height: frame.height };
  return placeLabels(requests, [], bounds).flatMap((box, index) => {
    const zone = ranked[index];
    if (box === null || zone === undefined) return [];
    const style = { size: LABEL_SIZE, fill: COLOUR.screw, anchor: "middle" } as const;
    return [textElement(box.x + box.width / 2, box.y + LABEL_SIZE * 0.85, zone.label, style)];
  });
}

/** Under the zone's middle, or as near to it as the plot's edges allow. */
function under(
  zone: LabelledInterval,
  width: number,
  frame: ProfileFrame,
  top: number,
): readonly Candidate[] {
  const { plot } = frame;
  const wanted = (frame.x(zone.from) + frame.x(zone.to) - width) / 2;
  const x = Math.min(Math.max(wanted, plot.x), plot.x + plot.width - width);
  return [{ x, y: top, reluctance: 0 }];
}

function threadPattern(): string {
  return element(
    "pattern",
    {
      id: PATTERN_ID,
      width: TURN,
      height: TURN,
      patternUnits: "userSpaceOnUse",
      patternTransform: "skewX(-14)",
    },
    element("rect", { width: TURN, height: TURN, fill: COLOUR.screwBody }),
    element("rect", { width: TURN * 0.3, height: TURN, fill: COLOUR.screw, "fill-opacity": 0.55 }),
  );
}
