import type { Inspection, Slide } from "../../src/inspection/schema.ts";

/** The inspection that the example assessment stands for, with readings to a hundredth of a millimetre. */
export function exampleInspection(slide: Partial<Slide> = {}): Inspection {
  return {
    format: "tightspot-inspection",
    version: 1,
    slide: {
      id: "cross-slide",
      name: "Cross slide",
      units: "mm",
      travel: { from: 0, to: 300 },
      screw: { lead: 4 },
      backlashLimit: 0.15,
      ...slide,
    },
    surveys: [
      {
        id: "before",
        taken: "2026-03-14",
        stage: "before-repair",
        method: "push-pull",
        indicator: { resolution: 0.01 },
        readings: [
          { position: 0, backlash: 0.1 },
          { position: 0, backlash: 0.12 },
        ],
      },
    ],
  };
}
