import { damagedAt } from "./jsonDamage.ts";
import { failed, type Outcome, succeeded } from "./problem.ts";

export const LEAVE = "The file was left as it was.";

/** A kind of file that this program writes, told by its `format` and `version`. */
export interface JsonKind {
  readonly format: string;
  /** The newest version that is read. */
  readonly version: number;
  /** What such a file is called, with its article: `an inspection file`. */
  readonly called: string;
}

/** The data of a text in JSON; where it is damaged, the place. */
export function parseJson(fileText: string): Outcome<unknown> {
  const text = fileText.replace(/^\uFEFF/, "");
  if (text.trim() === "") {
    return failed("", "the file is empty", "Choose a file that was saved with an inspection in it.");
  }
  try {
    return succeeded(JSON.parse(text));
  } catch {
    return failed(
      lineAndColumn(text, damagedAt(text)),
      "the JSON breaks off or is damaged",
      `Save it again from where it was made, or take a backup. ${LEAVE}`,
    );
  }
}

/** Checks that the data is a file of a kind, and of a version that this program reads. */
export function recognise(data: unknown, { format, version, called }: JsonKind): Outcome<object> {
  if (typeof data !== "object" || data === null || Array.isArray(data) || !("format" in data)) {
    return failed("format", `this is not ${called}`, `It must be an object with "format": "${format}".`);
  }
  if (data.format !== format) {
    return failed("format", `this is not ${called}`, `"format" must be "${format}".`);
  }
  const found = "version" in data ? data.version : undefined;
  if (typeof found !== "number" || !Number.isInteger(found) || found < 1) {
    return failed(
      "version",
      "the version of the file is missing or damaged",
      `"version" must be ${version}.`,
    );
  }
  if (found > version) {
    return failed(
      "version",
      `the file is of version ${found}, newer than this program reads (${version})`,
      `Open it with a newer Tightspot. ${LEAVE}`,
    );
  }
  return succeeded(data);
}

function lineAndColumn(text: string, index: number): string {
  const lines = text.slice(0, index).split("\n");
  return `line ${lines.length}, column ${(lines.at(-1) ?? "").length + 1}`;
}
