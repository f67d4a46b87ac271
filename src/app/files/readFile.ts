import { openInspection, openPartialInspection } from "../../inspection/open.ts";
import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import type { Units } from "../../inspection/units.ts";
import { fileKindOf } from "../../intake/fileKind.ts";
import { surveyCsv } from "../../intake/writeCsv.ts";
import { type Backup, isBackup, openBackup } from "../../records/backup/backup.ts";
import { NO_PENDING_INPUT, type StoredInspection } from "../../records/editorState.ts";
import { newId } from "../editing/newId.ts";
import { previewInWorker } from "./import/readLogInWorker.ts";

/** A log of readings as it stands in its file. */
export interface Log {
  readonly kind: "log";
  readonly name: string;
  readonly content: Uint8Array | string;
  /** The unit of figures without one, if the table that the log was pasted into tells it. */
  readonly units?: Units;
}

/** The content of a file: an inspection, logs to import one after the other, or a backup to restore. */
export type FileContents =
  | { readonly kind: "logs"; readonly logs: readonly Log[] }
  | { readonly kind: "backup"; readonly backup: Backup }
  | { readonly kind: "inspection"; readonly stored: StoredInspection };

/** Bytes: more than millions of readings or a thousand photographs take, and less than a browser's longest string. */
export const MAX_FILE_SIZE = 500_000_000;

/**
 * Reads an inspection, a log of readings or a backup, told apart by their content.
 *
 * @param id the id for an inspection; a new one if left out
 */
export async function readFile(file: File, id: string = newId()): Promise<Outcome<FileContents>> {
  if (file.size > MAX_FILE_SIZE) {
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
  if (kind.value.kind === "inspection") {
    const { text } = kind.value;
    return isBackup(text) ? readBackup(text) : readInspectionFile(text, file.name, id);
  }
  const table = await previewInWorker(content);
  if (!table.ok) return table;
  return succeeded({ kind: "logs", logs: [{ kind: "log", name: file.name, content }] });
}

function readBackup(text: string): Outcome<FileContents> {
  const opened = openBackup(text);
  return opened.ok ? succeeded({ kind: "backup", backup: opened.value }) : opened;
}

/** An inspection whose slide lacks data is read as logs, which ask for them. */
function readInspectionFile(text: string, name: string, id: string): Outcome<FileContents> {
  const opened = openInspection(text);
  if (opened.ok) {
    return succeeded({
      kind: "inspection",
      stored: {
        id,
        revision: 0,
        savedAt: "",
        inspection: opened.value,
        draft: NO_PENDING_INPUT,
        inFile: true,
      },
    });
  }
  const partly = openPartialInspection(text);
  if (!partly.ok || partly.value.surveys.length === 0) return opened;
  const { surveys } = partly.value;
  const logs = surveys.map((survey): Log => {
    const logName = surveys.length === 1 ? name : `${name}, ${survey.id}`;
    return { kind: "log", name: logName, content: surveyCsv(partly.value, survey, ".") };
  });
  return succeeded({ kind: "logs", logs });
}
