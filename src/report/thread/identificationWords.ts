import { MILLIMETRES_PER_INCH, roundTo, type Units } from "../../inspection/units.ts";
import { threadLengths } from "../../picture/thread/threadLengths.ts";
import type { Identification, Ranked } from "../../thread/identify/identify.ts";
import type { TellApart } from "../../thread/identify/tellApart.ts";
import { columns, items, wrapped } from "../plainText.ts";
import { inAHundred } from "../words.ts";
import { inUnits } from "./threadResult.ts";
import { pitchWords } from "./threadWords.ts";

const WIDTH = 80;
/** More to one than this is not told in figures. */
const MOST_ODDS = 1000;

/** What a worn thread may be, as text for a terminal. */
export function identificationText(found: Identification, units: Units, assumed: readonly string[]): string {
  const lengths = threadLengths(units);
  const listed = (title: string, ranked: readonly Ranked[]): readonly string[] =>
    ranked.length === 0
      ? []
      : [
          title,
          ...columns(
            ranked.map((each) => [
              each.designation,
              `${inAHundred(each.chance)}; outside ${lengths.figure(Math.abs(each.outsideShort))} ${each.outsideShort < 0 ? "above" : "below"}, pitch off by ${lengths.lostMotion(Math.abs(each.pitchOff))}`,
            ]),
            WIDTH,
          ),
        ];
  const sections: readonly (readonly string[])[] = [
    wrapped(identificationSummary(found, units), WIDTH),
    listed(
      "Standard sizes",
      found.ranked.filter(({ kind }) => kind === "standard"),
    ),
    listed(
      "Sizes that no standard lists, and mixed ones",
      found.ranked.filter(({ kind }) => kind !== "standard"),
    ),
    ["What next", ...items([nextWords(found.next, units), commandWords(found, units)], WIDTH)],
    assumed.length === 0 ? [] : ["Assumed", ...items(assumed, WIDTH)],
  ];
  return `${sections
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

/** The answer in two sentences. */
export function identificationSummary(
  { ranked, odds, isSettled, fits, pitch }: Identification,
  units: Units,
): string {
  const [first, second] = ranked;
  if (first === undefined) throw new Error("There is no candidate.");
  const pitchSaid = `The pitch comes to ${pitchWords(pitch, units)}.`;
  if (!fits)
    return `Nothing agrees with what was measured within its uncertainty; the nearest is ${first.designation}. ${pitchSaid}`;
  const likeliest = second === undefined ? "" : `, ${oddsWords(odds)} before ${second.designation}`;
  return isSettled
    ? `Most likely ${first.designation}${likeliest}. ${pitchSaid}`
    : `Not settled: ${first.designation} is likeliest${likeliest}, which is less than ten to one. ${pitchSaid}`;
}

function oddsWords(odds: number): string {
  if (odds >= MOST_ODDS) return `more than ${MOST_ODDS} to 1`;
  return `${odds < 10 ? roundTo(odds, 1) : Math.round(odds)} to 1`;
}

function nextWords(next: TellApart | null, units: Units): string {
  if (next === null)
    return "The first two cannot be told apart by what is measured here; cut screw and nut to one of them, both new.";
  const lengths = threadLengths(units);
  switch (next.measure) {
    case "distance":
      return `Measure over ${next.turns} turns: ${lengths.lostMotion(next.first)} means the first, ${lengths.lostMotion(next.second)} the second.`;
    case "angle":
      return `Try a thread gauge or a template on the flanks: ${next.first}° included means the first, ${next.second}° the second.`;
    case "root":
      return `Measure the diameter at the root: about ${lengths.lostMotion(next.first)} means the first, ${lengths.lostMotion(next.second)} the second.`;
    case "outside":
      return `Measure the outside on thread that never runs, at the ends: up to ${lengths.lostMotion(next.first)} means the first, up to ${lengths.lostMotion(next.second)} the second.`;
  }
}

function commandWords({ ranked: [first] }: Identification, units: Units): string {
  if (first === undefined) return "";
  const plain = (millimetres: number): string => String(inUnits(units)(millimetres));
  return `For its dimensions: tightspot thread --units ${units} --form ${first.form.name} --diameter ${plain(first.diameter)} --pitch ${plain(first.pitch)}`;
}

/** An identification as a JSON object; lengths in the reader's unit. */
export function identificationResult(found: Identification, units: Units, assumed: readonly string[]) {
  const to = inUnits(units);
  return {
    identification: {
      units,
      pitch: to(found.pitch),
      candidates: found.ranked.map(
        ({ form, designation, kind, diameter, pitch, chance, outsideShort, pitchOff }) => ({
          form: form.name,
          designation,
          kind,
          diameter: to(diameter),
          pitch: to(pitch),
          perInch: roundTo(MILLIMETRES_PER_INCH / pitch, 4),
          chance: roundTo(chance, 6),
          outsideShort: to(outsideShort),
          pitchOff: to(pitchOff),
        }),
      ),
      odds: Number.isFinite(found.odds) ? roundTo(found.odds, 3) : null,
      settled: found.isSettled,
      fits: found.fits,
      next: found.next && nextResult(found.next, to),
      summary: identificationSummary(found, units),
    },
    assumed,
  };
}

function nextResult(next: TellApart, to: (millimetres: number) => number) {
  const value = next.measure === "angle" ? (degrees: number) => degrees : to;
  return { ...next, first: value(next.first), second: value(next.second) };
}
