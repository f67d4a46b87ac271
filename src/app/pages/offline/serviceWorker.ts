import { Workbox } from "workbox-window";

/** Called when there is a newer version of the page. */
export interface Updates {
  /** A newer version is loaded and waits. `accept` activates it and reloads the page. */
  readonly onWaiting: (accept: () => void) => void;
  /** Another tab has activated a newer version, which now serves this page, too. */
  readonly onOtherTabUpdated: () => void;
}

/**
 * Registers the service worker, which makes the page work offline, and looks for newer versions.
 *
 * @throws the browser's error if it allows no service worker
 */
export async function registerServiceWorker({ onWaiting, onOtherTabUpdated }: Updates): Promise<void> {
  const { serviceWorker } = navigator;
  const worker = new Workbox("./sw.js");
  const wasControlled = serviceWorker.controller !== null;
  let isAccepted = false;
  worker.addEventListener("waiting", () => {
    onWaiting(() => {
      isAccepted = true;
      worker.messageSkipWaiting();
    });
  });
  serviceWorker.addEventListener("controllerchange", () => {
    if (isAccepted) location.reload();
    else if (wasControlled) onOtherTabUpdated();
  });
  // A page may stay open for days at a machine.
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") worker.update().catch(() => {});
  });
  await worker.register();
}
