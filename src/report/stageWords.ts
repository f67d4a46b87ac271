import type { Stage } from "../inspection/schema.ts";

/** When in the life of a machine a survey was made. */
export const STAGE_WORDS: Readonly<Record<Stage, string>> = {
  "before-repair": "before repair",
  "after-adjusting": "after adjusting",
  "after-repair": "after repair",
  "running-in": "running in",
  routine: "routine",
};
