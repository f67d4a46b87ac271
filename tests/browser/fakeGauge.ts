import type { Page } from "playwright-core";
import type { ServedPage } from "./servedPage.ts";

interface FakeGauge {
  /** Sends bytes as a gauge does; null ends it, as when the cable is unplugged. */
  send(text: string | null): void;
  readonly opened: unknown;
}

declare global {
  interface Window {
    fakeGauge: FakeGauge;
  }
}

/** A page whose browser offers serial ports, with one fake gauge on them. */
export async function withGauge(served: ServedPage): Promise<Page> {
  const page = await served.open();
  await page.addInitScript(() => {
    let feed: ReadableStreamDefaultController<Uint8Array> | undefined;
    const port = {
      readable: null as ReadableStream<Uint8Array> | null,
      async open(options: unknown) {
        port.readable = new ReadableStream({
          start: (controller) => {
            feed = controller;
          },
        });
        window.fakeGauge = {
          opened: options,
          send: (text) => {
            if (text === null) {
              port.readable = null;
              feed?.error(new DOMException("The device has been lost.", "NetworkError"));
            } else feed?.enqueue(new TextEncoder().encode(text));
          },
        };
      },
      async close() {
        port.readable = null;
      },
      async setSignals() {},
    };
    const serial = { requestPort: async () => port, getPorts: async () => [port] };
    Object.defineProperty(navigator, "serial", { configurable: true, value: serial });
  });
  await page.reload();
  return page;
}

/** Sends bytes as a gauge does; null unplugs its cable. */
export const send = (page: Page, text: string | null) =>
  page.evaluate((line) => window.fakeGauge.send(line), text);
