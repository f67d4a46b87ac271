import { openInspection } from "../../inspection/open.ts";
import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import type { Units } from "../../inspection/units.ts";
import { fileKindOf } from "../../intake/fileKind.ts";
import { EMPTY_DRAFT, type KeptInspection } from "../../records/record.ts";
import { newId } from "../editing/newId.ts";

/** A log of readings as it came, to be read with the reader's answers. */
export interface Log {
  readonly kind: "log";
  readonly name: string;
  readonly content: Uint8Array | string;
  /** The unit of what the log gives no unit for, where the place it was put in tells. */
  readonly units?: Units;
}

export type Opened = Log | { readonly kind: "inspection"; readonly kept: KeptInspection };

/** Larger than any log of readings; a file beyond this is something else. */
const LARGEST = 20_000_000;

/**
 * Reads a file that was chosen or dropped: an inspection or a log of readings, told by what is in it.
 *
 * @param id the name to keep the inspection under; a new one when left out
 */
export async function readFile(file: File, id: string = newId()): Promise<Outcome<Opened>> {
  if (file.size > LARGEST) {
    return failed(
      "",
      "the file is too large to hold readings",
      "Choose an inspection (JSON) or a log of readings (CSV).",
    );
  }
  let content: Uint8Array;
  try {
    content = new Uint8Array(await file.arrayBuffer());
  } catch {
    return failed("", "the file cannot be read", "It may have been moved, or be a folder. Choose it again.");
  }
  const kind = fileKindOf(content);
  if (!kind.ok) return kind;
  if (kind.value.kind === "log") return succeeded({ kind: "log", name: file.name, content });
  const opened = openInspection(kind.value.text);
  if (!opened.ok) return opened;
  return succeeded({
    kind: "inspection",
    kept: { id, revision: 0, savedAt: "", inspection: opened.value, draft: EMPTY_DRAFT },
  });
}
