import type { Conformance } from "../analysis/assessment.ts";
import { element } from "./svg.ts";

/** A tick, a cross and a question mark. */
const SIGNS: Readonly<Record<Conformance, readonly string[]>> = {
  proven: [
    element("circle", { cx: 24, cy: 24, r: 19 }),
    element("path", { d: "m15 25 6 6 12-14", "stroke-width": 4 }),
  ],
  disproven: [
    element("path", { d: "M16 4h16l12 12v16L32 44H16L4 32V16z" }),
    element("path", { d: "m17 17 14 14m0-14L17 31", "stroke-width": 4 }),
  ],
  "not proven": [
    element("circle", { cx: 24, cy: 24, r: 19, "stroke-dasharray": "5 6.9" }),
    element("path", { d: "M18 19a6 6 0 1 1 9 5c-2 1.3-3 2.4-3 4.5M24 34v.5", "stroke-width": 4 }),
  ],
};

/** The sign of a conformance as SVG, in the colour of the text around it. */
export function conformanceSign(conformance: Conformance): string {
  return element(
    "svg",
    {
      viewBox: "0 0 48 48",
      "aria-hidden": "true",
      fill: "none",
      stroke: "currentColor",
      "stroke-width": 2.5,
      "stroke-linecap": "round",
      "stroke-linejoin": "round",
    },
    ...SIGNS[conformance],
  );
}
