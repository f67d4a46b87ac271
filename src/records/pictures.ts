import {
  carriedBytes,
  carrying,
  light,
  type Picture,
  picturesIn,
  withPictures,
} from "../inspection/pictures.ts";
import { type Outcome, succeeded } from "../inspection/problem.ts";
import { database, type PictureTransactionStore } from "./database.ts";
import { storageError } from "./storageErrors.ts";
import { isSamePicture, type StoredPicture } from "./storedPicture.ts";

/**
 * Keeps the pictures that data carry, such as an inspection from a file.
 *
 * @returns the same data with its pictures only named, which is light enough to be saved at every key
 */
export async function storePictures<Data>(data: Data): Promise<Outcome<Data>> {
  const carried = picturesIn(data).flatMap((picture) => {
    const bytes = carriedBytes(picture);
    return bytes === null ? [] : [{ picture, kept: { id: picture.id, type: picture.type, bytes } }];
  });
  if (carried.length === 0) return succeeded(data);
  try {
    const transaction = (await database()).transaction("pictures", "readwrite", { durability: "strict" });
    const ids = await putPictures(
      transaction.store,
      carried.map(({ kept }) => kept),
    );
    await transaction.done;
    const named = new Map(carried.map(({ picture }, at) => [picture, ids[at] ?? picture.id]));
    return succeeded(
      withPictures(data, (picture): Picture => {
        const id = named.get(picture);
        return id === undefined ? picture : { ...light(picture), id };
      }),
    );
  } catch (error) {
    return { ok: false, problem: storageError(error) };
  }
}

/**
 * Puts pictures beside those that are there. None is written over: one whose id is that of another picture is put
 * under the next one that is free.
 *
 * @returns the id that each is kept under
 */
export async function putPictures(
  store: PictureTransactionStore,
  pictures: readonly StoredPicture[],
): Promise<readonly string[]> {
  const ids: string[] = [];
  for (const picture of pictures) {
    let id = picture.id;
    let there = await store.get(id);
    for (let next = 2; there !== undefined && !isSamePicture(there, picture); next += 1) {
      id = `${picture.id}-${next}`;
      there = await store.get(id);
    }
    if (there === undefined) await store.put({ ...picture, id });
    ids.push(id);
  }
  return ids;
}

/** The bytes of the pictures that data name, by id; what is not kept is missing from them. */
export async function storedPictures(data: unknown): Promise<Outcome<ReadonlyMap<string, StoredPicture>>> {
  const ids = new Set(picturesIn(data).map(({ id }) => id));
  if (ids.size === 0) return succeeded(new Map());
  try {
    const { store } = (await database()).transaction("pictures");
    const found = await Promise.all([...ids].map((id) => store.get(id)));
    return succeeded(new Map(found.flatMap((kept) => (kept === undefined ? [] : [[kept.id, kept]]))));
  } catch (error) {
    return { ok: false, problem: storageError(error) };
  }
}

/** Data that carry the bytes of their pictures, and how many pictures are not kept here any more. */
export interface SelfContained<Data> {
  readonly data: Data;
  readonly missing: number;
}

/** The data with the bytes of every picture in them, as they are in a file on a disk. */
export async function selfContained<Data>(data: Data): Promise<SelfContained<Data>> {
  const kept = await storedPictures(data);
  let missing = 0;
  const whole = withPictures(data, (picture): Picture => {
    if (picture.data !== undefined) return picture;
    const found = kept.ok ? kept.value.get(picture.id) : undefined;
    if (found === undefined) missing += 1;
    return found === undefined ? picture : carrying(picture, found.bytes);
  });
  return { data: whole, missing };
}
