import { type SVGTemplateResult, svg } from "lit";
import type { Verdict } from "../../analysis/assessment.ts";

const SCREW = svg`<path d="M4 32h8l3-8h6l3 8h4l3-8h6l3 8h4v10H4z" fill="var(--steel-body)" stroke="var(--steel)" />`;
const nut = (y: number) =>
  svg`<path
    d="M8 ${y}h32v7h-3l-3 8h-6l-3-8h-2l-3 8h-6l-3-8H8z"
    fill="var(--brass-body)"
    stroke="var(--brass)"
    transform="translate(2 0)"
  />`;

/** The sign of each verdict: the nut, the screw, and what to do about them. */
const SIGNS: Readonly<Record<Verdict, SVGTemplateResult>> = {
  "leave-alone": svg`<circle cx="24" cy="24" r="19" /><path d="m15 25 6 6 12-14" stroke-width="4" />`,
  "correct-end-float": svg`<path d="M14 17h30v14H14z" fill="var(--steel-body)" stroke="var(--steel)" />
    <path d="M8 7v34M3 7v34" stroke="var(--brass)" stroke-width="3" />
    <path d="M18 24h20m-14-5-6 5 6 5m8-10 6 5-6 5" />`,
  "adjust-nut": svg`${SCREW}${nut(12)}<path d="M24 1v8m-4-4 4 4 4-4" />`,
  "replace-nuts": svg`${SCREW}${nut(10)}<path d="M38 2v8m-4-4h8" />`,
  "remake-screw": svg`<path d="M4 33h7l4-9h5l4 9h5l5-5h2l5 5h3v11H4z" fill="var(--steel-body)" stroke="var(--steel)" />
    <path d="M35 4v13m-6-5 6 6 6-6" stroke-width="3" />`,
  "measure-more": svg`<circle cx="24" cy="22" r="17" /><path d="M24 22 33 13M24 39v7M24 5v4M7 22h4M41 22h-4" />`,
  "no-verdict": svg`<path d="M16 4h16l12 12v16L32 44H16L4 32V16z" /><path d="M24 13v14M24 34v1" stroke-width="4" />`,
};

/** The sign of a verdict, for decoration: screen readers skip it. */
export function verdictSign(verdict: Verdict) {
  return svg`<svg
    viewBox="0 0 48 48"
    aria-hidden="true"
    fill="none"
    stroke="currentColor"
    stroke-width="2.5"
    stroke-linecap="round"
    stroke-linejoin="round"
  >
    ${SIGNS[verdict]}
  </svg>`;
}
