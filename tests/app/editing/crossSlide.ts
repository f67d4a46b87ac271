import type { Inspection, Slide } from "../../../src/inspection/schema.ts";

const SLIDE: Slide = {
  id: "slide",
  name: "Cross slide",
  units: "mm",
  travel: { from: 0, to: 300 },
  screw: { lead: 4 },
  backlashLimit: 0.15,
};

/** One slide of 300 mm with the surveys that a test needs. */
export function crossSlide(surveys: Inspection["surveys"]): Inspection {
  return { format: "tightspot-inspection", version: 1, slide: SLIDE, surveys };
}
