import { MILLIMETRES_PER_INCH, type Units } from "../../inspection/units.ts";
import type { ThreadForm } from "../form.ts";
import { inchWords } from "../forms/inchWords.ts";
import { FORMS } from "../forms/index.ts";

/**
 * standard: listed for the form. unlisted: diameter, pitch and form of one system, but no standard lists the pair.
 * mixed: a pitch or a form of the one system on a diameter of the other.
 */
export type CandidateKind = "standard" | "unlisted" | "mixed";

/** A thread that a worn one may be. Lengths in millimetres. */
export interface Candidate {
  readonly form: ThreadForm;
  readonly diameter: number;
  readonly pitch: number;
  readonly kind: CandidateKind;
  /** As it is written: `Tr 24 × 5`, `trapezoidal 30°, 24 mm, 5 per inch`. */
  readonly designation: string;
  /** How likely it is before anything is measured, against the other candidates. */
  readonly weight: number;
}

/** The diameter at the root of a candidate's screw, in millimetres. */
export function rootOf({ form, diameter, pitch }: Pick<Candidate, "form" | "diameter" | "pitch">): number {
  return form.diameters({ diameter, pitch, starts: 1, hand: "right" }).screwMinor;
}

interface Nominal {
  readonly length: number;
  readonly system: Units;
  readonly words: string;
}

/** Before anything is measured, against a listed size; a form without a list is met at any pair of one system. */
const WEIGHTS: Readonly<Record<CandidateKind, number>> = { standard: 1, unlisted: 0.05, mixed: 0.02 };
const WEIGHT_WITHOUT_LIST = 0.15;
const SAME = 1e-6;

const METRIC_PITCHES = [
  1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 24,
];
const PER_INCH = [1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 7, 8, 9, 10, 11, 12, 14, 16, 18, 20, 24];

const PITCHES: readonly Nominal[] = [
  ...METRIC_PITCHES.map((pitch) => ({ length: pitch, system: "mm" as const, words: `pitch ${pitch} mm` })),
  ...PER_INCH.map((perInch) => ({
    length: MILLIMETRES_PER_INCH / perInch,
    system: "in" as const,
    words: `${perInch} per inch`,
  })),
];

/** Whole millimetres and sixteenths of an inch near a diameter, in millimetres. */
function diametersFrom(least: number, most: number): readonly Nominal[] {
  const steps = (step: number): readonly number[] => {
    const first = Math.max(1, Math.ceil(least / step));
    return Array.from({ length: Math.max(0, Math.floor(most / step) - first + 1) }, (_, i) => first + i);
  };
  return [
    ...steps(1).map((whole) => ({ length: whole, system: "mm" as const, words: `${whole} mm` })),
    ...steps(MILLIMETRES_PER_INCH / 16).map((sixteenths) => ({
      length: (sixteenths / 16) * MILLIMETRES_PER_INCH,
      system: "in" as const,
      words: `${inchWords(sixteenths / 16)} in`,
    })),
  ];
}

/** Threads with a diameter between the two given, in millimetres, in both systems and across them. */
export function candidatesWithin(least: number, most: number): readonly Candidate[] {
  const diameters = diametersFrom(least, most);
  const all = FORMS.flatMap((form) => [
    ...form.sizes
      .filter(({ diameter }) => diameter >= least && diameter <= most)
      .map((size) => ({ form, ...size, kind: "standard" as const, weight: form.share * WEIGHTS.standard })),
    ...diameters.flatMap((diameter) =>
      PITCHES.filter(
        ({ length }) => length < diameter.length / 2 && !isListed(form, diameter.length, length),
      ).map((pitch) => made(form, diameter, pitch)),
    ),
  ]);
  return withoutTwins(all);
}

function made(form: ThreadForm, diameter: Nominal, pitch: Nominal): Candidate {
  const ofForm = form.standard === null ? pitch.system : form.system;
  const kind = diameter.system === pitch.system && pitch.system === ofForm ? "unlisted" : "mixed";
  const share = kind === "unlisted" && form.standard === null ? WEIGHT_WITHOUT_LIST : WEIGHTS[kind];
  return {
    form,
    diameter: diameter.length,
    pitch: pitch.length,
    kind,
    designation: `${form.words}, ${diameter.words}, ${pitch.words}`,
    weight: form.share * share,
  };
}

function isListed(form: ThreadForm, diameter: number, pitch: number): boolean {
  return form.sizes.some(
    (size) => Math.abs(size.diameter - diameter) < SAME && Math.abs(size.pitch - pitch) < SAME,
  );
}

/** Forms of one geometry (metric and unified 60°) give the same thread twice: the likelier name stays. */
function withoutTwins(candidates: readonly Candidate[]): readonly Candidate[] {
  const kept = new Map<string, Candidate>();
  for (const candidate of candidates) {
    const { form, diameter, pitch, weight } = candidate;
    const key = [form.halfAngle, diameter, pitch, rootOf(candidate)]
      .map((value) => value.toFixed(4))
      .join(" ");
    const other = kept.get(key);
    if (other === undefined || other.weight < weight) kept.set(key, candidate);
  }
  return [...kept.values()];
}
