import { Workbox } from "workbox-window";

/** What the page is told of its newer versions. */
export interface Updates {
  /** A newer version is loaded and waits; it is used once `use` is called, and the page has then to be loaded again. */
  readonly offered: (use: () => void) => void;
  /** Another tab has begun to use a newer version, which then serves this page, too. */
  readonly begunElsewhere: () => void;
}

/**
 * Keeps the whole page in this browser, for use without network, and looks for newer versions. Throws what the browser
 * throws where it does not let that be.
 */
export async function registerServiceWorker({ offered, begunElsewhere }: Updates): Promise<void> {
  const { serviceWorker } = navigator;
  const worker = new Workbox("./sw.js");
  const hadOne = serviceWorker.controller !== null;
  let isWanted = false;
  worker.addEventListener("waiting", () => {
    offered(() => {
      isWanted = true;
      worker.messageSkipWaiting();
    });
  });
  serviceWorker.addEventListener("controllerchange", () => {
    if (isWanted) location.reload();
    else if (hadOne) begunElsewhere();
  });
  // A page that stays open for days at a machine would never hear of a newer version otherwise.
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") worker.update().catch(() => {});
  });
  await worker.register();
}
