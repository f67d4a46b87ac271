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

/** What files came to. */
export interface OpenedFiles {
  /** The first inspection among them, to be shown. */
  readonly inspection: StoredInspection | null;
  readonly logs: readonly Log[];
  /** To be restored, one after the other. */
  readonly backups: readonly BackupFile[];
  /** What cannot be read, and what was opened beside the inspection to be shown. */
  readonly notices: readonly Notice[];
}

interface Found {
  readonly file: string;
  readonly kept: StoredInspection;
}

/** Opens files, each by itself: one that cannot be read does not stand in the way of the others. */
export async function openFiles({ files, id }: OpenRequest): Promise<OpenedFiles> {
  const inspections: Found[] = [];
  const logs: Log[] = [];
  const backups: BackupFile[] = [];
  const notices: Notice[] = [];
  for (const file of files) {
    const opened = await openOne(file, id);
    if (!opened.ok) notices.push({ tone: "wrong", text: `${file.name}: ${inOneLine(opened.problem)}` });
    else if (opened.value.kind === "logs") logs.push(...opened.value.logs);
    else if (opened.value.kind === "backup") backups.push({ name: file.name, bundle: opened.value.bundle });
    else inspections.push({ file: file.name, kept: opened.value.kept });
  }
  const [first, ...others] = inspections;
  return { inspection: first?.kept ?? null, logs, backups, notices: [...notices, ...besides(others)] };
}

async function openOne(file: File, id: string | undefined): Promise<Outcome<FileContents>> {
  const read = await readFile(file, id);
  if (!read.ok) return read;
  if (read.value.kind !== "inspection") return read;
  return succeeded({ kind: "inspection", kept: await keep(await withoutPictures(read.value.kept)) });
}

/** With its pictures kept apart; where they cannot be, it goes on carrying them, and nothing of it is lost. */
async function withoutPictures(opened: StoredInspection): Promise<StoredInspection> {
  const taken = await storePictures(opened.inspection);
  return taken.ok ? { ...opened, inspection: taken.value } : opened;
}

/** Keeps what a file holds, unless just that is kept already; what cannot be kept comes back as it was. */
async function keep(opened: StoredInspection): Promise<StoredInspection> {
  const same = await findStored(opened);
  // Verdicts that were noted since are in no file.
  if (same?.inFile === true || (same !== null && !isSameState(same, opened))) return same;
  const saving = await saveStored(same === null ? await besideDamaged(opened) : { ...same, inFile: true });
  if (!saving.ok) return same ?? opened;
  notifyOtherTabs({ id: saving.kept.id, revision: saving.kept.revision });
  return saving.kept;
}

/** Under another name, where what is kept under its own cannot be opened any more: that is left as it is. */
async function besideDamaged(opened: StoredInspection): Promise<StoredInspection> {
  const isThere = (await readStoredRaw(opened.id)) !== null;
  return isThere && !(await readStored(opened.id)).ok ? { ...opened, id: newId() } : opened;
}

function besides(others: readonly Found[]): readonly Notice[] {
  const names = (isKept: boolean): string =>
    others
      .filter(({ kept }) => kept.revision > 0 === isKept)
      .map(({ file }) => file)
      .join(", ");
  const notices: Notice[] = [];
  if (names(false) !== "") {
    notices.push({ tone: "wrong", text: `Not opened, as this browser keeps nothing: ${names(false)}.` });
  }
  if (names(true) !== "") {
    notices.push({
      tone: "done",
      text: `Opened, too, and kept in this browser: ${names(true)}.`,
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
