import { picturesIn } from "../inspection/pictures.ts";
import { database } from "./database.ts";

/** As long as a tab may hold on to what was deleted in it, or not be done saving what was added. */
const GRACE_DAYS = 1;
const DAY = 86_400_000;

/**
 * Removes pictures that nothing refers to any more: neither an inspection nor a step of one that can be taken back.
 * They are marked first, and removed when that has stayed so for a day; what is deleted in a list keeps its pictures
 * with it until it cannot be brought back (`deleteKept`). A database that cannot be had is left alone.
 *
 * @param now the time it is
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
    // What is not removed now is removed the next time; the list says when the database cannot be had.
  }
}
