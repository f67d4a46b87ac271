import type { Command } from "../command.ts";
import { assess } from "./assess.ts";
import { compare } from "./compare.ts";
import { convert } from "./convert.ts";
import { plan } from "./plan.ts";
import { serve } from "./serve.ts";
import { thread } from "./thread.ts";

/** Every command of the program, in the order of the help. */
export const COMMANDS: readonly Command[] = [assess, compare, plan, thread, convert, serve];
