import { css, html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import { notify } from "../shell/notice.ts";
import { askToOpen } from "../shell/opening.ts";
import { hashOf } from "../shell/route.ts";
import { controls } from "../style/controls.ts";
import "./deviceNote.ts";
import "./keptList.ts";
import { SAMPLES, type Sample } from "./samples.ts";
import { screwPicture } from "./screwPicture.ts";

const NOT_LOADED = "The sample could not be loaded. Check the network, or load the page again.";

/** The first screen: what this is, and the ways to begin. */
@customElement("tightspot-start-page")
export class StartPage extends LitElement {
  static override styles = [
    controls,
    css`
      .hero {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: var(--gap-wide);
        align-items: center;
        padding: clamp(1rem, 4vw, 3.5rem) 0 var(--gap-wide);
      }

      h1 {
        max-width: 22ch;
        font-size: clamp(1.875rem, 1.2rem + 3.2vw, 3.25rem);
        font-weight: 750;
        line-height: 1.08;
        letter-spacing: -0.028em;
      }

      .hero p {
        max-width: 44ch;
        margin: 1rem 0 1.5rem;
        font-size: 1.125rem;
      }

      .ways {
        display: flex;
        flex-wrap: wrap;
        gap: 0.75rem;
      }

      .ways > * {
        flex: 1 1 9rem;
        max-width: 16rem;
        min-height: 56px;
        font-size: 1.0625rem;
      }

      .hero .drop {
        margin: 0.875rem 0 0;
        color: var(--ink-pale);
        font-size: var(--small);
      }

      .rest {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: clamp(2rem, 4vw, 4rem);
        padding-top: var(--gap-wide);
      }

      .samples ul {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(100%, 15rem), 1fr));
        gap: 0.625rem;
        margin-top: 0.875rem;
      }

      .note {
        margin-top: 0.25rem;
        color: var(--ink-pale);
        font-size: var(--small);
      }

      .samples button {
        flex-direction: column;
        align-items: flex-start;
        gap: 0.125rem;
        width: 100%;
        min-height: 64px;
        border-color: var(--rule);
        color: var(--ink-strong);
        text-align: left;
      }

      .samples small {
        color: var(--ink-pale);
        font-size: var(--small);
        font-weight: 400;
      }

      tightspot-device-note {
        padding-top: var(--gap-wide);
      }

      @media (min-width: 60rem) {
        .hero {
          grid-template-columns: minmax(0, 6fr) minmax(0, 7fr);
        }

        .rest:not(:has([hidden])) {
          grid-template-columns: minmax(0, 6fr) minmax(0, 7fr);
        }
      }
    `,
  ];

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
        ${screwPicture}
      </div>
      <div class="rest">
        <tightspot-kept-list></tightspot-kept-list>
        ${this.#samples()}
      </div>
      <tightspot-device-note></tightspot-device-note>
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
    askToOpen(this, { files: [...(target.files ?? [])] });
    target.value = "";
  }

  async #paste(): Promise<void> {
    await import("../opening/pasteDialog.ts");
    this.isPasting = true;
  }

  #pasted(): void {
    this.isPasting = false;
  }

  async #open(sample: Sample): Promise<void> {
    const file = await sample.load();
    if (file !== null) askToOpen(this, { files: [file], id: `sample-${sample.name}` });
    else notify(this, { tone: "wrong", text: NOT_LOADED });
  }
}
