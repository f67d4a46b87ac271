import { svg } from "lit";

/** A worn screw with its nut at the tight spot, under the lost motion that would be read along it. */

const WIDTH = 720;
const HEIGHT = 352;
const PITCH = 24;
const THREADS = WIDTH / PITCH;

/** Distances from the screw's axis. */
const AXIS = 290;
const ROOT = 22;
const CREST = 36;
const NUT_BORE = 39;
const NUT_OUTSIDE = 58;

/** Half the thickness of a thread at root and crest, and what the deepest wear takes off either flank. */
const FOOT = 8;
const TOP = 5;
const DEEPEST = 3.4;

const NUT_THREADS = [3, 4, 5, 6];
const GHOST_THREADS = [15, 16, 17, 18];

const CHART = { top: 18, base: 200, limit: 128, tight: 158, loose: 50 };

/** Wear along the screw, from none to the deepest, 0 to 1. */
const wornAt = (x: number): number => Math.exp(-(((x - 404) / 112) ** 2));
const lostMotionAt = (x: number): number => CHART.tight - (CHART.tight - CHART.loose) * wornAt(x);

function polygon(...points: readonly (readonly [x: number, y: number])[]): string {
  return `M${points.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join("L")}Z`;
}

/** The thread on both sides of the axis, those below half a turn further. */
function screwThreads(): string {
  return [-1, 1]
    .flatMap((side) =>
      Array.from({ length: THREADS + 1 }, (_, turn) => {
        const x = turn * PITCH + (side < 0 ? PITCH / 2 : 0);
        const worn = DEEPEST * wornAt(x);
        const at = (radius: number): number => AXIS + side * radius;
        return polygon(
          [x - FOOT + worn, at(ROOT)],
          [x - TOP + worn, at(CREST)],
          [x + TOP - worn, at(CREST)],
          [x + FOOT - worn, at(ROOT)],
        );
      }),
    )
    .join("");
}

/** A nut cut open lengthwise: a wall on either side of the screw, with its thread reaching into the gaps. */
function nut(turns: readonly number[]): string {
  const from = (turns[0] ?? 0) * PITCH - PITCH / 2;
  const to = (turns.at(-1) ?? 0) * PITCH + PITCH;
  return [-1, 1]
    .map((side) => {
      const at = (radius: number): number => AXIS + side * radius;
      const shift = side < 0 ? 0 : PITCH / 2;
      const threads = turns.flatMap((turn): (readonly [number, number])[] => {
        const x = turn * PITCH + shift;
        return [
          [x - FOOT + 2, at(NUT_BORE)],
          [x - TOP + 3, at(ROOT + 3)],
          [x + TOP - 3, at(ROOT + 3)],
          [x + FOOT - 2, at(NUT_BORE)],
        ];
      });
      const bore = at(NUT_BORE);
      const outside = at(NUT_OUTSIDE);
      return polygon([from, outside], [from, bore], ...threads, [to, bore], [to, outside]);
    })
    .join("");
}

const LINE = Array.from({ length: WIDTH / 6 + 1 }, (_, step): readonly [number, number] => [
  step * 6,
  lostMotionAt(step * 6),
]);
const through = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y]) => `${x} ${y.toFixed(1)}`).join("L");
const EXCESS = LINE.filter(([, y]) => y <= CHART.limit);

/** Scatter of the readings shown, in pixels. */
const SCATTER = [3, -4, 2, -2, 5, -3, 4, -5, 2, 3, -4, 3];
const READINGS = SCATTER.map((off, index) => {
  const x = 30 + index * 60;
  return { x, y: lostMotionAt(x) + off };
});

export const startPicture = svg`<svg
  viewBox="0 0 ${WIDTH} ${HEIGHT}"
  role="img"
  aria-label="A screw worn in the middle. Lost motion is least where the nut sits on thread that is hardly worn, and exceeds the limit in the middle, where a nut has room to move."
  style="display:block; width:100%; height:auto; font: 600 17px var(--text)"
>
  <defs>
    <pattern id="squares" width="12" height="12" patternUnits="userSpaceOnUse">
      <path d="M12 0H0V12" fill="none" stroke="var(--grid)" />
    </pattern>
    <pattern id="hatching" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path d="M0 0V9" stroke="var(--limit)" stroke-width="3" />
    </pattern>
  </defs>
  <rect width=${WIDTH} height=${CHART.base} fill="url(#squares)" />
  <path d="M0 ${CHART.base}H${WIDTH}" stroke="var(--ink-pale)" stroke-width="1.5" />
  <path d="M${through(EXCESS)}Z" fill="url(#hatching)" opacity="0.75" />
  <path d="M0 ${CHART.limit}H${WIDTH}" stroke="var(--limit)" stroke-width="2.5" stroke-dasharray="10 7" />
  <path d="M${through(LINE)}" fill="none" stroke="var(--ink)" stroke-width="4" stroke-linejoin="round" />
  ${READINGS.map(
    ({ x, y }) =>
      svg`<circle cx=${x} cy=${y} r="5" fill="var(--paper)" stroke="var(--ink)" stroke-width="2.5" />`,
  )}
  <g fill="var(--ink-strong)" text-anchor="middle">
    <text x="122" y="188">tight spot</text>
    <text x="404" y="36">loosest spot</text>
    <text x="688" y="118" fill="var(--limit)">limit</text>
  </g>
  <path d="M0 ${AXIS - ROOT}H${WIDTH}V${AXIS + ROOT}H0Z" fill="var(--steel-body)" />
  <path d=${screwThreads()} fill="var(--steel-body)" />
  <path d=${screwThreads()} fill="none" stroke="var(--steel)" stroke-width="1.5" stroke-linejoin="round" />
  <path d="M0 ${AXIS}H${WIDTH}" stroke="var(--steel)" stroke-dasharray="18 5 4 5" />
  <path d=${nut(NUT_THREADS)} fill="var(--brass-body)" stroke="var(--brass)" stroke-width="1.5" stroke-linejoin="round" />
  <path d=${nut(GHOST_THREADS)} fill="none" stroke="var(--brass)" stroke-width="2" stroke-dasharray="5 4" stroke-linejoin="round" />
</svg>`;
