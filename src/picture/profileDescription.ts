import type { Assessment } from "../analysis/assessment.ts";
import type { Lengths } from "../inspection/lengths.ts";
import { evennessOf } from "./evenness.ts";
import { linesAbove } from "./linesAbove.ts";

/** The picture of a profile in words, for a screen reader. */
export function describeProfile(assessment: Assessment, lengths: Lengths): string {
  const { settings, stations, afterAdjusting, wornZones } = assessment;
  const { travel, limit } = settings;
  const readings = stations.reduce((count, station) => count + station.readings.length, 0);
  const left = settings.adjustable ? "Adjusting the nut" : "New nuts on this screw";
  const sentences = [
    `Lost motion against position along the travel from ${lengths.position(travel.from)} to ${lengths.position(travel.to)}`,
    `${counted(readings, "reading")} at ${counted(stations.length, "station")}${struckWords(assessment)}`,
    ...describeExtremes(assessment, lengths),
    `The limit is ${lengths.position(limit)}; ${describeExceeding(assessment, lengths)}`,
    `${left} would leave ${lengths.lostMotion(afterAdjusting.worst.value)} where it is worst`,
    ...wornZones.map(
      (zone) =>
        `The screw is worn by at least ${lengths.lostMotion(zone.atLeast)} from about ${lengths.spot(zone.from)} to ${lengths.spot(zone.to)}`,
    ),
  ];
  return `${sentences.join(". ")}.`;
}

function describeExtremes(assessment: Assessment, lengths: Lengths): readonly string[] {
  const { tightSpot, loosestSpot } = assessment;
  const least = lengths.lostMotion(tightSpot.backlash);
  const greatest = lengths.lostMotion(loosestSpot.backlash);
  switch (evennessOf(assessment, lengths)) {
    case "uneven":
      return [
        `Least at the tight spot, ${least} at about ${lengths.spot(tightSpot.position)}`,
        `Greatest at the loosest spot, ${greatest} at about ${lengths.spot(loosestSpot.position)}`,
      ];
    case "even":
      return [`The same everywhere as far as the readings show, ${greatest}`];
    case "open":
      return [
        `Between ${least} and ${greatest}; whether it differs along the travel the readings do not show`,
      ];
  }
}

function describeExceeding({ profile, settings }: Assessment, lengths: Lengths): string {
  const { from, to } = settings.workingRange;
  const line = profile
    .filter(({ position }) => position >= from && position <= to)
    .map(({ position, backlash }) => ({ x: position, y: backlash }));
  const places = linesAbove(line, settings.limit).map((part) => {
    const [first, last] = [part[0], part.at(-1)];
    return `from about ${lengths.spot(first?.x ?? from)} to ${lengths.spot(last?.x ?? to)}`;
  });
  return places.length === 0
    ? "the profile stays within it"
    : `the profile exceeds it ${places.join(" and ")}`;
}

function struckWords({ struck }: Assessment): string {
  return struck.length === 0 ? "" : `, and ${counted(struck.length, "reading")} struck`;
}

function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}
