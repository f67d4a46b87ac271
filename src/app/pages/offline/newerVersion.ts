import { html, type ReactiveController, type ReactiveControllerHost } from "lit";
import { EDITION } from "../../../records/edition.ts";

/** A message, and what its button does. */
interface Offer {
  readonly message: string;
  readonly accept: () => void;
}

/** Makes the page work offline and offers newer versions, which are loaded only when the user accepts. */
export class NewerVersion implements ReactiveController {
  #offer: Offer | null = null;

  /** @param beforeReload saves what was entered */
  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly beforeReload: () => Promise<void>,
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    // Waits until the first screen is loaded. A part that cannot be loaded may belong to an older version.
    if (document.readyState === "complete") void this.#start();
    else window.addEventListener("load", () => void this.#start(), { once: true });
    window.addEventListener("vite:preloadError", this.#onLoadError);
  }

  hostDisconnected(): void {
    window.removeEventListener("vite:preloadError", this.#onLoadError);
  }

  render() {
    const offer = this.#offer;
    return html`<div class="newer" role="status">
      ${
        offer &&
        html`<p>${offer.message}</p>
          <button type="button" @click=${() => void this.beforeReload().then(offer.accept)}>Load it</button>
          <button type="button" class="quiet" @click=${() => this.#setOffer(null)}>Later</button>`
      }
    </div>`;
  }

  async #start(): Promise<void> {
    if (EDITION === "file" || !("serviceWorker" in navigator) || import.meta.env.DEV) return;
    const { registerServiceWorker } = await import("./serviceWorker.ts");
    const reload = () => location.reload();
    try {
      await registerServiceWorker({
        onWaiting: (accept) => this.#setOffer({ message: "A newer Tightspot is ready.", accept }),
        onOtherTabUpdated: () =>
          this.#setOffer({ message: "A newer Tightspot is in use in another tab.", accept: reload }),
      });
    } catch {
      // The browser allows no service worker; the first screen says whether the page works offline.
    }
  }

  readonly #onLoadError = (): void => {
    const message = "A part of the page could not be loaded. Check the network, or load the page again.";
    this.#setOffer({ message, accept: () => location.reload() });
  };

  #setOffer(offer: Offer | null): void {
    this.#offer = offer;
    this.host.requestUpdate();
  }
}
