import { dateOfDay, dayNumber } from "../inspection/dates.ts";
import type { Axis, Tick } from "./axis.ts";

/** Possible steps between ticks: in days, or in months from the first of a month. */
const DAYS = [1, 2, 5, 10] as const;
const MONTHS_APART = [1, 2, 3, 6, 12, 24, 60, 120] as const;
const DAYS_IN_MONTH = 30.4;

/** An axis of days since 1970-01-01 with exact ends and ticks at days, months or years. */
export function dateAxis(label: string, from: number, to: number, parts: number): Axis {
  const span = to - from;
  const days = DAYS.find((each) => span / each <= parts);
  const months = MONTHS_APART.find((each) => span / (each * DAYS_IN_MONTH) <= parts) ?? 240;
  return {
    label,
    from,
    to,
    ticks: days === undefined ? everyMonths(months, from, to) : everyDays(days, from, to),
  };
}

function everyDays(step: number, from: number, to: number): readonly Tick[] {
  const first = Math.ceil(from - 1e-9);
  const count = Math.floor((to - first) / step + 1e-9) + 1;
  return Array.from({ length: Math.max(0, count) }, (_, index) => {
    const at = first + index * step;
    const [, month, day] = partsOf(at);
    return { at, label: `${day} ${monthName(month)}` };
  });
}

function everyMonths(step: number, from: number, to: number): readonly Tick[] {
  const [year, month] = partsOf(from);
  const [lastYear, lastMonth] = partsOf(to);
  const ticks: Tick[] = [];
  const start = Math.floor((year * 12 + month - 1) / step) * step;
  for (let count = start; count <= lastYear * 12 + lastMonth - 1; count += step) {
    const [inYear, inMonth] = [Math.floor(count / 12), (count % 12) + 1];
    const at = dayNumber(`${inYear}-${String(inMonth).padStart(2, "0")}-01`);
    if (at < from) continue;
    ticks.push({ at, label: step % 12 === 0 ? String(inYear) : `${monthName(inMonth)} ${inYear}` });
  }
  return ticks;
}

function partsOf(at: number): readonly [year: number, month: number, day: number] {
  const [year = 0, month = 1, day = 1] = dateOfDay(at).split("-").map(Number);
  return [year, month, day];
}

const SHORT_MONTH = new Intl.DateTimeFormat("en", { month: "short", timeZone: "UTC" });

function monthName(month: number): string {
  return SHORT_MONTH.format(Date.UTC(2000, month - 1));
}
