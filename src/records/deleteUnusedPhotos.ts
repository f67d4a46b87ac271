import { picturesIn } from "../inspection/pictures.ts";
import { database } from "./database.ts";

/** A tab may still offer to undo a deletion, or not have saved an addition yet, for this long. */
const GRACE_DAYS = 1;
const DAY = 86_400_000;

/**
 * Deletes photographs that no inspection refers to, nor any of its undo steps. They are marked first and deleted after a
 * day. An inspection deleted from the list takes its photographs along until that can no longer be undone
 * (`deleteStored`). Does nothing if the database cannot be opened.
 *
 * @param now the current time
 */
export async function deleteUnusedPhotos(now: Date): Promise<void> {
  try {
    const transaction = (await database()).transaction(["inspections", "pictures"], "readwrite");
    const pictures = transaction.objectStore("pictures");
    if ((await pictures.count()) > 0) {
      const used = new Set(
        picturesIn(await transaction.objectStore("inspections").getAll()).map(({ id }) => id),
      );
      for (let at = await pictures.openCursor(); at !== null; at = await at.continue()) {
        const { unusedSince, ...picture } = at.value;
        if (used.has(picture.id)) {
          if (unusedSince !== undefined) await at.update(picture);
        } else if (unusedSince === undefined) await at.update({ ...picture, unusedSince: now.toISOString() });
        else if (now.getTime() - Date.parse(unusedSince) > GRACE_DAYS * DAY) await at.delete();
      }
    }
    await transaction.done;
  } catch {
    // The next call deletes what this one could not; the list reports a database that cannot be opened.
  }
}
