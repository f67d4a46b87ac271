import * as z from "zod/mini";
import { bytesOf } from "../../inspection/base64.ts";
import { type JsonKind, LEAVE, parseJson, recognise } from "../../inspection/jsonFile.ts";
import { problemOf, readInspection } from "../../inspection/open.ts";
import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import type { StoredInspection } from "../editorState.ts";
import { pendingInputSchema } from "../pendingInputSchema.ts";
import type { StoredPicture } from "../storedPicture.ts";

export const BACKUP_KIND: JsonKind = {
  format: "tightspot-bundle",
  version: 1,
  called: "a backup of all slides",
};

/** Everything that a browser keeps, as in a backup. */
export interface Backup {
  /** When it was saved, ISO 8601. */
  readonly saved: string;
  /** The inspections, each exactly as it was kept. */
  readonly inspections: readonly StoredInspection[];
  /** What was kept, and could not be opened any more when the backup was saved, just as it was. */
  readonly damaged: readonly { readonly id: string }[];
  readonly pictures: readonly StoredPicture[];
}

const id = z.string().check(z.minLength(1, "must not be empty"));

/** What the program has to rely on; all of it is kept as it stands in the file. */
const bundleSchema = z.looseObject({
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

/** Whether a text is meant to be a backup, sound or not. */
export function isBackup(text: string): boolean {
  const data = parseJson(text);
  return data.ok && typeof data.value === "object" && data.value !== null && "format" in data.value
    ? data.value.format === BACKUP_KIND.format
    : false;
}

/**
 * Opens the text of a backup. One that is newer than this program, or damaged anywhere, is refused as a whole with the
 * place and the reason.
 */
export function openBackup(text: string): Outcome<Backup> {
  const data = parseJson(text);
  const contents = data.ok ? recognise(data.value, BACKUP_KIND) : data;
  if (!contents.ok) return contents;
  const read = bundleSchema.safeParse(contents.value, { reportInput: true });
  if (!read.success) {
    const { where, what } = problemOf(read.error.issues);
    return damagedAt(where, what);
  }
  // The schema has looked at them; what is put back is what stands in the file, to the letter.
  const { inspections, damaged = [], pictures } = contents.value as z.infer<typeof bundleSchema>;
  const kept = inspections as unknown as readonly StoredInspection[];
  for (const [index, { inspection }] of kept.entries()) {
    if (inspection === null) continue;
    const sound = readInspection(inspection);
    if (!sound.ok)
      return damagedAt(`inspections[${index}].inspection.${sound.problem.where}`, sound.problem.what);
  }
  const twice = repeated([...kept, ...damaged]) ?? repeated(pictures);
  if (twice !== undefined) return damagedAt("", `two entries have the id "${twice}"`);
  const decoded: StoredPicture[] = [];
  for (const [index, picture] of pictures.entries()) {
    const bytes = bytesOf(picture.data);
    if (bytes === null) return damagedAt(`pictures[${index}].data`, "is not base64");
    decoded.push({ id: picture.id, type: picture.type, bytes });
  }
  return succeeded({ saved: read.data.saved, inspections: kept, damaged, pictures: decoded });
}

function damagedAt(where: string, what: string): Outcome<never> {
  return failed(where, what, `Take another backup: nothing was changed here. ${LEAVE}`);
}

function repeated(entries: readonly { readonly id: string }[]): string | undefined {
  const ids = entries.map((entry) => entry.id);
  return ids.find((each, index) => ids.indexOf(each) !== index);
}
