import { linearRegression, mean, sampleStandardDeviation } from "simple-statistics";
import type { Finding } from "../assessment.ts";
import type { Check } from "./check.ts";

/** A slope this many standard errors from nothing is not chance: once in three thousand surveys. */
const CLEAR = 3.6;
const FEWEST = 6;

/** Readings that wander with the order they were taken in, and whether the first station was read again at the end. */
export const drift: Check = ({ corrected, stations, lengths }) => {
  const ordered = corrected.readings;
  const orderOf = new Map(ordered.map((reading, order) => [reading, order]));
  const repeated = stations.filter((station) => station.readings.length > 1);
  // Both the values and the order are taken from their station's middle, so that stations are compared with themselves.
  const points = repeated.flatMap((station) => {
    const orders = station.readings.map((reading) => orderOf.get(reading) ?? 0);
    return station.readings.map((reading, i) => [orders[i] - mean(orders), reading.value - station.mean]);
  });
  const findings: Finding[] = [];
  if (points.length >= FEWEST) {
    const { m: slope, b } = linearRegression(points);
    const left = points.map(([order, value]) => value - b - slope * order);
    const orders = points.map(([order]) => order);
    const error =
      (Math.sqrt((points.length - 1) / Math.max(1, points.length - repeated.length - 1)) *
        sampleStandardDeviation(left)) /
      (sampleStandardDeviation(orders) * Math.sqrt(points.length - 1));
    const total = slope * (ordered.length - 1);
    if (Math.abs(slope) > CLEAR * error && Math.abs(total) > corrected.resolution.step) {
      findings.push({
        check: "drift",
        severity: "warning",
        message: `Readings of the same stations ${slope > 0 ? "rise" : "fall"} by ${lengths.lostMotion(Math.abs(total))} from the first reading to the last: the indicator's stand creeps, or a dial slips. Tighten both and read again.`,
        readings: ordered.flatMap((reading) => reading.from),
      });
    }
  }
  const first = ordered[0];
  // The two readings of a positioning pair lie a whole run apart; readings are in order of the first of them.
  const last = [...ordered].sort((a, b) => Math.max(...a.from) - Math.max(...b.from)).at(-1);
  if (first !== undefined && last !== undefined && Math.abs(first.position - last.position) > 0.001) {
    findings.push({
      check: "first station not read again",
      severity: "note",
      message:
        "The first station was not read again at the end, which would show an indicator that had crept.",
      readings: first.from,
    });
  }
  return findings;
};
