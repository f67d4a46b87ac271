import type { Settings } from "../../analysis/decide/settings.ts";
import type { NutClearance } from "../../picture/screw/nutPlace.ts";
import { type DrawnThread, exaggerationFor } from "../../picture/screw/screwPicture.ts";

interface Corner {
  readonly x: number;
  readonly y: number;
}

/** A section through some threads of the screw and of the nut on them, in pixels. */
export interface ThreadSection {
  /** How many times as large as they are clearances are drawn, beside the thread. */
  readonly exaggeration: number;
  readonly screw: readonly Corner[];
  readonly nut: readonly Corner[];
  /** The thread in the middle as it would be unworn; null where the screw has not worn. */
  readonly unworn: readonly Corner[] | null;
  /** The clearance, at the pitch line. */
  readonly gap: { readonly from: number; readonly to: number; readonly y: number };
}

/** What is drawn, in pixels: a pitch, the screw's root, the middle of its flanks, its crest, and both outsides. */
const PITCH = 128;
export const SECTION = { width: 340, top: 8, crest: 52, flanks: 82, root: 112, bottom: 144 } as const;
const MIDDLE = SECTION.width / 2 - PITCH / 4;
/** Between one thread's crest and the other's root. */
const FREE = 5;
/** The greatest clearance takes no more than this share of a pitch, of which half is thread. */
const ROOM = 0.28;
const TEETH = [-2, -1, 0, 1, 2];

/** How many times as large as they are the clearances of a nut are drawn: the same all along the travel. */
export function sectionExaggeration(greatest: number, { pitch }: Pick<Settings, "pitch">): number {
  return exaggerationFor(greatest, ROOM * pitch);
}

/**
 * The section through screw and nut, the nut moved to the left until it is stopped. Wear of the screw and the nut's
 * uniform share are taken half off either flank.
 *
 * @param clearance and pitch in millimetres
 */
export function threadSection(
  { uniform, uneven }: NutClearance,
  pitch: number,
  { flankShare }: Pick<DrawnThread, "flankShare">,
  exaggeration: number,
): ThreadSection {
  const drawn = (length: number): number => ((length * exaggeration) / pitch) * PITCH;
  const worn = drawn(uneven);
  const gap = drawn(uniform) + worn;
  /** Thickness of an unworn thread of the screw at a height, and of what the nut has between two of them. */
  const thread = (y: number): number =>
    PITCH * (0.5 - flankShare + (2 * flankShare * (y - SECTION.crest)) / (SECTION.root - SECTION.crest));
  const filling = (y: number): number => PITCH - thread(y);
  const tooth = (
    middle: number,
    less: number,
    ends: readonly [foot: number, tip: number],
    thick: (y: number) => number,
  ): readonly Corner[] => {
    const [foot, tip] = ends;
    const half = (y: number): number => Math.max(1, thick(y) - less) / 2;
    return [
      { x: middle - half(foot), y: foot },
      { x: middle - half(tip), y: tip },
      { x: middle + half(tip), y: tip },
      { x: middle + half(foot), y: foot },
    ];
  };
  const closed = (outside: number, inside: number, teeth: readonly Corner[]): readonly Corner[] => [
    { x: 0, y: outside },
    { x: 0, y: inside },
    ...teeth,
    { x: SECTION.width, y: inside },
    { x: SECTION.width, y: outside },
  ];
  const { top, crest, root, flanks, bottom } = SECTION;
  const between = MIDDLE + PITCH / 2 - gap / 2;
  const right = between + (PITCH / 2 - drawn(uniform)) / 2;
  return {
    exaggeration,
    screw: closed(
      bottom,
      root,
      TEETH.flatMap((turn) => tooth(MIDDLE + turn * PITCH, worn, [root, crest], thread)),
    ),
    nut: closed(
      top,
      crest - FREE,
      TEETH.flatMap((turn) =>
        tooth(between + turn * PITCH, drawn(uniform), [crest - FREE, root - FREE], filling),
      ),
    ),
    unworn: worn < 0.5 ? null : tooth(MIDDLE, 0, [root, crest], thread),
    gap: { from: right, to: right + gap, y: flanks },
  };
}
