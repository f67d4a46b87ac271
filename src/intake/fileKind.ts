import { type Outcome, succeeded } from "../inspection/problem.ts";
import { decodeText } from "./decode.ts";

/** What a file was taken for, with its text: an inspection is still to be opened, a log still to be read. */
export interface FileKind {
  readonly kind: "inspection" | "log";
  readonly text: string;
}

/**
 * Tells by its content, whatever its name, whether a file is an inspection or a log of readings. Anything in JSON is
 * taken for an inspection, so that what it lacks of one is said when it is opened. Fails for what is no text.
 */
export function fileKindOf(content: Uint8Array | string): Outcome<FileKind> {
  const text = decodeText(content);
  return text.ok ? succeeded({ kind: isJson(text.value) ? "inspection" : "log", text: text.value }) : text;
}

/** A log begins with words, not with the braces of an object, and is not as a whole a value of JSON. */
function isJson(text: string): boolean {
  if (/^\s*\[?\s*\{/.test(text)) return true;
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
