import type { Survey } from "../../inspection/schema.ts";
import { STAGES } from "./fieldList.ts";
import { dayOf } from "./localTime.ts";

/** A survey as it is called in lists: its date and stage. */
export function surveyName({ taken, stage }: Survey): string {
  const words = STAGES.find(([value]) => value === stage)?.[1] ?? stage;
  return `${dayOf(taken)}, ${words.toLowerCase()}`;
}
