import { inOneLine, type Outcome, succeeded } from "../../inspection/problem.ts";
import { isSameState, type StoredInspection } from "../../records/editorState.ts";
import { findStored } from "../../records/inspectionList.ts";
import { storePictures } from "../../records/pictures.ts";
import { readStored, readStoredRaw, saveStored } from "../../records/storedInspection.ts";
import { notifyOtherTabs } from "../../records/tabs.ts";
import { newId } from "../editing/newId.ts";
import type { Notice } from "../ui/notice.ts";
import { hashOf } from "../ui/route.ts";
import type { BackupFile, OpenRequest } from "./openRequest.ts";
import { type FileContents, type Log, readFile } from "./readFile.ts";

/** The contents of the files opened. */
export interface OpenedFiles {
  /** The first inspection among them, to show. */
  readonly inspection: StoredInspection | null;
  readonly logs: readonly Log[];
  /** To restore, one after the other. */
  readonly backups: readonly BackupFile[];
  /** About files that cannot be read, and about further inspections. */
  readonly notices: readonly Notice[];
}

interface OpenedInspection {
  readonly file: string;
  readonly stored: StoredInspection;
}

/** Opens files. One that cannot be read does not affect the others. */
export async function openFiles({ files, id }: OpenRequest): Promise<OpenedFiles> {
  const inspections: OpenedInspection[] = [];
  const logs: Log[] = [];
  const backups: BackupFile[] = [];
  const notices: Notice[] = [];
  for (const file of files) {
    const opened = await openOne(file, id);
    if (!opened.ok) notices.push({ tone: "wrong", text: `${file.name}: ${inOneLine(opened.problem)}` });
    else if (opened.value.kind === "logs") logs.push(...opened.value.logs);
    else if (opened.value.kind === "backup") backups.push({ name: file.name, backup: opened.value.backup });
    else inspections.push({ file: file.name, stored: opened.value.stored });
  }
  const [first, ...others] = inspections;
  return {
    inspection: first?.stored ?? null,
    logs,
    backups,
    notices: [...notices, ...furtherNotices(others)],
  };
}

async function openOne(file: File, id: string | undefined): Promise<Outcome<FileContents>> {
  const read = await readFile(file, id);
  if (!read.ok) return read;
  if (read.value.kind !== "inspection") return read;
  return succeeded({ kind: "inspection", stored: await store(await withPicturesStored(read.value.stored)) });
}

/** The inspection with its pictures in the database; if that fails, it keeps carrying their bytes. */
async function withPicturesStored(opened: StoredInspection): Promise<StoredInspection> {
  const stored = await storePictures(opened.inspection);
  return stored.ok ? { ...opened, inspection: stored.value } : opened;
}

/** Stores an inspection unless the same one is stored already; returns it unchanged if that fails. */
async function store(opened: StoredInspection): Promise<StoredInspection> {
  const same = await findStored(opened);
  // The stored one has further verdicts, which are in no file.
  if (same?.inFile === true || (same !== null && !isSameState(same, opened))) return same;
  const result = await saveStored(same === null ? await withFreeId(opened) : { ...same, inFile: true });
  if (!result.ok) return same ?? opened;
  notifyOtherTabs({ id: result.stored.id, revision: result.stored.revision });
  return result.stored;
}

/** The inspection with a new id if the stored record with its id is damaged, which is left alone. */
async function withFreeId(opened: StoredInspection): Promise<StoredInspection> {
  const exists = (await readStoredRaw(opened.id)) !== null;
  return exists && !(await readStored(opened.id)).ok ? { ...opened, id: newId() } : opened;
}

function furtherNotices(others: readonly OpenedInspection[]): readonly Notice[] {
  const names = (isStored: boolean): string =>
    others
      .filter(({ stored }) => stored.revision > 0 === isStored)
      .map(({ file }) => file)
      .join(", ");
  const notices: Notice[] = [];
  if (names(false) !== "") {
    notices.push({
      tone: "wrong",
      text: `Not opened, because this browser cannot save them: ${names(false)}.`,
    });
  }
  if (names(true) !== "") {
    notices.push({
      tone: "done",
      text: `Also opened and saved in this browser: ${names(true)}.`,
      action: {
        label: "Show all",
        act: () => {
          location.hash = hashOf({ at: "start" });
        },
      },
    });
  }
  return notices;
}
