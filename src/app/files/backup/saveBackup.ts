import { inOneLine } from "../../../inspection/problem.ts";
import { createBackup, markInFile } from "../../../records/bundle/saveBundle.ts";
import { notifyOtherTabs } from "../../../records/tabs.ts";
import { today } from "../../editing/surveys.ts";
import type { Notice } from "../../ui/notice.ts";
import { download } from "../download.ts";
import { MAX_FILE_SIZE } from "../readFile.ts";
import { counted } from "./backupWords.ts";

/**
 * Hands all that this browser keeps to the reader as one file.
 *
 * @param tell is told how that went
 */
export async function saveBackup(tell: (notice: Notice) => void): Promise<void> {
  const made = await createBackup(new Date());
  if (!made.ok) {
    tell({ tone: "wrong", text: `No backup was saved: ${inOneLine(made.problem)}` });
    return;
  }
  const { parts, inspections, pictures } = made.value;
  const size = parts.reduce((sum, part) => sum + part.length, 0);
  if (size > MAX_FILE_SIZE) {
    const cure = "Open each inspection and press “Save a file” instead.";
    tell({
      tone: "wrong",
      text: `No backup was saved: it would be too large to open again. ${cure}`,
    });
    return;
  }
  download(`tightspot-backup-${today()}.json`, parts, "application/json");
  const photographs = pictures === 0 ? "" : ` and ${counted(pictures, "photograph")}`;
  tell({
    tone: "done",
    text: `A backup of ${counted(inspections.length, "slide")}${photographs} was saved. Open it here or on another device to restore it.`,
  });
  const noted = await markInFile(inspections);
  if (!noted.ok) {
    tell({
      tone: "wrong",
      text: `The list may still say “not in a file yet”: ${inOneLine(noted.problem)}`,
    });
    return;
  }
  for (const { id, revision } of inspections) notifyOtherTabs({ id, revision });
}
