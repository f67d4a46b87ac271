import type { Assessment } from "../../src/analysis/assessment.ts";

/**
 * An assessment made by hand, not by the analysis: a 300 mm slide, lead 4 mm, whose lost motion is 0.11 mm at both
 * ends and rises by 0.2 mm in a bell about 110 mm, read at 13 stations twice each.
 */
export function exampleAssessment(changes: Partial<Assessment> = {}): Assessment {
  const positions = Array.from({ length: 121 }, (_, index) => index * 2.5);
  const profile = positions.map((position) => {
    const backlash = trueBacklash(position);
    return { position, backlash, low: backlash - 0.012, high: backlash + 0.012 };
  });
  return {
    survey: "before",
    settings: {
      travel: { from: 0, to: 300 },
      workingRange: { from: 0, to: 300 },
      lead: 4,
      pitch: 4,
      limit: 0.15,
      runningClearance: 0.025,
      endFloatAttainable: 0.01,
      engagedLength: 30,
      adjustable: true,
      takeUpLeft: Number.POSITIVE_INFINITY,
      takeUpUsed: 0,
      clearanceNew: 0,
      wearLimit: 0.5,
      holdsLoad: false,
      springHides: false,
    },
    verdict: "remake-screw",
    reasons: [],
    chances: {
      "leave-alone": 0,
      "correct-end-float": 0,
      "adjust-nut": 0.01,
      "replace-nuts": 0,
      "remake-screw": 0.99,
    },
    likeliest: "remake-screw",
    conformance: "disproven",
    assumed: ["The nut is adjustable."],
    uniform: { value: 0.11, low: 0.098, high: 0.122 },
    takeUp: { value: 0.075, low: 0.063, high: 0.087 },
    uneven: { value: 0.2, low: 0.18, high: 0.22 },
    greatest: { value: 0.31, low: 0.298, high: 0.322 },
    unevenChance: 0.999,
    endFloat: { value: 0.01, low: 0.008, high: 0.012 },
    tightSpot: { position: 300, backlash: 0.11 },
    loosestSpot: { position: 110, backlash: 0.31 },
    afterAdjusting: { worst: { value: 0.235, low: 0.215, high: 0.255 }, position: 110 },
    afterNewNuts: { worst: { value: 0.235, low: 0.215, high: 0.255 }, position: 110 },
    wornZones: [
      {
        from: 75,
        to: 145,
        atLeast: 0.15,
        deepest: { value: 0.312, low: 0.3, high: 0.324 },
        thicknessLeft: { value: 0.844, low: 0.838, high: 0.85 },
      },
    ],
    resolution: 0.01,
    drivePlay: 0,
    repeatability: 0.006,
    uncertainty: { lines: [{ source: "repeatability", standard: 0.004, stated: true }], expanded: 0.012 },
    profile,
    profileAfterAdjusting: profile.map(({ position, backlash }) => ({
      position,
      backlash: backlash - 0.075,
    })),
    nextReadings: [],
    canBeSettled: true,
    checks: [],
    stations: Array.from({ length: 13 }, (_, index) => {
      const position = index * 25;
      const mean = trueBacklash(position);
      const readings = [-0.006, 0.006].map((error, repeat) => ({
        position,
        value: mean + error,
        from: [index * 2 + repeat],
      }));
      return { position, mean, squares: 2 * 0.006 ** 2, readings };
    }),
    struck: [],
    ...changes,
  };
}

/** What an assessment says of a slide whose lost motion is 0.2 mm all along, as far as the readings show. */
export const EVEN: Partial<Assessment> = {
  greatest: { value: 0.2, low: 0.192, high: 0.208 },
  uneven: { value: 0.001, low: 0, high: 0.008 },
  unevenChance: 0.2,
  tightSpot: { position: 300, backlash: 0.2 },
  loosestSpot: { position: 110, backlash: 0.2 },
  wornZones: [],
};

function trueBacklash(position: number): number {
  return 0.11 + 0.2 * Math.exp(-(((position - 110) / 35) ** 2));
}
