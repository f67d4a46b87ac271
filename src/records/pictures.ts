import {
  type Picture,
  pictureBytes,
  picturesIn,
  withBytes,
  withoutBytes,
  withPictures,
} from "../inspection/pictures.ts";
import { type Outcome, succeeded } from "../inspection/problem.ts";
import { database, type PictureStore, type StoredPicture } from "./database.ts";
import { storageError } from "./storageErrors.ts";

/**
 * Stores the pictures that data carry, such as an inspection from a file.
 *
 * @returns the same data with ids in place of the bytes
 */
export async function storePictures<Data>(data: Data): Promise<Outcome<Data>> {
  const carried = picturesIn(data).flatMap((picture) => {
    const bytes = pictureBytes(picture);
    return bytes === null ? [] : [{ picture, stored: { id: picture.id, type: picture.type, bytes } }];
  });
  if (carried.length === 0) return succeeded(data);
  try {
    const transaction = (await database()).transaction("pictures", "readwrite", { durability: "strict" });
    const ids = await putPictures(
      transaction.store,
      carried.map(({ stored }) => stored),
    );
    await transaction.done;
    const idOf = new Map(carried.map(({ picture }, index) => [picture, ids[index] ?? picture.id]));
    return succeeded(
      withPictures(data, (picture): Picture => {
        const id = idOf.get(picture);
        return id === undefined ? picture : { ...withoutBytes(picture), id };
      }),
    );
  } catch (error) {
    return { ok: false, problem: storageError(error) };
  }
}

/**
 * Adds pictures to the store without overwriting any: one whose id belongs to another picture gets the next free id.
 *
 * @returns the id under which each is stored
 */
export async function putPictures(
  store: PictureStore,
  pictures: readonly StoredPicture[],
): Promise<readonly string[]> {
  const ids: string[] = [];
  for (const picture of pictures) {
    let id = picture.id;
    let existing = await store.get(id);
    for (let next = 2; existing !== undefined && !haveSameBytes(existing, picture); next += 1) {
      id = `${picture.id}-${next}`;
      existing = await store.get(id);
    }
    if (existing === undefined) await store.put({ ...picture, id });
    ids.push(id);
  }
  return ids;
}

function haveSameBytes(one: StoredPicture, other: StoredPicture): boolean {
  return one.bytes.length === other.bytes.length && one.bytes.every((byte, at) => byte === other.bytes[at]);
}

/** The pictures that data refer to, by id, without those that are not stored. */
export async function storedPictures(data: unknown): Promise<Outcome<ReadonlyMap<string, StoredPicture>>> {
  const ids = new Set(picturesIn(data).map(({ id }) => id));
  if (ids.size === 0) return succeeded(new Map());
  try {
    const { store } = (await database()).transaction("pictures");
    const found = await Promise.all([...ids].map((id) => store.get(id)));
    return succeeded(
      new Map(found.flatMap((picture) => (picture === undefined ? [] : [[picture.id, picture]]))),
    );
  } catch (error) {
    return { ok: false, problem: storageError(error) };
  }
}

/** Data that carry the bytes of their pictures, and the number of pictures that are no longer stored. */
export interface SelfContained<Data> {
  readonly data: Data;
  readonly missing: number;
}

/** The data with the bytes of every picture in them, as in a file. */
export async function selfContained<Data>(data: Data): Promise<SelfContained<Data>> {
  const stored = await storedPictures(data);
  let missing = 0;
  const whole = withPictures(data, (picture): Picture => {
    if (picture.data !== undefined) return picture;
    const found = stored.ok ? stored.value.get(picture.id) : undefined;
    if (found === undefined) missing += 1;
    return found === undefined ? picture : withBytes(picture, found.bytes);
  });
  return { data: whole, missing };
}
