import { type SVGTemplateResult, svg } from "lit";

/** What the drawings are made of: steel screw, brass nut, an indicator, a handwheel and its dial. */

export interface Drawing {
  /** What it shows, for who does not see it. */
  readonly description: string;
  readonly picture: SVGTemplateResult;
  /** How much of its height is empty, from the top on. */
  readonly emptyAbove?: number;
}

export const WIDTH = 340;
export const HEIGHT = 168;

/** The axis of the screw, and where its thread begins and ends. */
const AXIS = 128;
const THREAD = { from: 84, to: 326 };
const PITCH = 11;
const CREST = 9;
const ROOT = 6;

/** A drawing on the page. */
export function shown({ description, picture, emptyAbove = 0 }: Drawing) {
  return svg`<svg
    viewBox="0 ${emptyAbove} ${WIDTH} ${HEIGHT - emptyAbove}"
    role="img"
    aria-label=${description}
    fill="none"
    stroke-linejoin="round"
    stroke-linecap="round"
    style="display:block; width:100%; height:auto; font:600 13px var(--text)"
  >
    ${picture}
  </svg>`;
}

export function label(x: number, y: number, text: string, anchor: "start" | "middle" | "end" = "middle") {
  return svg`<text x=${x} y=${y} text-anchor=${anchor} fill="var(--ink-strong)">${text}</text>`;
}

/** A screw in its thrust bearing, with a nut under a slide. The slide's left edge is at `x`, 96 wide. */
export function slideOnScrew(x: number) {
  const turns = Array.from(
    { length: Math.floor((THREAD.to - THREAD.from) / PITCH) },
    (_, turn) => THREAD.from + turn * PITCH,
  );
  const edge = (side: -1 | 1): string =>
    turns
      .map(
        (at) =>
          `L${at + 2} ${AXIS + side * ROOT}L${at + 4} ${AXIS + side * CREST}h3L${at + 9} ${AXIS + side * ROOT}`,
      )
      .join("");
  return svg`
    <path d="M${THREAD.from} ${AXIS - ROOT}${edge(-1)}L${THREAD.to} ${AXIS + ROOT}H${THREAD.from}Z" fill="var(--steel-body)" />
    <path d="M${THREAD.from} ${AXIS + ROOT}${edge(1)}H${THREAD.to}V${AXIS}H${THREAD.from}Z" fill="var(--steel-body)" />
    <path d="M${THREAD.from} ${AXIS - ROOT}${edge(-1)}M${THREAD.from} ${AXIS + ROOT}${edge(1)}" stroke="var(--steel)" />
    <path d="M34 ${AXIS - 6}H${THREAD.from}v12H34Z" fill="var(--steel-body)" stroke="var(--steel)" />
    <path d="M60 ${AXIS - 20}h14v40H60Z" fill="var(--sheet)" stroke="var(--ink)" stroke-width="1.5" />
    <path d="M${x + 26} ${AXIS - 16}h44v32h-44Z" fill="var(--brass-body)" stroke="var(--brass)" stroke-width="1.5" />
    <path d="M${x} 82h96v28h-20v4H${x + 20}v-4H${x}Z" fill="var(--wash)" stroke="var(--ink)" stroke-width="1.75" />`;
}

/** The handwheel from the side, on the screw's left end. */
export function wheelFromSide() {
  return svg`<path d="M22 ${AXIS - 30}h9v60h-9Z" fill="var(--sheet)" stroke="var(--ink)" stroke-width="1.75" />
    <path d="M31 ${AXIS - 12}h7v24h-7Z" fill="var(--sheet)" stroke="var(--ink)" stroke-width="1.5" />
    <path d="M22 ${AXIS - 26}H9" stroke="var(--ink)" stroke-width="5" />`;
}

/**
 * A dial indicator that touches at (x, y) from the right.
 *
 * @param hand the angle of its hand in degrees from the top
 * @param tilt by how many degrees it is turned out of line
 */
export function indicator(x: number, y: number, hand: number, tilt = 0) {
  const turn = (hand * Math.PI) / 180;
  const [centre, radius] = [x + 48, 21];
  return svg`<g transform="rotate(${tilt} ${x} ${y})">
    <path d="M${x} ${y}h26" stroke="var(--steel)" stroke-width="3.5" />
    <circle cx=${x + 1.5} cy=${y} r="2.5" fill="var(--steel)" />
    <path d="M${x + 16} ${y}h14" stroke="var(--ink)" stroke-width="8" stroke-linecap="butt" />
    <circle cx=${centre} cy=${y} r=${radius} fill="var(--sheet)" stroke="var(--ink)" stroke-width="2" />
    <path d=${ticks(centre, y, radius - 3, radius - 7, 12)} stroke="var(--ink-pale)" />
    <path
      d="M${centre} ${y}L${(centre + (radius - 7) * Math.sin(turn)).toFixed(1)} ${(y - (radius - 7) * Math.cos(turn)).toFixed(1)}"
      stroke="var(--limit)"
      stroke-width="2"
    />
    <circle cx=${centre} cy=${y} r="2" fill="var(--limit)" />
  </g>`;
}

/** Ticks round a circle, from one radius to another. */
export function ticks(x: number, y: number, from: number, to: number, count: number): string {
  return Array.from({ length: count }, (_, index) => {
    const turn = (index / count) * 2 * Math.PI;
    const at = (radius: number): string =>
      `${(x + radius * Math.sin(turn)).toFixed(1)} ${(y - radius * Math.cos(turn)).toFixed(1)}`;
    return `M${at(from)}L${at(to)}`;
  }).join("");
}

/** An arrow from one point to another; `both` gives it two heads. */
export function arrow(
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  colour = "var(--ink)",
  both = false,
) {
  const turn = Math.atan2(y2 - y1, x2 - x1);
  const head = (x: number, y: number, direction: number): string =>
    [-0.5, 0.5]
      .map(
        (side) =>
          `M${x} ${y}L${(x - 8 * Math.cos(direction + side)).toFixed(1)} ${(y - 8 * Math.sin(direction + side)).toFixed(1)}`,
      )
      .join("");
  const heads = head(x2, y2, turn) + (both ? head(x1, y1, turn + Math.PI) : "");
  return svg`<path d="M${x1} ${y1}L${x2} ${y2}${heads}" stroke=${colour} stroke-width="2.25" />`;
}

/** An arrow along a circle, clockwise from one angle to another, or back; degrees from the top. */
export function turningArrow(
  [x, y]: readonly [number, number],
  radius: number,
  from: number,
  to: number,
  colour = "var(--ink)",
) {
  const at = (degrees: number, r = radius): readonly [number, number] => {
    const turn = (degrees * Math.PI) / 180;
    return [x + r * Math.sin(turn), y - r * Math.cos(turn)];
  };
  const point = ([px, py]: readonly [number, number]): string => `${px.toFixed(1)} ${py.toFixed(1)}`;
  const clockwise = to > from;
  const back = to + (clockwise ? -1 : 1) * ((7 / radius) * 57.3);
  const large = Math.abs(to - from) > 180 ? 1 : 0;
  return svg`<path
    d="M${point(at(from))}A${radius} ${radius} 0 ${large} ${clockwise ? 1 : 0} ${point(at(to))}M${point(at(back, radius - 5))}L${point(at(to))}L${point(at(back, radius + 5))}"
    stroke=${colour}
    stroke-width="2.25"
  />`;
}
