import type { Assessment } from "../../analysis/assessment.ts";
import { LEAST_STATIONS } from "../../inspection/leastStations.ts";
import { verdictTitle } from "../../report/summary.ts";

/** Whether there are enough stations for a verdict, or the slide can have none. */
export function isReady({ stations, verdict }: Assessment): boolean {
  return stations.length >= LEAST_STATIONS || verdict === "no-verdict";
}

/** The verdict in a few words; with too few stations, how many more it needs. */
export function headline(assessment: Assessment): string {
  if (isReady(assessment)) return verdictTitle(assessment);
  const more = LEAST_STATIONS - assessment.stations.length;
  return `${more} more ${more === 1 ? "station" : "stations"} to a first verdict`;
}
