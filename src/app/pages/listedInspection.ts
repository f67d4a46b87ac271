import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { ListEntry } from "../../records/inspectionList.ts";
import { listEntryName, listEntrySummary } from "../files/listEntryWords.ts";
import { hashOf } from "../ui/route.ts";
import { controls } from "../ui/sharedStyles.ts";
import listedInspectionCss from "./listedInspection.css?inline";

declare global {
  interface HTMLElementEventMap {
    /** The user's command for an entry. */
    "tightspot-entry-action": CustomEvent<EntryAction>;
  }
}

export type EntryAction =
  | { readonly kind: "rename"; readonly name: string }
  | { readonly kind: "duplicate" | "delete" };

/** One inspection of the list, to open, rename, duplicate and delete. */
@customElement("tightspot-listed-inspection")
export class ListedInspection extends LitElement {
  static override styles = [controls, unsafeCSS(listedInspectionCss)];

  @property({ attribute: false }) entry: ListEntry | null = null;
  @state() private isRenaming = false;

  override render() {
    const { entry } = this;
    if (entry === null) return nothing;
    return this.isRenaming ? this.#renaming(entry) : this.#shown(entry);
  }

  /** Focuses the link that opens the inspection. */
  override focus(): void {
    this.renderRoot.querySelector("a")?.focus();
  }

  #shown(entry: ListEntry) {
    const name = listEntryName(entry);
    return html`
      <a href=${hashOf({ at: "inspection", id: entry.id })}>
        <span class="name">${name}</span>
        <span class="about figures">${listEntrySummary(entry)}</span>
      </a>
      <div class="actions">
        ${
          entry.isDamaged
            ? nothing
            : html`<button
                  type="button"
                  class="quiet rename"
                  aria-label=${`Rename ${name}`}
                  @click=${this.#beginRenaming}
                >
                  Rename
                </button>
                <button
                  type="button"
                  class="quiet"
                  aria-label=${`Duplicate ${name}`}
                  @click=${() => this.#request({ kind: "duplicate" })}
                >
                  Duplicate
                </button>`
        }
        <button
          type="button"
          class="quiet"
          aria-label=${`Delete ${name}`}
          @click=${() => this.#request({ kind: "delete" })}
        >
          Delete
        </button>
      </div>
    `;
  }

  #renaming(entry: ListEntry) {
    return html`<form
      @submit=${(event: SubmitEvent) => {
        event.preventDefault();
        void this.#endRenaming(true);
      }}
      @keydown=${({ key }: KeyboardEvent) => {
        if (key === "Escape") void this.#endRenaming(false);
      }}
    >
      <label><span class="label">Name</span><input type="text" .value=${entry.name ?? ""} /></label>
      <button type="submit" class="chief">Rename</button>
      <button type="button" @click=${() => this.#endRenaming(false)}>Cancel</button>
    </form>`;
  }

  async #beginRenaming(): Promise<void> {
    this.isRenaming = true;
    await this.updateComplete;
    this.renderRoot.querySelector("input")?.select();
  }

  async #endRenaming(isConfirmed: boolean): Promise<void> {
    const name = this.renderRoot.querySelector("input")?.value.trim() ?? "";
    this.isRenaming = false;
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>(".rename")?.focus();
    if (isConfirmed && name !== "" && name !== this.entry?.name) this.#request({ kind: "rename", name });
  }

  #request(detail: EntryAction): void {
    this.dispatchEvent(new CustomEvent("tightspot-entry-action", { detail }));
  }
}
