import { STORAGE_NAME } from "./edition.ts";

/** What one tab tells the others: that an inspection was saved or deleted. */
export interface TabMessage {
  readonly id: string;
  /** The revision it is now kept at; null where it was deleted. */
  readonly revision: number | null;
}

export interface OtherTabs {
  tell(word: TabMessage): void;
  close(): void;
}

/** Tells the other tabs once, where nobody here listens to them. */
export function notifyOtherTabs(word: TabMessage): void {
  const tabs = otherTabs(() => {});
  tabs.tell(word);
  tabs.close();
}

/** Listens to the other tabs of this page and talks to them. */
export function otherTabs(hear: (word: TabMessage) => void): OtherTabs {
  const channel = new BroadcastChannel(STORAGE_NAME);
  channel.onmessage = ({ data }: MessageEvent<TabMessage>) => hear(data);
  return { tell: (word) => channel.postMessage(word), close: () => channel.close() };
}
