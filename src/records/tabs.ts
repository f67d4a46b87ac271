import { STORAGE_NAME } from "./edition.ts";

/** A message to the other tabs: an inspection was saved or deleted. */
export interface TabMessage {
  readonly id: string;
  /** The revision now stored; null if it was deleted. */
  readonly revision: number | null;
}

export interface OtherTabs {
  send(message: TabMessage): void;
  close(): void;
}

/** Sends one message to the other tabs without listening to them. */
export function notifyOtherTabs(message: TabMessage): void {
  const tabs = otherTabs(() => {});
  tabs.send(message);
  tabs.close();
}

/**
 * Opens the channel to the other tabs of this page.
 *
 * @param receive is called with each message from another tab
 */
export function otherTabs(receive: (message: TabMessage) => void): OtherTabs {
  const channel = new BroadcastChannel(STORAGE_NAME);
  channel.onmessage = ({ data }: MessageEvent<TabMessage>) => receive(data);
  return { send: (message) => channel.postMessage(message), close: () => channel.close() };
}
