import { html, svg } from "lit";
import type { Slide } from "../../../inspection/schema.ts";

const WIDTH = 340;
const EDGE = 10;

export interface Mark {
  readonly position: number;
  readonly state: "open" | "begun" | "read";
}

/** The travel as a line with its stations: hollow, half and filled as they are read, and a pointer at the next one. */
export function travelStrip({ travel, units }: Slide, marks: readonly Mark[], at: number | null) {
  const x = (position: number): number => {
    const share = (position - travel.from) / (travel.to - travel.from);
    return EDGE + Math.min(1, Math.max(0, share)) * (WIDTH - 2 * EDGE);
  };
  const fills = { open: "var(--sheet)", begun: "var(--brass-body)", read: "var(--ink)" } as const;
  const read = marks.filter(({ state }) => state === "read").length;
  return html`<svg
    viewBox="0 0 ${WIDTH} 46"
    role="img"
    aria-label="Stations along the travel: ${read} of ${marks.length} are read${at === null ? "" : `; the next is at ${at} ${units}`}"
    style="display:block; width:100%; max-width:34rem; height:auto; font:500 11px var(--text); overflow:visible"
  >
    <path d="M${EDGE} 22H${WIDTH - EDGE}" stroke="var(--steel)" stroke-width="3" stroke-linecap="round" />
    ${marks.map(
      ({ position, state }) =>
        svg`<circle cx=${x(position)} cy="22" r="5" fill=${fills[state]} stroke="var(--ink)" stroke-width="1.75" />`,
    )}
    ${at === null ? null : svg`<path d="M${x(at)} 13l-6 -11h12Z" fill="var(--brass)" />`}
    <text x=${EDGE - 5} y="42" fill="var(--ink-pale)">${travel.from}</text>
    <text x=${WIDTH - EDGE + 5} y="42" fill="var(--ink-pale)" text-anchor="end">${travel.to} ${units}</text>
  </svg>`;
}
