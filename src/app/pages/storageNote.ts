import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, state } from "lit/decorators.js";
import { EDITION } from "../../records/edition.ts";
import {
  requestPersistence,
  type StoragePersistence,
  storagePersistence,
} from "../../records/storagePersistence.ts";
import { controls } from "../ui/sharedStyles.ts";
import storageNoteCss from "./storageNote.css?inline";

/** The browser's offer to install the page; the language's own types lack it. */
interface InstallOffer extends Event {
  prompt(): Promise<unknown>;
}

/** Says where inspections are stored, whether they stay there, and whether the page works offline. */
@customElement("tightspot-storage-note")
export class StorageNote extends LitElement {
  static override styles = [controls, unsafeCSS(storageNoteCss)];

  @state() private persistence: StoragePersistence = null;
  /** Whether the browser refused a request made here. */
  @state() private isRefused = false;
  @state() private worksOffline = false;
  @state() private install: InstallOffer | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener("beforeinstallprompt", this.#onInstallOffer);
    window.addEventListener("appinstalled", this.#onInstalled);
    if (EDITION === "file") return;
    void storagePersistence().then((answer) => {
      this.persistence = answer;
    });
    if ("serviceWorker" in navigator) {
      void navigator.serviceWorker.ready.then(() => {
        this.worksOffline = true;
      });
    }
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("beforeinstallprompt", this.#onInstallOffer);
    window.removeEventListener("appinstalled", this.#onInstalled);
  }

  override render() {
    return html`<section aria-labelledby="device">
      <h2 id="device">On this device</h2>
      ${EDITION === "file" ? this.#ofFile() : this.#served()}
    </section>`;
  }

  #ofFile() {
    return html`<p>
        This Tightspot is one file and needs no network. This browser saves what you enter on this computer, not in
        that file: every Tightspot opened from a file in this browser shows the same list.
      </p>
      <p>
        No browser promises to keep what a page opened from a file has saved. Save a file of what must last: “Save a
        file” is above every inspection.
      </p>`;
  }

  #served() {
    return html`<p role="status">${this.#persistenceWords()} ${this.worksOffline ? "The page works without network." : ""}</p>
      ${
        window.isSecureContext
          ? nothing
          : html`<p>
              This address is not secure (https), so the page can neither be installed nor work without network here,
              nor read a gauge on a cable, nor ask the browser to keep what you enter. All else works.
            </p>`
      }
      <div class="ways">
        ${
          this.persistence === "may be cleared" && !this.isRefused
            ? html`<button type="button" @click=${this.#ask}>Ask the browser to keep it</button>`
            : nothing
        }
        ${
          this.install === null
            ? nothing
            : html`<button type="button" @click=${() => this.install?.prompt()}>Install Tightspot</button>`
        }
        <a class="button" href="./tightspot.html" download>Tightspot as one file, to carry along</a>
      </div>`;
  }

  #persistenceWords(): string {
    if (this.persistence === "persistent") {
      return "This browser saves what you enter, and has agreed to keep it until you delete it.";
    }
    if (this.isRefused)
      return "The browser does not promise to keep what you enter: save a file of what must last.";
    return "This browser saves what you enter. It may clear it when space runs short, and forgets it with a private window: save a file of what must last.";
  }

  async #ask(): Promise<void> {
    this.persistence = await requestPersistence();
    this.isRefused = this.persistence !== "persistent";
  }

  readonly #onInstallOffer = (event: Event): void => {
    event.preventDefault();
    this.install = event as InstallOffer;
  };

  readonly #onInstalled = (): void => {
    this.install = null;
  };
}
