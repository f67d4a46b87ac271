import { type Random, seededRandom } from "../../src/analysis/statistics/random.ts";
import type { Inspection, Stage, Survey } from "../../src/inspection/schema.ts";
import { NO_FAULT } from "./faults.ts";
import { type SimulatedSlide, simulateSlide } from "./simulatedSlide.ts";
import { takeSurvey } from "./takeSurvey.ts";
import { between } from "./wear.ts";

/** What is true of a slide at one time. */
export interface State {
  readonly backlash: (position: number) => number;
  readonly uniform: number;
  readonly uneven: number;
  readonly endFloat: number;
}

export interface SimulatedPair {
  readonly inspection: Inspection;
  readonly done: string;
  readonly before: State;
  readonly after: State;
}

/** What may happen between two surveys, and what it makes of the slide. */
const DONE: Readonly<Record<string, (before: State, random: Random) => State>> = {
  nothing: (before) => before,
  adjusted: (before, random) =>
    evenly(before, -between(random, 0.3, 1) * Math.max(0, before.uniform - before.endFloat - 0.01)),
  "end float corrected": (before) => ({
    ...evenly(before, -Math.max(0, before.endFloat - 0.005)),
    endFloat: Math.min(before.endFloat, 0.005),
  }),
  remade: (_, random) => {
    const endFloat = between(random, 0, 0.01);
    const uniform = endFloat + between(random, 0.015, 0.05);
    return { backlash: () => uniform, uniform, uneven: 0, endFloat };
  },
  "worn on": (before, random) => {
    const deeper = between(random, 1.1, 1.8);
    const uniform = before.uniform + between(random, 0, 0.06);
    return {
      ...before,
      uniform,
      uneven: deeper * before.uneven,
      backlash: (at) => uniform + deeper * (before.backlash(at) - before.uniform),
    };
  },
};

/**
 * A slide surveyed twice, before and after something happened or nothing did, each time at stations and with repeats
 * of its own. Half of the surveys are read with indicators that state their error, and have one of scale; half of
 * these are read with the same one.
 */
export function simulatePair(seed: number): SimulatedPair {
  const slide = simulateSlide(seed);
  const random = seededRandom(seed ^ 0x5eed);
  const names = Object.keys(DONE);
  const done = names[Math.floor(random() * names.length)];
  const { uniform, uneven, backlash, endFloat } = slide.truth;
  const before: State = { uniform, uneven, backlash, endFloat };
  const after = DONE[done](before, random);
  const limit = (after.uniform + after.uneven) * Math.exp(between(random, -0.5, 0.5));
  const [first, second] = indicatorsFor([before, after], random);
  const surveys = [
    surveyOf("before", "before-repair", slide, before, random, first),
    surveyOf("after", "after-repair", slide, after, random, second),
  ];
  return {
    inspection: {
      ...slide.inspection,
      slide: { ...slide.inspection.slide, backlashLimit: Math.min(Math.max(limit, 0.04), 0.5) },
      surveys,
    },
    done,
    before,
    after,
  };
}

/** The slide with as much more lost motion everywhere. */
export function evenly(state: State, more: number): State {
  const { backlash } = state;
  return { ...state, uniform: state.uniform + more, backlash: (at) => backlash(at) + more };
}

/** A survey of a slide in the given state. */
export function surveyOf(
  id: string,
  stage: Stage,
  { inspection }: SimulatedSlide,
  state: State,
  random: Random,
  { stated, factor }: Shown = EXACT,
): Survey {
  const { survey } = takeSurvey(
    random,
    {
      slide: inspection.slide,
      backlash: (position) => factor * state.backlash(position),
      endFloat: factor * state.endFloat,
    },
    NO_FAULT,
  );
  return { ...survey, id, stage, indicator: { ...stated, ...survey.indicator } };
}

/** Indicators of two surveys: what each states, and how much of the lost motion it really shows. */
function indicatorsFor(states: readonly [State, State], random: Random): readonly [Shown, Shown] {
  if (random() < 0.5) return [EXACT, EXACT];
  const same = random() < 0.5;
  const [before, after] = states.map(({ uniform, uneven }) => uniform + uneven);
  const shown = (name: string, greatest: number): Shown => {
    const error = between(random, 0.002, 0.02);
    return { stated: { name, error }, factor: 1 + (error * between(random, -1, 1)) / greatest };
  };
  const first = shown("one", same ? Math.max(before, after) : before);
  return [first, same ? first : shown("another", after)];
}

interface Shown {
  readonly stated: Survey["indicator"];
  readonly factor: number;
}

const EXACT: Shown = { stated: {}, factor: 1 };
