import { textWidth } from "../profileLabels.ts";
import type { ThreadPicture } from "./threadPicture.ts";

/** A label in the column beside the drawing, with the level that it stands for. Pixels. */
export interface LevelLabel {
  readonly text: string;
  readonly of: "screw" | "nut" | "pitch" | "wires";
  /** Where its line begins, at the level of what it names. */
  readonly from: { readonly x: number; readonly y: number };
  /** The middle of the text's height. */
  readonly y: number;
}

/** Where the parts of the drawing stand, in pixels; one scale for both directions. */
export interface ThreadFrame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Grooves shown; the last one holds the wire, the others the nut. */
  readonly grooves: number;
  /** Pixels in a millimetre. */
  readonly scale: number;
  readonly labelX: number;
  readonly labels: readonly LevelLabel[];
  readonly x: (along: number) => number;
  readonly y: (radius: number) => number;
}

const MARGIN = 20;
const PITCH_ROOM = 34;
const LEADER = 26;
const LABEL_STEP = 18;
/** Narrower than this, only one groove of the nut is shown, in pixels. */
const NARROW = 600;
/** In pitches: shown before the first and after the last groove, of the nut's body, and of the screw's. */
const BESIDE = 0.62;
const NUT_BODY = 0.3;
const SCREW_BODY = 0.34;

/**
 * @param width of the whole drawing, in pixels
 * @param above room that is left over it, in pixels
 */
export function threadFrame(picture: ThreadPicture, width: number, above: number): ThreadFrame {
  const { pitch, diameters, wire, screw } = picture;
  const texts = [...diameters.map(({ label }) => label), ...(wire === null ? [] : [wire.label])];
  const column = Math.max(...texts.map(textWidth));
  const left = MARGIN;
  const right = width - MARGIN - column - LEADER;
  const grooves = width < NARROW ? 2 : 4;
  const scale = (right - left) / ((grooves - 1 + 2 * BESIDE) * pitch);
  const highest = Math.max(...diameters.map(({ radius }) => radius));
  const core = Math.min(...screw.map(({ radius }) => radius));
  const nutTop = Math.max(...picture.nut.map(({ radius }) => radius)) + NUT_BODY * pitch;
  const topRadius = Math.max(nutTop, highest);
  const top = above + PITCH_ROOM;
  const y = (radius: number): number => top + (topRadius - radius) * scale;
  const x = (along: number): number => left + (along + BESIDE * pitch) * scale;
  const lastGroove = (grooves - 1) * pitch;
  const starts = { wires: x(lastGroove), nut: x(lastGroove - pitch / 2), pitch: left, screw: right };
  const levels = [
    ...diameters.map(({ label: text, of, radius }) => ({
      text,
      of,
      from: { x: starts[of], y: y(radius) },
    })),
    ...(wire === null
      ? []
      : [
          {
            text: wire.label,
            of: "wires" as const,
            from: { x: x(lastGroove + wire.radius), y: y(wire.centre) },
          },
        ]),
  ].sort((a, b) => a.from.y - b.from.y);
  const least = top + levels.length * LABEL_STEP;
  const bottom = Math.max(y(core - SCREW_BODY * pitch), least);
  return {
    width,
    height: bottom + MARGIN,
    left,
    right,
    top,
    bottom,
    grooves,
    scale,
    labelX: right + LEADER,
    labels: spread(levels, top, bottom - LABEL_STEP / 2),
    x,
    y,
  };
}

/** Keeps labels in order and clear of each other, each as near to its level as that allows. */
function spread(
  levels: readonly Omit<LevelLabel, "y">[],
  top: number,
  bottom: number,
): readonly LevelLabel[] {
  let lowest = top - LABEL_STEP;
  const down = levels.map((level) => {
    lowest = Math.max(level.from.y, lowest + LABEL_STEP);
    return { ...level, y: lowest };
  });
  let highest = bottom + LABEL_STEP;
  return down
    .toReversed()
    .map((level) => {
      highest = Math.min(level.y, highest - LABEL_STEP);
      return { ...level, y: highest };
    })
    .toReversed();
}
