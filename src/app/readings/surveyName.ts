import type { Survey } from "../../inspection/schema.ts";
import { STAGES } from "../editing/fieldList.ts";

const DAY = new Intl.DateTimeFormat(undefined, { dateStyle: "medium" });

/** A survey as it is called in lists: its date and stage. */
export function surveyName({ taken, stage }: Survey): string {
  const words = STAGES.find(([value]) => value === stage)?.[1] ?? stage;
  return `${DAY.format(new Date(`${taken.slice(0, 10)}T12:00`))}, ${words.toLowerCase()}`;
}
