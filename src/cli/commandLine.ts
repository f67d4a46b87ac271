import { parseArgs } from "node:util";
import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import type { Command, CommandLine } from "./command.ts";

/**
 * Sorts the words after a command's name. Fails for an option that it does not have, that lacks its value or that has
 * two.
 */
export function readCommandLine(
  args: readonly string[],
  { name: command, options, operands }: Command,
): Outcome<CommandLine> {
  const help = `"tightspot ${command} --help" lists what it takes.`;
  const { tokens } = parseArgs({
    args: [...args],
    strict: false,
    tokens: true,
    options: Object.fromEntries(
      options.map(({ name, value }) => [name, { type: value === undefined ? "boolean" : "string" }]),
    ),
  });
  const given: Record<string, string | true> = {};
  const rest: string[] = [];
  for (const token of tokens) {
    if (token.kind === "positional") {
      if (operands === "") return failed(token.value, "nothing was expected here", help);
      rest.push(token.value);
    } else if (token.kind === "option") {
      const spec = options.find(({ name }) => name === token.name);
      if (spec === undefined) return failed(token.rawName, "there is no such option", help);
      if (spec.value === undefined) {
        if (token.value !== undefined) return failed(token.rawName, "this option takes no value", help);
        given[spec.name] = true;
      } else {
        const value = token.value ?? "";
        const missing = value === "" || (!token.inlineValue && value.startsWith("--"));
        if (missing)
          return failed(token.rawName, "its value is missing", `Give ${token.rawName} ${spec.value}.`);
        if (spec.name in given) {
          return failed(token.rawName, "this option was given twice", "Give it once: it takes one value.");
        }
        given[spec.name] = value;
      }
    }
  }
  return succeeded({ options: given, operands: rest });
}
