import { failed, type Outcome, succeeded } from "./problem.ts";

export const FILE_UNCHANGED = "The file was left as it was.";

/** A kind of JSON file that this program writes, identified by its `format` and `version`. */
export interface JsonKind {
  readonly format: string;
  /** The newest version that this program reads. */
  readonly version: number;
  /** Its name with the article: `an inspection file`. */
  readonly called: string;
}

/** Parses JSON. Fails with line and column if the text is damaged. */
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
      `Save it again from where it was made, or take a backup. ${FILE_UNCHANGED}`,
    );
  }
}

/** Checks that data is a file of this kind, of a version that this program reads. */
export function checkFormat(data: unknown, { format, version, called }: JsonKind): Outcome<object> {
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
      `Open it with a newer Tightspot. ${FILE_UNCHANGED}`,
    );
  }
  return succeeded(data);
}

function lineAndColumn(text: string, index: number): string {
  const lines = text.slice(0, index).split("\n");
  return `line ${lines.length}, column ${(lines.at(-1) ?? "").length + 1}`;
}

type Expected = "value" | "value or ]" | "key" | "key or }" | ":" | ", or end";

const SPACE = /[ \t\n\r]*/y;
const MARK_OR_WORD = /[{}[\]:,]|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;
/** Part of a string; strings are scanned in parts because a photograph can be one of many megabytes. */
const STRING_PART = /[^"\\\n\r]{1,65536}|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

/**
 * Where a text stops being JSON: the index of the first token that is not allowed there, or of the end if the text breaks
 * off. The message of `JSON.parse` differs between engines and often gives no place.
 */
export function damagedAt(text: string): number {
  const open: string[] = [];
  let expected: Expected | undefined = "value";
  let at = 0;
  for (;;) {
    at += matchAt(SPACE, text, at).length;
    const token = text[at] === '"' ? stringAt(text, at) : matchAt(MARK_OR_WORD, text, at);
    expected = token === "" ? undefined : after(token, expected, open);
    if (expected === undefined) return at;
    at += token.length;
  }
}

function matchAt(pattern: RegExp, text: string, at: number): string {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0] ?? "";
}

/** The string that starts there, with its quotes; empty if it is not closed. */
function stringAt(text: string, start: number): string {
  let end = start + 1;
  for (let part = " "; part !== ""; end += part.length) part = matchAt(STRING_PART, text, end);
  return text[end] === '"' ? text.slice(start, end + 1) : "";
}

/** What may follow the token, or undefined if the token is not allowed; updates the open brackets. */
function after(token: string, expected: Expected, open: string[]): Expected | undefined {
  const container = open.at(-1);
  switch (token) {
    case ":":
      return expected === ":" ? "value" : undefined;
    case ",":
      if (expected !== ", or end" || container === undefined) return undefined;
      return container === "{" ? "key" : "value";
    case "}":
      if (container !== "{" || (expected !== "key or }" && expected !== ", or end")) return undefined;
      open.pop();
      return ", or end";
    case "]":
      if (container !== "[" || (expected !== "value or ]" && expected !== ", or end")) return undefined;
      open.pop();
      return ", or end";
  }
  if (token.startsWith('"') && (expected === "key" || expected === "key or }")) return ":";
  if (expected !== "value" && expected !== "value or ]") return undefined;
  if (token !== "{" && token !== "[") return ", or end";
  open.push(token);
  return token === "{" ? "key or }" : "value or ]";
}
