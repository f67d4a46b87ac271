import { svg } from "lit";
import { pathThrough } from "../../picture/svg.ts";
import { SECTION, type ThreadSection } from "./threadSection.ts";

const DIMENSION = 158;
const ARROW = 6;
/** Arrows stand within a dimension that has room for both. */
const ROOM_FOR_ARROWS = 3 * ARROW;

/**
 * The section through screw and nut with the clearance between them as a dimension.
 *
 * @param clearance in words
 */
export function sectionDrawing(
  { screw, nut, unworn, gap }: ThreadSection,
  clearance: string,
  description: string,
) {
  const { width } = SECTION;
  return svg`<svg viewBox="0 0 ${width} 186" role="img" aria-label=${description}>
    <defs>
      <pattern id="nut-cut" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path d="M0 0V7" stroke="var(--brass)" stroke-width="1.5" />
      </pattern>
      <pattern id="screw-cut" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
        <path d="M0 0V7" stroke="var(--steel)" stroke-width="1.25" opacity="0.6" />
      </pattern>
    </defs>
    <g stroke-width="1.75" stroke-linejoin="round">
      <path d="${pathThrough(nut)}Z" fill="var(--brass-wash)" />
      <path d="${pathThrough(nut)}Z" fill="url(#nut-cut)" stroke="var(--brass)" />
      <path d="${pathThrough(screw)}Z" fill="var(--steel-body)" />
      <path d="${pathThrough(screw)}Z" fill="url(#screw-cut)" stroke="var(--steel)" />
      ${
        unworn === null
          ? null
          : svg`<path d=${pathThrough(unworn)} fill="none" stroke="var(--ink)" stroke-width="1.5" stroke-dasharray="5 3" />`
      }
    </g>
    <g class="rimmed" fill="var(--ink-strong)" text-anchor="middle">
      <text x="28" y="30">nut</text>
      <text x="28" y="137">screw</text>
      <text x=${(gap.from + gap.to) / 2} y="178">${clearance}</text>
    </g>
    <g fill="none" stroke="var(--ink)" stroke-width="1.25">
      <path d="M${gap.from} ${gap.y}V${DIMENSION + 4}M${gap.to} ${gap.y}V${DIMENSION + 4}" />
      <path d=${arrows(gap)} stroke-width="1.5" />
    </g>
  </svg>`;
}

/** Two arrows that meet the ends of the gap: from within, or from without where it is narrow. */
function arrows({ from, to }: ThreadSection["gap"]): string {
  const within = to - from > ROOM_FOR_ARROWS;
  const head = (tip: number, back: number): string =>
    `M${tip + back} ${DIMENSION - ARROW / 2}L${tip} ${DIMENSION}L${tip + back} ${DIMENSION + ARROW / 2}`;
  return within
    ? `M${from} ${DIMENSION}H${to}${head(from, ARROW)}${head(to, -ARROW)}`
    : `M${from - 18} ${DIMENSION}H${from}${head(from, -ARROW)}M${to + 18} ${DIMENSION}H${to}${head(to, ARROW)}`;
}
