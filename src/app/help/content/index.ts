import type { Topic } from "../topics.ts";
import { limit } from "./limit.ts";
import { measuring } from "./measuring.ts";
import { method } from "./method.ts";
import type { HelpPart } from "./part.ts";
import { backlash, endFloatPart, runningClearance, takeUp, tightSpot, uniformUneven } from "./terms.ts";

export const HELP: Readonly<Record<Topic, HelpPart>> = {
  backlash,
  "tight-spot": tightSpot,
  "uniform-uneven": uniformUneven,
  "end-float": endFloatPart,
  "running-clearance": runningClearance,
  "take-up": takeUp,
  measuring,
  limit,
  method,
};
