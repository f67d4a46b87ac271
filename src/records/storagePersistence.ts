/**
 * Whether the browser keeps stored data until the user deletes it, or may clear it when space runs short; null where it
 * cannot be asked, as on an insecure address. https://storage.spec.whatwg.org/#persistence
 */
export type StoragePersistence = "persistent" | "may be cleared" | null;

export async function storagePersistence(): Promise<StoragePersistence> {
  return answerOf(() => storage()?.persisted());
}

/** Asks the browser to make storage persistent. It may ask the user, or decide by itself. */
export async function requestPersistence(): Promise<StoragePersistence> {
  return answerOf(() => storage()?.persist());
}

/** The types promise it everywhere; an insecure address has none. */
function storage(): StorageManager | undefined {
  return "storage" in navigator ? navigator.storage : undefined;
}

async function answerOf(ask: () => Promise<boolean> | undefined): Promise<StoragePersistence> {
  try {
    const answer = await ask();
    if (answer === undefined) return null;
    return answer ? "persistent" : "may be cleared";
  } catch {
    return null;
  }
}
