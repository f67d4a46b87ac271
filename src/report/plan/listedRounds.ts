import type { Plan } from "../../intake/plan/measuringPlan.ts";
import { columnFigures } from "../words.ts";

/** A station of a plan as it is listed: in the order in which the stations are first read. */
export interface ListedStation {
  /** From 1, on through all rounds. */
  readonly number: number;
  readonly figure: string;
  /** How far the screw turns from the station listed before in its round, with two decimals; null for the first. */
  readonly turns: string | null;
  /** What singles it out: an end of the travel, and how the screw turns to it. */
  readonly words: string;
}

export interface ListedRound {
  /** Empty where there is but one round. */
  readonly title: string;
  readonly stations: readonly ListedStation[];
  /** The first station, where it is read once more at the end of a round that is not its own. */
  readonly again: ListedStation | null;
  /** How its stations are read. */
  readonly order: string;
}

/** The rounds of a plan, each with its stations. */
export function listedRounds(plan: Plan): readonly ListedRound[] {
  const figures = positionFigures(plan);
  return plan.rounds.map((round, which) => {
    const before = plan.rounds.slice(0, which).flat().length;
    const title = plan.rounds.length === 1 ? "" : titleOf(which);
    return {
      title,
      stations: round.map((station, index) => {
        const turns = turnsBetween(plan, round[index - 1], station);
        return {
          number: before + index + 1,
          figure: figures[station] ?? "",
          turns,
          words: wordsFor(plan, station, turns),
        };
      }),
      again:
        which === 0
          ? null
          : { number: 1, figure: figures[0] ?? "", turns: null, words: "once more, last of all" },
      order: orderWords(title, before + 1, before + round.length),
    };
  });
}

function titleOf(round: number): string {
  return round === 0 ? "First round" : "Second round, if the first leaves the verdict open";
}

function turnsBetween(plan: Plan, from: number | undefined, to: number): string | null {
  if (from === undefined) return null;
  const turns = plan.stations.slice(from + 1, to + 1).reduce((sum, station) => sum + station.turns, 0);
  return turns.toFixed(2);
}

function wordsFor({ stations }: Plan, index: number, turns: string | null): string {
  if (index === 0) return "start of the travel";
  const angle = `to ${Math.round(stations[index]?.angle ?? 0) % 360}°`;
  const on = turns === null ? angle : `${turns} turns on, ${angle}`;
  return index === stations.length - 1 ? `${on}; end of the travel` : on;
}

function orderWords(title: string, first: number, last: number): string {
  const way = `ut from station ${first} to ${last}, then back from ${last} to ${first}`;
  const again = "each is read twice, and the first one again at the end.";
  if (title === "") return `O${way}: ${again}`;
  return first === 1 ? `${title}: o${way}: ${again}` : `Second round: o${way}, and station 1 once more.`;
}

/** The stations' positions, each with as many decimals as the longest, so that they stand in a column. */
export function positionFigures({ stations }: Plan): readonly string[] {
  return columnFigures(stations.map(({ position }) => position));
}
