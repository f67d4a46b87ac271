/**
 * Whether the browser lets what is kept here stay: until the reader deletes it, or only as long as there is space; null
 * where it cannot be asked, as on an address that is not secure. https://storage.spec.whatwg.org/#persistence
 */
export type StoragePersistence = "stays" | "may be cleared" | null;

export async function storagePersistence(): Promise<StoragePersistence> {
  return answerOf(() => storage()?.persisted());
}

/** Asks the browser to let what is kept stay. It may ask the reader, or decide by itself. */
export async function requestPersistence(): Promise<StoragePersistence> {
  return answerOf(() => storage()?.persist());
}

/** The language's types promise it everywhere; an address that is not secure has none. */
function storage(): StorageManager | undefined {
  return "storage" in navigator ? navigator.storage : undefined;
}

async function answerOf(ask: () => Promise<boolean> | undefined): Promise<StoragePersistence> {
  try {
    const answer = await ask();
    if (answer === undefined) return null;
    return answer ? "stays" : "may be cleared";
  } catch {
    return null;
  }
}
