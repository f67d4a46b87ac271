import * as z from "zod/mini";
import { decodeBase64 } from "../../inspection/base64.ts";
import { checkFormat, FILE_UNCHANGED, type JsonKind, parseJson } from "../../inspection/jsonFile.ts";
import { problemOf, readInspection } from "../../inspection/open.ts";
import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import type { StoredPicture } from "../database.ts";
import type { StoredInspection } from "../editorState.ts";
import { pendingInputSchema } from "../storedInspection.ts";

export const BACKUP_KIND: JsonKind = {
  format: "tightspot-bundle",
  version: 1,
  called: "a backup of all slides",
};

/** All data of this browser's database. */
export interface Backup {
  /** When it was saved, ISO 8601. */
  readonly saved: string;
  /** Exactly as they were stored. */
  readonly inspections: readonly StoredInspection[];
  /** Records that could not be opened when the backup was made, exactly as they were stored. */
  readonly damaged: readonly { readonly id: string }[];
  readonly pictures: readonly StoredPicture[];
}

const id = z.string().check(z.minLength(1, "must not be empty"));

/** The part that the program relies on; further keys are left as they are. */
const backupSchema = z.looseObject({
  format: z.literal(BACKUP_KIND.format),
  version: z.literal(BACKUP_KIND.version),
  saved: z.string(),
  inspections: z.array(
    z.looseObject({
      id,
      revision: z.number().check(z.int("must be a whole number"), z.positive("must be at least 1")),
      savedAt: z.string(),
      inFile: z.optional(z.boolean()),
      inspection: z.unknown(),
      draft: pendingInputSchema,
    }),
  ),
  damaged: z.optional(z.array(z.looseObject({ id }))),
  pictures: z.array(z.looseObject({ id, type: z.string(), data: z.string() })),
});

/** Whether a text is a backup, valid or damaged. */
export function isBackup(text: string): boolean {
  const data = parseJson(text);
  return data.ok && typeof data.value === "object" && data.value !== null && "format" in data.value
    ? data.value.format === BACKUP_KIND.format
    : false;
}

/**
 * Opens the text of a backup. Fails with the place and the reason if any of it is damaged, or if it is newer than this
 * program.
 */
export function openBackup(text: string): Outcome<Backup> {
  const data = parseJson(text);
  const contents = data.ok ? checkFormat(data.value, BACKUP_KIND) : data;
  if (!contents.ok) return contents;
  const read = backupSchema.safeParse(contents.value, { reportInput: true });
  if (!read.success) {
    const { where, what } = problemOf(read.error.issues);
    return damagedAt(where, what);
  }
  // Restored is exactly what stands in the file, not the schema's copy of it.
  const { inspections, damaged = [], pictures } = contents.value as z.infer<typeof backupSchema>;
  const stored = inspections as unknown as readonly StoredInspection[];
  for (const [index, { inspection }] of stored.entries()) {
    if (inspection === null) continue;
    const valid = readInspection(inspection);
    if (!valid.ok)
      return damagedAt(`inspections[${index}].inspection.${valid.problem.where}`, valid.problem.what);
  }
  const duplicate = duplicateId([...stored, ...damaged]) ?? duplicateId(pictures);
  if (duplicate !== undefined) return damagedAt("", `two entries have the id "${duplicate}"`);
  const decoded: StoredPicture[] = [];
  for (const [index, picture] of pictures.entries()) {
    const bytes = decodeBase64(picture.data);
    if (bytes === null) return damagedAt(`pictures[${index}].data`, "is not base64");
    decoded.push({ id: picture.id, type: picture.type, bytes });
  }
  return succeeded({ saved: read.data.saved, inspections: stored, damaged, pictures: decoded });
}

function damagedAt(where: string, what: string): Outcome<never> {
  return failed(where, what, `Choose another backup: nothing was changed here. ${FILE_UNCHANGED}`);
}

function duplicateId(entries: readonly { readonly id: string }[]): string | undefined {
  const ids = entries.map((entry) => entry.id);
  return ids.find((each, index) => ids.indexOf(each) !== index);
}
