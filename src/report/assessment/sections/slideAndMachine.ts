import type { Settings } from "../../../analysis/decide/settings.ts";
import type { Lengths } from "../../../inspection/lengths.ts";
import type { Slide } from "../../../inspection/schema.ts";
import { toMillimetres } from "../../../inspection/units.ts";
import type { Fact } from "../../blocks.ts";
import { facts } from "../../document/pieces.ts";
import type { SectionMaker } from "../reported.ts";

/** What was measured: slide, screw and nut, with what was assumed of them. */
export const slideAndMachine: SectionMaker = ({ slide, assessment, lengths }) => {
  const { settings } = assessment;
  const { travel, workingRange } = settings;
  const range = ({ from, to }: Settings["travel"]): string =>
    `${lengths.position(from)} to ${lengths.position(to)}`;
  const stated = (value: unknown): string => (value === undefined ? " (assumed)" : "");
  return {
    title: "Slide and machine",
    as: "whole",
    content: facts([
      ["Slide", slide.name],
      ...(slide.machine === undefined ? [] : [["Machine", slide.machine] as const]),
      ["Travel", range(travel)],
      [
        "Working range",
        slide.workingRange === undefined ? "the whole travel (assumed)" : range(workingRange),
      ],
      ["Screw", screwWords(slide, lengths)],
      ["Nut", nutWords(slide, settings, lengths)],
      ["Limit on lost motion", lengths.position(settings.limit)],
      [
        "Running clearance",
        `${lengths.position(settings.runningClearance)} at the tight spot${stated(slide.runningClearance)}`,
      ],
      [
        "End float attainable",
        `${lengths.position(settings.endFloatAttainable)}${stated(slide.endFloatAttainable)}`,
      ],
      ["Holds up a load", `${settings.holdsLoad ? "yes" : "no"}${stated(slide.holdsLoad)}`],
    ]),
  };
};

function screwWords({ screw, units }: Slide, lengths: Lengths): string {
  const length = (value: number): string => lengths.position(toMillimetres(value, units));
  const { lead, starts, hand, form, nominalDiameter } = screw;
  return [
    `lead ${length(lead)}`,
    ...(starts === undefined ? [] : [starts === 1 ? "single start" : `${starts} starts`]),
    ...(hand === undefined ? [] : [`${hand}-hand`]),
    ...(form === undefined ? [] : [formWords(form)]),
    ...(nominalDiameter === undefined ? [] : [`nominal diameter ${length(nominalDiameter)}`]),
  ].join(", ");
}

const KINDS = {
  "one-piece": "one piece",
  "two-halves": "two halves",
  closing: "closing",
  "spring-loaded": "spring-loaded",
} as const;

function nutWords({ nut, springOvercome }: Slide, settings: Settings, lengths: Lengths): string {
  const { kind, engagedLength, adjustable, takeUpUsed, clearanceNew } = nut ?? {};
  const assumed = (value: unknown): string => (value === undefined ? " (assumed)" : "");
  const facts: readonly Fact[] = [
    ...(takeUpUsed === undefined
      ? []
      : [["taken up so far", lengths.position(settings.takeUpUsed)] as const]),
    ...(clearanceNew === undefined
      ? []
      : [["clearance when new", lengths.position(settings.clearanceNew)] as const]),
    ["may wear by", `${lengths.position(settings.wearLimit)}${assumed(nut?.wearLimit)}`],
  ];
  const spring = springOvercome === true ? " (its spring was overcome)" : "";
  return [
    ...(kind === undefined ? [] : [`${KINDS[kind]}${kind === "spring-loaded" ? spring : ""}`]),
    `engages ${lengths.position(settings.engagedLength)}${assumed(engagedLength)}`,
    `${settings.adjustable ? "adjustable" : "not adjustable"}${assumed(adjustable)}`,
    ...(Number.isFinite(settings.takeUpLeft)
      ? [`${lengths.position(settings.takeUpLeft)} left to take up`]
      : []),
    ...facts.map((fact) => fact.join(" ")),
  ].join(", ");
}

const FORMS: Readonly<Record<string, string>> = {
  "acme-29": "Acme 29°",
  "stub-acme-29": "Stub Acme 29°",
  "trapezoidal-30": "trapezoidal 30°",
  square: "square thread",
  "unified-60": "unified 60°",
  "metric-60": "metric 60°",
  "whitworth-55": "Whitworth 55°",
};

/** A thread form by its name in the file, as the trade writes it; an unknown one as it is written. */
function formWords(form: string): string {
  return FORMS[form] ?? form;
}
