import { type SVGTemplateResult, svg } from "lit";
import { arrow, type Drawing, label } from "../drawings/primitives.ts";

/** Lost motion along a screw that has worn to the left of its middle: where things stand, in pixels. */
const ZERO = 118;
const TIGHT = 84;
const TOP = 26;
const WORN_AT = 130;
const WIDTH = 46;
const TIGHT_AT = 300;
const LOWERED = 22;

const bell = (x: number): number => Math.exp(-(((x - WORN_AT) / WIDTH) ** 2));
const PLACES = Array.from({ length: 63 }, (_, index) => 14 + index * 5);
const through = (heightAt: (x: number) => number): string =>
  `M${PLACES.map((x) => `${x} ${heightAt(x).toFixed(1)}`).join("L")}`;
const profileAt = (x: number): number => TIGHT - (TIGHT - TOP) * bell(x);

const PROFILE = svg`<path d="M14 ${ZERO}H326" stroke="var(--ink-pale)" />
  <path d=${through(profileAt)} stroke="var(--ink)" stroke-width="2.75" />`;

/** The screw under it, thinner where it has worn. */
const EDGE = through((x) => 134 + 7 * bell(x));
const LOWER = through((x) => 160 - 7 * bell(x));
const THREADS = PLACES.filter((x, index) => index % 2 === 0 && x < 320)
  .map((x) => `M${x} ${(135 + 7 * bell(x)).toFixed(1)}L${x + 4} ${(159 - 7 * bell(x)).toFixed(1)}`)
  .join("");
const SCREW = svg`<path
    d="${EDGE}L${LOWER.slice(1).split("L").reverse().join("L")}Z"
    fill="var(--steel-body)"
    stroke="var(--steel)"
  />
  <path d=${THREADS} stroke="var(--steel)" />`;

function nutAt(x: number): SVGTemplateResult {
  return svg`<path
    d="M${x - 20} 126h40v8h-40ZM${x - 20} 160h40v7h-40Z"
    fill="var(--brass-body)"
    stroke="var(--brass)"
    stroke-width="1.5"
  />`;
}

export const tightSpot: Drawing = {
  description:
    "Lost motion along a screw that has worn in one place. It is greatest there, at the loosest spot, and least at the tight spot, where the nut sits on thread that has hardly worn.",
  picture: svg`${PROFILE}${SCREW}${nutAt(TIGHT_AT)}
    <path d="M${TIGHT_AT} ${TIGHT - 6}l6 6l-6 6l-6 -6Z" fill="var(--ink)" />
    ${label(TIGHT_AT - 4, TIGHT - 14, "tight spot")}
    ${label(WORN_AT, TOP - 10, "loosest spot")}`,
};

export const uniformUneven: Drawing = {
  description:
    "The same lost motion, divided: the uniform part is as high as at the tight spot, and the same all along; the uneven part is what stands above it, and greatest at the loosest spot.",
  picture: svg`${PROFILE}${SCREW}
    <path d="M14 ${TIGHT}H326" stroke="var(--ink-pale)" stroke-dasharray="6 4" />
    ${arrow([236, ZERO], [236, TIGHT], "var(--brass)", true)}
    ${label(244, (ZERO + TIGHT) / 2 + 4, "uniform", "start")}
    ${arrow([WORN_AT, TIGHT], [WORN_AT, TOP + 2], "var(--ink)", true)}
    ${label(200, 52, "uneven", "start")}
    <path d="M196 48L${WORN_AT + 6} 56" stroke="var(--ink-pale)" />`,
};

export const takeUp: Drawing = {
  description:
    "Taking up the nut lowers the lost motion everywhere by the same, until at the tight spot nothing but the running clearance is left. What stands above that stays.",
  picture: svg`${PROFILE}${SCREW}${nutAt(TIGHT_AT)}
    <path
      d=${through((x) => profileAt(x) + LOWERED)}
      stroke="var(--brass)"
      stroke-width="2.5"
      stroke-dasharray="1 5"
    />
    ${arrow([TIGHT_AT, TIGHT], [TIGHT_AT, TIGHT + LOWERED])}
    ${label(TIGHT_AT - 8, TIGHT - 8, "taken up")}
    ${label(WORN_AT, TOP + LOWERED + 18, "left")}
    ${label(WORN_AT, TOP - 10, "before")}`,
};
