import { dayNumber } from "../../inspection/dates.ts";
import type { Inspection, Survey } from "../../inspection/schema.ts";
import type { Done } from "./comparison.ts";

/** What was done to the slide between two surveys: as events tell, else as the stages of surveys do. */
export function repairBetween({ surveys, events = [] }: Inspection, from: Survey, to: Survey): Done | null {
  const [start, end] = [dayNumber(from.taken), dayNumber(to.taken)];
  const kinds = events
    .filter(({ date }) => dayNumber(date) >= Math.floor(start) && dayNumber(date) <= end)
    .map(({ kind }) => kind)
    .filter((kind) => kind !== "other");
  const stages = surveys
    .filter(({ taken, id }) => id !== from.id && dayNumber(taken) >= start && dayNumber(taken) <= end)
    .map(({ stage }) => stage);
  const done = new Set<Done>(
    kinds.length > 0
      ? kinds
      : stages.flatMap((stage): readonly Done[] =>
          stage === "after-adjusting" ? ["adjusted"] : stage === "after-repair" ? ["repaired"] : [],
        ),
  );
  const [only] = done;
  return only === undefined ? null : done.size === 1 ? only : "repaired";
}
