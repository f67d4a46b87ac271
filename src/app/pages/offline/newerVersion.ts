import { html, type ReactiveController, type ReactiveControllerHost } from "lit";
import { EDITION } from "../../../records/edition.ts";

/** What the reader is told, and what is done if they want it. */
interface Offer {
  readonly words: string;
  readonly use: () => void;
}

/** Keeps the page for use without network, and offers a newer version of it, which is never forced on the reader. */
export class NewerVersion implements ReactiveController {
  #offer: Offer | null = null;

  /** @param beforeUse keeps what was entered, as the page is then loaded again */
  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly beforeUse: () => Promise<void>,
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    // Not while the first screen is still loading. A part that cannot be loaded may have gone with an old version.
    if (document.readyState === "complete") void this.#begin();
    else window.addEventListener("load", () => void this.#begin(), { once: true });
    window.addEventListener("vite:preloadError", this.#onMissing);
  }

  hostDisconnected(): void {
    window.removeEventListener("vite:preloadError", this.#onMissing);
  }

  render() {
    const offer = this.#offer;
    return html`<div class="newer" role="status">
      ${
        offer &&
        html`<p>${offer.words}</p>
          <button type="button" @click=${() => void this.beforeUse().then(offer.use)}>Load it</button>
          <button type="button" class="quiet" @click=${() => this.#become(null)}>Later</button>`
      }
    </div>`;
  }

  async #begin(): Promise<void> {
    if (EDITION === "file" || !("serviceWorker" in navigator) || import.meta.env.DEV) return;
    const { registerServiceWorker } = await import("./serviceWorker.ts");
    const reload = () => location.reload();
    try {
      await registerServiceWorker({
        offered: (use) => this.#become({ words: "A newer Tightspot is ready.", use }),
        begunElsewhere: () =>
          this.#become({ words: "A newer Tightspot is in use in another tab.", use: reload }),
      });
    } catch {
      // A browser that keeps nothing for a page: the first screen tells whether it works without network.
    }
  }

  readonly #onMissing = (): void => {
    const words = "A part of the page could not be loaded. Check the network, or load the page again.";
    this.#become({ words, use: () => location.reload() });
  };

  #become(offer: Offer | null): void {
    this.#offer = offer;
    this.host.requestUpdate();
  }
}
