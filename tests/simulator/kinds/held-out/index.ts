import type { Kind } from "../kind.ts";
import { bracketOutOfLine } from "./bracketOutOfLine.ts";
import { oilPoints } from "./oilPoints.ts";

/** Kinds of wear held out: never to be used in developing the model, only to test it when it is done. */
export const HELD_OUT: readonly Kind[] = [oilPoints, bracketOutOfLine];
