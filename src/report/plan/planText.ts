import type { PlannableSlide } from "../../inspection/plannableSlide.ts";
import type { Plan } from "../../intake/plan/measuringPlan.ts";
import { columns, items, wrapped } from "../plainText.ts";
import { capitalised } from "../words.ts";
import { type ListedRound, listedRounds } from "./listedRounds.ts";
import { type LostMotionMethod, METHODS } from "./method.ts";
import { APPROACH, END_FLOAT_HOW, planCautions, SET_UP } from "./setUp.ts";

const WIDTH = 80;

/** What a plan comes to, in one line. */
export function planTitle({ stations, readings, rounds }: Plan): string {
  const all = `${stations.length} stations, ${readings.length} readings`;
  const [first = []] = rounds;
  return rounds.length === 1
    ? all
    : `${first.length} stations first, ${first.length * 2} readings (in all ${all})`;
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
  const rounds = listedRounds(plan);
  const sections: readonly (readonly string[])[] = [
    wrapped(`Measuring plan, ${slide.name ?? "slide"}: ${planTitle(plan)}`, WIDTH),
    ...rounds.map((round, index) => [
      index === 0
        ? `${round.title === "" ? "Stations" : round.title}, with how far the screw turns to each`
        : round.title,
      ...columns(stationRows(round, plan), WIDTH),
    ]),
    [
      "Order",
      ...items(
        rounds.map(({ order }) => order),
        WIDTH,
      ),
    ],
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

function stationRows(
  { stations }: ListedRound,
  { stations: all, units }: Plan,
): readonly (readonly [string, string])[] {
  const numbers = String(all.length).length;
  const widest = Math.max(...stations.map(({ figure }) => figure.length));
  return stations.map(({ number, figure, words }) => [
    `${String(number).padStart(numbers)}  ${figure.padStart(widest)} ${units}`,
    words,
  ]);
}

function listed(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [title, ...items(lines, WIDTH)];
}
