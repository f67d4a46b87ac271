import { inOneLine } from "../../../inspection/problem.ts";
import { createBackup, markInFile } from "../../../records/backup/createBackup.ts";
import { notifyOtherTabs } from "../../../records/tabs.ts";
import { today } from "../../editing/localTime.ts";
import type { Notice } from "../../ui/notice.ts";
import { download } from "../download.ts";
import { MAX_FILE_SIZE } from "../readFile.ts";
import { counted } from "./backupWords.ts";

/**
 * Downloads everything stored in this browser as one file.
 *
 * @param notify is called with the outcome
 */
export async function saveBackup(notify: (notice: Notice) => void): Promise<void> {
  const backup = await createBackup(new Date());
  if (!backup.ok) {
    notify({ tone: "wrong", text: `No backup was saved: ${inOneLine(backup.problem)}` });
    return;
  }
  const { parts, inspections, pictures } = backup.value;
  const size = parts.reduce((sum, part) => sum + part.length, 0);
  if (size > MAX_FILE_SIZE) {
    const cure = "Open each inspection and press “Save a file” instead.";
    notify({
      tone: "wrong",
      text: `No backup was saved: it would be too large to open again. ${cure}`,
    });
    return;
  }
  download(`tightspot-backup-${today()}.json`, parts, "application/json");
  const photographs = pictures === 0 ? "" : ` and ${counted(pictures, "photograph")}`;
  notify({
    tone: "done",
    text: `A backup of ${counted(inspections.length, "slide")}${photographs} was saved. Open it here or on another device to restore it.`,
  });
  const marked = await markInFile(inspections);
  if (!marked.ok) {
    notify({
      tone: "wrong",
      text: `The list may still say “not in a file yet”: ${inOneLine(marked.problem)}`,
    });
    return;
  }
  for (const { id, revision } of inspections) notifyOtherTabs({ id, revision });
}
