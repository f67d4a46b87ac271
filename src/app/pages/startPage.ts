import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, state } from "lit/decorators.js";
import { requestOpen } from "../files/openRequest.ts";
import { notify } from "../ui/notice.ts";
import { hashOf } from "../ui/route.ts";
import { controls } from "../ui/sharedStyles.ts";
import "./storageNote.ts";
import "./inspectionList.ts";
import { startPicture } from "../drawings/startPicture.ts";
import { SAMPLES, type Sample } from "./samples.ts";
import startPageCss from "./startPage.css?inline";

const NOT_LOADED = "The sample could not be loaded. Check the network, or load the page again.";

/** The first screen: what the program does, and how to begin. */
@customElement("tightspot-start-page")
export class StartPage extends LitElement {
  static override styles = [controls, unsafeCSS(startPageCss)];

  @state() private isPasting = false;

  override render() {
    return html`
      <div class="hero">
        <div>
          <h1>Adjust the nut, or remake the screw?</h1>
          <p>
            Read the backlash at a few places along the slide. Tightspot finds the tight spot, works out what taking
            up the nut would leave, and says what the slide needs, and how sure that is.
          </p>
          <div class="ways">
            <a class="button chief" href=${hashOf({ at: "new" })}>New inspection</a>
            <button type="button" @click=${this.#choose}>Open files</button>
            <button type="button" @click=${this.#paste}>Paste readings</button>
            <input
              type="file"
              hidden
              multiple
              aria-label="Files to open"
              accept=".json,.csv,.tsv,.txt,application/json,text/csv,text/plain"
              @change=${this.#chosen}
            />
          </div>
          <p class="drop">
            Or drop inspections or a backup (JSON) or logs of readings (CSV) anywhere here, or paste a table. Nothing
            leaves this device.
          </p>
        </div>
        ${startPicture}
      </div>
      <div class="rest">
        <tightspot-inspection-list></tightspot-inspection-list>
        ${this.#samples()}
      </div>
      <tightspot-storage-note></tightspot-storage-note>
      ${
        this.isPasting
          ? html`<tightspot-paste-dialog @tightspot-paste-done=${this.#pasted}></tightspot-paste-dialog>`
          : nothing
      }
    `;
  }

  #samples() {
    return html`<section class="samples" aria-labelledby="samples">
      <h2 id="samples">Look at a sample</h2>
      <p class="note">Inspections from an invented workshop.</p>
      <ul>
        ${SAMPLES.map(
          (sample) =>
            html`<li>
              <button type="button" @click=${() => this.#open(sample)}>
                ${sample.slide} <small>${sample.shows}</small>
              </button>
            </li>`,
        )}
      </ul>
    </section>`;
  }

  #choose(): void {
    this.renderRoot.querySelector("input")?.click();
  }

  #chosen({ target }: Event): void {
    if (!(target instanceof HTMLInputElement)) return;
    requestOpen(this, { files: [...(target.files ?? [])] });
    target.value = "";
  }

  async #paste(): Promise<void> {
    await import("../files/import/pasteDialog.ts");
    this.isPasting = true;
  }

  #pasted(): void {
    this.isPasting = false;
  }

  async #open(sample: Sample): Promise<void> {
    const file = await sample.load();
    if (file !== null) requestOpen(this, { files: [file], id: `sample-${sample.name}` });
    else notify(this, { tone: "wrong", text: NOT_LOADED });
  }
}
