import type { PlannableSlide } from "../../inspection/plannableSlide.ts";
import type { Plan, PlannedStation } from "../../intake/plan/measuringPlan.ts";
import { columns, items, wrapped } from "../plainText.ts";
import { capitalised } from "../words.ts";
import { type LostMotionMethod, METHODS } from "./method.ts";
import { positionFigures } from "./positionFigures.ts";
import { APPROACH, END_FLOAT_HOW, planCautions, SET_UP } from "./setUp.ts";

const WIDTH = 80;

/** What a plan comes to, in one line. */
export function planTitle({ stations, readings }: Plan): string {
  return `${stations.length} stations, ${readings.length} readings`;
}

/** The order in which the stations are read. */
export function orderWords({ stations }: Plan): string {
  const last = stations.length;
  return `Out from station 1 to ${last}, then back from ${last} to 1: each is read twice, and the first one again at the end.`;
}

/**
 * The measuring plan of a slide as text for a terminal.
 *
 * @param assumed what the command took besides, in sentences
 */
export function planText(
  slide: PlannableSlide,
  plan: Plan,
  method: LostMotionMethod,
  assumed: readonly string[],
): string {
  const { name, how } = METHODS[method];
  const sections: readonly (readonly string[])[] = [
    wrapped(`Measuring plan, ${slide.name ?? "slide"}: ${planTitle(plan)}`, WIDTH),
    ["Stations, with how far the screw turns to each", ...columns(stationRows(plan), WIDTH)],
    ["Order", ...items([orderWords(plan)], WIDTH)],
    ["Why", ...items(plan.reasons, WIDTH)],
    listed("What it falls short of", plan.notes),
    ["Before the first reading", ...items([...SET_UP, `End float: ${END_FLOAT_HOW}`], WIDTH)],
    [capitalised(name), ...items([how, APPROACH], WIDTH)],
    ["Cautions", ...items(planCautions(slide), WIDTH)],
    listed("Assumed", [...assumed, ...plan.assumed]),
  ];
  const text = sections.filter((lines) => lines.length > 0).map((lines) => lines.join("\n"));
  return `${text.join("\n\n")}\n`;
}

function stationRows(plan: Plan): readonly (readonly [string, string])[] {
  const { stations, units } = plan;
  const numbers = String(stations.length).length;
  const figures = positionFigures(plan);
  const widest = Math.max(...figures.map((figure) => figure.length));
  return stations.map((station, index) => [
    `${String(index + 1).padStart(numbers)}  ${(figures[index] ?? "").padStart(widest)} ${units}`,
    stationWords(station, index, stations.length),
  ]);
}

/** What singles a station out: an end of the travel, and how the screw turns to it. */
export function stationWords({ turns, angle }: PlannedStation, index: number, count: number): string {
  if (index === 0) return "start of the travel";
  const on = `${turns.toFixed(2)} turns on, to ${Math.round(angle) % 360}°`;
  return index === count - 1 ? `${on}; end of the travel` : on;
}

function listed(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [title, ...items(lines, WIDTH)];
}
