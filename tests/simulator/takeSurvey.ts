import { normals, type Random } from "../../src/analysis/statistics/random.ts";
import type { Reading, Slide, Survey } from "../../src/inspection/schema.ts";
import type { Circumstances } from "./faults.ts";
import { between } from "./wear.ts";

const RESOLUTIONS = [0.001, 0.002, 0.005, 0.01, 0.0127, 0.02, 0.0254];

interface Surveyed {
  readonly slide: Slide;
  readonly backlash: (at: number) => number;
  readonly endFloat: number;
}

/** A survey of a slide whose lost motion is known. Whatever the circumstances, its scatter is drawn alike. */
export function takeSurvey(
  random: Random,
  { slide, backlash, endFloat }: Surveyed,
  circumstances: Circumstances,
) {
  const normal = normals(random);
  const drawn = RESOLUTIONS[Math.floor(random() * RESOLUTIONS.length)];
  const resolution = circumstances.resolution ?? drawn;
  const repeatability = between(random, 0.15, 0.6) * Math.max(drawn, 0.008);
  const count = 8 + Math.floor(random() * 18);
  const jitter = random() < 0.5 ? 0 : 0.6;
  const repeats = 1 + Math.floor(random() * 5);
  const asPairs = random() < 0.3;
  const places = placesOf(count, jitter, random, slide, circumstances);
  const round = (value: number): number => Math.round(value / resolution) * resolution;
  const total = places.length * repeats;
  const creep = between(random, 0.01, 0.04) * (random() < 0.5 ? -1 : 1);
  const wobble = between(random, 0.002, 0.012);
  const phase = between(random, 0, 2 * Math.PI);
  const origin = between(random, 0.2, 0.8);
  const slipAt = Math.floor(random() * total);
  const slipFactor = random() < 0.5 ? 10 : 0.1;
  const readings: Reading[] = [];
  for (let repeat = 0; repeat < repeats; repeat++) {
    const order = repeat % 2 === 0 ? places : [...places].reverse();
    for (const position of order) {
      let value = backlash(position);
      if (circumstances.wobble)
        value += wobble * Math.sin((2 * Math.PI * position) / slide.screw.lead + phase);
      if (circumstances.drift) value += (creep * readings.length) / Math.max(1, total - 1);
      const growth = circumstances.looseGib ? 1 + (LOOSE - 1) * (position / slide.travel.to) : 1;
      const scatter = repeatability * growth;
      const factor = circumstances.slip && readings.length === slipAt ? slipFactor : 1;
      if (asPairs) {
        const advancing = round(origin + (scatter / Math.SQRT2) * normal());
        const retracting = round(origin - value + (scatter / Math.SQRT2) * normal());
        readings.push({ position, advancing, retracting: advancing - factor * (advancing - retracting) });
      } else {
        readings.push({ position, backlash: round(value + scatter * normal()) * factor });
      }
    }
  }
  const survey: Survey = {
    id: "survey",
    taken: "2026-03-14",
    stage: "before-repair",
    method: asPairs ? "indicator-pair" : "push-pull",
    indicator: { resolution },
    endFloat: [0, 1].map(() => Math.max(0, round(endFloat + repeatability * normal()))),
    readings,
  };
  return { survey, repeatability, stations: places.length };
}

/** Where a loose gib lets go, readings scatter so many times as much as at the other end. */
const LOOSE = 6;

function placesOf(
  count: number,
  jitter: number,
  random: Random,
  { travel, screw }: Slide,
  { inStep }: Circumstances,
): readonly number[] {
  const places = Array.from({ length: count }, (_, i) => {
    const share = (i + (i > 0 && i < count - 1 ? jitter * (random() - 0.5) : 0)) / (count - 1);
    return Math.round(share * travel.to * 1000) / 1000;
  });
  if (!inStep) return places;
  return [...new Set(places.map((place) => Math.floor(place / screw.lead) * screw.lead))];
}
