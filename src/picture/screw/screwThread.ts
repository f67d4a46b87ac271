import type { Point } from "../linesAbove.ts";
import type { ScrewPicture } from "./screwPicture.ts";

/** One thread across the visible side, in pixels: two outlines to fill. */
export interface ThreadOutline {
  /** Both flanks with the crest between them. */
  readonly flanks: readonly Point[];
  readonly crest: readonly Point[];
}

/** The layout of a drawn screw, in pixels. */
export interface ScrewFrame {
  /** Ends of the screw. */
  readonly left: number;
  readonly right: number;
  readonly crestTop: number;
  readonly crestBottom: number;
  /** From crest to root. */
  readonly depth: number;
  x(position: number): number;
}

/** A thread's profile: half its width at root and crest, in the reader's unit, and its height as a share of the depth. */
interface Section {
  readonly base: number;
  readonly crest: number;
  readonly height: number;
}

/**
 * The threads of a screw from the side, worn flanks set back. Half a turn is visible, in which a thread advances by half
 * the lead: from the upper to the lower edge for a right-hand screw, the other way for a left-hand one.
 */
export function threadOutlines(picture: ScrewPicture, frame: ScrewFrame): readonly ThreadOutline[] {
  const { axis, thread } = picture;
  const halfTurn = (thread.pitch * thread.starts) / 2;
  const lean = thread.hand === "right" ? halfTurn : -halfTurn;
  const count = Math.ceil((axis.to - axis.from + halfTurn) / thread.pitch) + 1;
  const first = axis.from - Math.max(0, lean);
  return Array.from({ length: count }, (_, index) => {
    const above = first + index * thread.pitch;
    return outline(picture, frame, above, above + lean);
  });
}

function outline(picture: ScrewPicture, frame: ScrewFrame, above: number, below: number): ThreadOutline {
  const { crestTop, crestBottom, depth, x } = frame;
  const upper = sectionAt(picture, above);
  const lower = sectionAt(picture, below);
  const rootTop = crestTop + depth;
  const rootBottom = crestBottom - depth;
  const upperCrest = rootTop - upper.height * depth;
  const lowerCrest = rootBottom + lower.height * depth;
  const crest = [
    { x: x(above - upper.crest), y: upperCrest },
    { x: x(above + upper.crest), y: upperCrest },
    { x: x(below + lower.crest), y: lowerCrest },
    { x: x(below - lower.crest), y: lowerCrest },
  ];
  const [upperLeft, upperRight, lowerRight, lowerLeft] = crest;
  const flanks = [
    { x: x(above - upper.base), y: rootTop },
    upperLeft,
    upperRight,
    { x: x(above + upper.base), y: rootTop },
    { x: x(below + lower.base), y: rootBottom },
    lowerRight,
    lowerLeft,
    { x: x(below - lower.base), y: rootBottom },
  ].flatMap((point) => point ?? []);
  return { flanks, crest };
}

/** A thread is half a pitch thick at half its height, minus the exaggerated wear of its flanks. */
function sectionAt({ thread, worn, exaggeration }: ScrewPicture, position: number): Section {
  const { pitch, flankShare } = thread;
  const zones = worn.filter(({ from, to }) => position >= from && position <= to);
  const wear = Math.max(0, ...zones.map(({ atLeast }) => atLeast)) * exaggeration;
  const crest = (0.5 - flankShare) * pitch - wear;
  const base = Math.max(0, (0.5 + flankShare) * pitch - wear);
  return {
    base: base / 2,
    crest: Math.max(0, crest) / 2,
    // Flanks worn until they meet also lower the thread.
    height: crest >= 0 ? 1 : base / (2 * flankShare * pitch),
  };
}
