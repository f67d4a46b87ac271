import { type Box, placeLabels } from "../placeLabels.ts";
import { LABEL_SIZE } from "../profileFrame.ts";
import { textWidth } from "../profileLabels.ts";
import { element, pathThrough, textElement } from "../svg.ts";
import type { ScrewColours } from "./screwDrawing.ts";
import type { ScrewPicture, WornInterval } from "./screwPicture.ts";
import type { ScrewFrame } from "./screwThread.ts";

/** A label of the drawing. */
export interface Label {
  readonly text: string;
  /** Wanted position of its middle, in pixels. */
  readonly middle: number;
  readonly colour: string;
  readonly weight: 400 | 600;
}

const ROW = 20;
const ABOVE_ROWS = 2;
const BELOW_ROWS = 3;
/** Distance from the screw's edge to the labels: room for the nut's wall and a pointer. */
const ABOVE = 34;
const BELOW = 32;
const POINTER = 9;
const ARROW = 7;
/** Penalty for each row farther from the screw. */
const FAR = 10;

/**
 * The labels of the screw: spots and others above it, worn intervals with dimensions below it.
 *
 * @param others further labels above the screw
 * @returns their drawing and its lower edge, in pixels
 */
export function screwLabels(
  picture: ScrewPicture,
  frame: ScrewFrame,
  colours: ScrewColours,
  others: readonly Label[] = [],
) {
  const { x, crestTop, crestBottom } = frame;
  const level = crestBottom + BELOW;
  const spots = picture.spots.map((spot) => ({
    text: spot.label,
    middle: x(spot.x),
    colour: colours.ink,
    weight: 600 as const,
  }));
  const above = placed([...spots, ...others], frame, ABOVE_ROWS, (row) => crestTop - ABOVE - (row + 1) * ROW);
  const deepest = [...picture.worn].sort((a, b) => b.atLeast - a.atLeast);
  const below = placed(
    deepest.map((zone) => ({
      text: zone.label,
      middle: x((zone.from + zone.to) / 2),
      colour: colours.screw,
      weight: 400 as const,
    })),
    frame,
    BELOW_ROWS,
    (row) => level + 4 + row * ROW,
  );
  const bottom = Math.max(level, ...below.map(({ box }) => box.y + box.height + 10));
  return {
    bottom,
    markup: element(
      "g",
      {},
      ...picture.spots.map((spot) => pointer(x(spot.x), crestTop - ABOVE + 2, colours)),
      ...picture.worn.map((zone) => dimension(zone, frame, colours, level)),
      ...[...above, ...below].map((label) => labelText(label, colours)),
    ),
  };
}

/** The label of the nut; none if no nut is drawn. */
export function nutLabel({ nut }: ScrewPicture, { x }: ScrewFrame, colours: ScrewColours): readonly Label[] {
  if (nut === null) return [];
  return [{ text: nut.label, middle: x((nut.from + nut.to) / 2), colour: colours.nut, weight: 400 }];
}

/** The labels that have room, each as near its wanted position as the edges allow. */
function placed(
  labels: readonly Label[],
  { left, right }: ScrewFrame,
  rows: number,
  top: (row: number) => number,
) {
  const requests = labels.map(({ text, middle }) => {
    const width = textWidth(text);
    const x = Math.min(Math.max(middle - width / 2, left), right - width);
    const candidates = Array.from({ length: rows }, (_, row) => ({ x, y: top(row), reluctance: row * FAR }));
    return { width, height: LABEL_SIZE, candidates };
  });
  const bounds = { x: 0, y: 0, width: left + right, height: Number.MAX_SAFE_INTEGER };
  return placeLabels(requests, [], bounds).flatMap((box, index) => {
    const label = labels[index];
    return box === null || label === undefined ? [] : [{ ...label, box }];
  });
}

function labelText(
  { text, colour, weight, box }: Label & { readonly box: Box },
  { paper }: ScrewColours,
): string {
  const style = { size: LABEL_SIZE, fill: colour, anchor: "middle", weight, rim: paper } as const;
  return textElement(box.x + box.width / 2, box.y + LABEL_SIZE * 0.85, text, style);
}

/** A triangle pointing down at the screw. */
function pointer(at: number, top: number, { ink }: ScrewColours): string {
  const corners = [
    { x: at - POINTER / 2, y: top },
    { x: at + POINTER / 2, y: top },
    { x: at, y: top + POINTER },
  ];
  return element("path", { d: `${pathThrough(corners)}Z`, fill: ink });
}

/** A worn interval as a dimension line under the screw. */
function dimension(
  { from, to }: WornInterval,
  { x, crestBottom }: ScrewFrame,
  colours: ScrewColours,
  level: number,
): string {
  const line = (x1: number, y1: number, x2: number, y2: number): string =>
    element("line", { x1, y1, x2, y2, stroke: colours.screw, "stroke-width": 0.9 });
  const head = (tip: number, inward: 1 | -1): string => {
    const back = tip + inward * ARROW;
    const corners = [
      { x: back, y: level - ARROW / 2 },
      { x: tip, y: level },
      { x: back, y: level + ARROW / 2 },
    ];
    return element("path", { d: `${pathThrough(corners)}Z`, fill: colours.screw });
  };
  const [start, end] = [x(from), x(to)];
  return [
    line(start, crestBottom + 3, start, level + ARROW),
    line(end, crestBottom + 3, end, level + ARROW),
    line(start, level, end, level),
    ...(end - start > 2 * ARROW ? [head(start, 1), head(end, -1)] : []),
  ].join("");
}
