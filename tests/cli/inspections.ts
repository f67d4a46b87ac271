import type { Inspection, Slide, Survey } from "../../src/inspection/schema.ts";

/** Lost motion every 25 mm of a 300 mm travel: even, but for a worn stretch about 110 mm where it is called for. */
const EVEN = [0.21, 0.2, 0.21, 0.21, 0.2, 0.21, 0.2, 0.21, 0.21, 0.2, 0.21, 0.21, 0.2];
const WORN = [0.11, 0.11, 0.12, 0.18, 0.29, 0.28, 0.16, 0.12, 0.11, 0.11, 0.1, 0.11, 0.11];

function survey(id: string, backlash: readonly number[]): Survey {
  const readings = [0, 0.005].flatMap((difference) =>
    backlash.map((value, index) => ({
      position: index * 25,
      backlash: Number((value + difference).toFixed(3)),
    })),
  );
  return {
    id,
    taken: "2026-03-14",
    stage: "before-repair",
    method: "push-pull",
    indicator: { resolution: 0.005 },
    endFloat: [0.005, 0.005, 0.01],
    readings,
  };
}

/** An inspection whose screw is worn in one place: to be remade. */
export function wornScrew(changes: Partial<Slide> = {}): Inspection {
  return inspection([survey("worn", WORN)], changes);
}

/** An inspection whose lost motion is the same everywhere: the nut is to be taken up. */
export function looseNut(changes: Partial<Slide> = {}): Inspection {
  return inspection([survey("loose", EVEN)], changes);
}

/** Both surveys in one file. */
export function twoSurveys(): Inspection {
  return inspection([survey("worn", WORN), survey("loose", EVEN)], {});
}

function inspection(surveys: readonly Survey[], changes: Partial<Slide>): Inspection {
  return {
    format: "tightspot-inspection",
    version: 1,
    slide: {
      id: "cross-slide",
      name: "Cross slide",
      units: "mm",
      travel: { from: 0, to: 300 },
      screw: { lead: 4, nominalDiameter: 20 },
      nut: { takeUpLeft: 1 },
      backlashLimit: 0.15,
      ...changes,
    },
    surveys,
  };
}
