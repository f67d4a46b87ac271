import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, state } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import { inOneLine, type Outcome } from "../../inspection/problem.ts";
import type { StoredInspection } from "../../records/editorState.ts";
import { type ListEntry, listStored, searchEntries } from "../../records/inspectionList.ts";
import type { DeletedInspection } from "../../records/listActions.ts";
import { type OtherTabs, otherTabs } from "../../records/tabs.ts";
import { newId } from "../editing/newId.ts";
import { listEntryName } from "../files/listEntryWords.ts";
import { notify } from "../ui/notice.ts";
import { controls } from "../ui/sharedStyles.ts";
import type { EntryAction, ListedInspection } from "./listedInspection.ts";
import "./listedInspection.ts";
import inspectionListCss from "./inspectionList.css?inline";

/** A longer list has a search field. */
const SHORT = 3;

/** The inspections stored in this browser, to open, find, rename, duplicate and delete. */
@customElement("tightspot-inspection-list")
export class InspectionList extends LitElement {
  static override styles = [controls, unsafeCSS(inspectionListCss)];

  @state() private entries: readonly ListEntry[] = [];
  @state() private problem: string | null = null;
  @state() private searched = "";

  #tabs: OtherTabs | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.hidden = true;
    this.#tabs = otherTabs(() => this.#refresh());
    void this.#refresh();
    void import("../../records/deleteUnusedPhotos.ts").then(({ deleteUnusedPhotos }) =>
      deleteUnusedPhotos(new Date()),
    );
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#tabs?.close();
  }

  override render() {
    if (this.problem !== null) {
      return html`<p class="wrong" role="alert">${this.problem}</p>
        <button type="button" @click=${this.#refresh}>Try again</button>`;
    }
    if (this.entries.length === 0) return nothing;
    const found = searchEntries(this.entries, this.searched);
    return html`
      <section aria-labelledby="stored">
        <h2 id="stored" tabindex="-1">Saved in this browser</h2>
        ${this.#reminder()} ${this.entries.length > SHORT ? this.#search(found.length) : nothing}
        <ul>
          ${repeat(
            found,
            ({ id }) => id,
            (entry) => html`<li>
              <tightspot-listed-inspection
                .entry=${entry}
                @tightspot-entry-action=${({ detail }: CustomEvent<EntryAction>) => this.#onAction(entry, detail)}
              ></tightspot-listed-inspection>
            </li>`,
          )}
        </ul>
        <div class="backup">
          <button type="button" @click=${this.#backup}>Save all as one backup</button>
          <p class="note">Slides, surveys and photographs in one file. Open it here or on another device.</p>
        </div>
      </section>
    `;
  }

  #reminder() {
    const count = this.entries.filter(({ inFile }) => !inFile).length;
    if (count === 0) return nothing;
    const which = count === 1 ? "One of them is" : `${count} of them are`;
    return html`<p class="note">
      ${this.entries.length === 1 ? "It is" : which} only in this browser: to be safe, save a backup, or open it and press “Save a file”.
    </p>`;
  }

  #search(found: number) {
    const all = this.entries.length;
    return html`<label class="search">
        <span class="label">Search by slide or machine</span>
        <input
          type="search"
          .value=${this.searched}
          @input=${({ target }: Event) => {
            this.searched = (target as HTMLInputElement).value;
          }}
        />
      </label>
      <p class="note" role="status">${this.searched.trim() === "" ? "" : `${found} of ${all} found`}</p>`;
  }

  async #refresh(): Promise<void> {
    const listed = await listStored();
    this.entries = listed.ok ? listed.value : [];
    this.problem = listed.ok ? null : inOneLine(listed.problem);
    this.hidden = this.entries.length === 0 && this.problem === null;
    await this.updateComplete;
  }

  async #backup(): Promise<void> {
    const { saveBackup } = await import("../files/backup/saveBackup.ts");
    await saveBackup((notice) => notify(this, notice));
  }

  async #onAction(entry: ListEntry, action: EntryAction): Promise<void> {
    if (action.kind === "delete") await this.#delete(entry);
    else if (action.kind === "rename") await this.#rename(entry, action.name);
    else await this.#duplicate(entry);
  }

  async #rename(entry: ListEntry, name: string): Promise<void> {
    const { renameStored } = await import("../../records/listActions.ts");
    const undo = () => void this.#rename({ ...entry, name }, entry.name ?? "");
    const after = this.#valueOrNotice("Not renamed", await renameStored(entry.id, name));
    if (after === null) return;
    const action = { label: "Undo", act: undo };
    notify(this, {
      tone: "done",
      text: `“${listEntryName(entry)}” is now called “${name}”.`,
      ...(entry.name !== null && { action }),
    });
    await this.#changed(after);
  }

  async #duplicate(entry: ListEntry): Promise<void> {
    const { duplicateStored } = await import("../../records/listActions.ts");
    const copy = this.#valueOrNotice("Not duplicated", await duplicateStored(entry.id, newId()));
    if (copy === null) return;
    notify(this, { tone: "done", text: `“${listEntryName(entry)}” was duplicated.` });
    await this.#changed(copy);
    this.#focus(copy.id);
  }

  async #delete(entry: ListEntry): Promise<void> {
    const at = this.entries.indexOf(entry);
    const { deleteStored } = await import("../../records/listActions.ts");
    const deleted = await deleteStored(entry.id);
    if (!deleted.ok) {
      notify(this, { tone: "wrong", text: `Not deleted: ${inOneLine(deleted.problem)}` });
      return;
    }
    this.#tabs?.send({ id: entry.id, revision: null });
    const restorable = deleted.value;
    notify(this, {
      tone: "done",
      text: `“${listEntryName(entry)}” was deleted.`,
      ...(restorable && { action: { label: "Undo", act: () => void this.#restore(restorable) } }),
    });
    await this.#refresh();
    // Keyboard users go on with the next one.
    const next = this.entries[at] ?? this.entries.at(-1);
    if (next !== undefined) this.#focus(next.id);
  }

  async #restore(deleted: DeletedInspection): Promise<void> {
    const { stored } = deleted;
    const { restoreDeleted } = await import("../../records/listActions.ts");
    const restored = await restoreDeleted(deleted);
    if (!restored.ok) notify(this, { tone: "wrong", text: `Not restored: ${inOneLine(restored.problem)}` });
    await this.#changed(stored);
    this.#focus(stored.id);
  }

  #valueOrNotice(failure: string, outcome: Outcome<StoredInspection>): StoredInspection | null {
    if (outcome.ok) return outcome.value;
    notify(this, { tone: "wrong", text: `${failure}: ${inOneLine(outcome.problem)}` });
    return null;
  }

  /** Notifies the other tabs and updates the list. */
  async #changed({ id, revision }: StoredInspection): Promise<void> {
    this.#tabs?.send({ id, revision });
    await this.#refresh();
  }

  #focus(id: string): void {
    [...this.renderRoot.querySelectorAll<ListedInspection>("tightspot-listed-inspection")]
      .find(({ entry }) => entry?.id === id)
      ?.focus();
  }
}
