import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, state } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import { inOneLine, type Outcome } from "../../inspection/problem.ts";
import type { ListEntry, StoredInspection } from "../../records/editorState.ts";
import { listStored } from "../../records/inspectionList.ts";
import type { DeletedInspection } from "../../records/listActions.ts";
import { type OtherTabs, otherTabs } from "../../records/tabs.ts";
import { listEntryName } from "../editing/listEntryWords.ts";
import { newId } from "../editing/newId.ts";
import { notify } from "../ui/notice.ts";
import { controls } from "../ui/sharedStyles.ts";
import type { EntryAction, ListedInspection } from "./listedInspection.ts";
import "./listedInspection.ts";
import inspectionListCss from "./inspectionList.css?inline";
import { search } from "./search.ts";

/** A list that is longer than this is searched rather than read. */
const SHORT = 3;

/** The inspections kept in this browser, to open, find, rename, duplicate and delete. */
@customElement("tightspot-kept-list")
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
    const found = search(this.entries, this.searched);
    return html`
      <section aria-labelledby="kept">
        <h2 id="kept" tabindex="-1">Kept in this browser</h2>
        ${this.#reminder()} ${this.entries.length > SHORT ? this.#search(found.length) : nothing}
        <ul>
          ${repeat(
            found,
            ({ id }) => id,
            (entry) => html`<li>
              <tightspot-kept-entry
                .entry=${entry}
                @tightspot-entry=${({ detail }: CustomEvent<EntryAction>) => this.#grant(entry, detail)}
              ></tightspot-kept-entry>
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
      ${this.entries.length === 1 ? "It is" : which} nowhere but here: save a backup, or open it and press “Save a file”, if it must last.
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

  async #grant(entry: ListEntry, wish: EntryAction): Promise<void> {
    if (wish.wish === "delete") await this.#delete(entry);
    else if (wish.wish === "rename") await this.#rename(entry, wish.name);
    else await this.#duplicate(entry);
  }

  async #rename(entry: ListEntry, name: string): Promise<void> {
    const { renameStored } = await import("../../records/listActions.ts");
    const undo = () => void this.#rename({ ...entry, name }, entry.name ?? "");
    const after = this.#taken("Not renamed", await renameStored(entry.id, name));
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
    const copy = this.#taken("Not duplicated", await duplicateStored(entry.id, newId()));
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
    this.#tabs?.tell({ id: entry.id, revision: null });
    const gone = deleted.value;
    notify(this, {
      tone: "done",
      text: `“${listEntryName(entry)}” was deleted.`,
      ...(gone && { action: { label: "Undo", act: () => void this.#putBack(gone) } }),
    });
    await this.#refresh();
    // Who works by keyboard goes on with the next one.
    const next = this.entries[at] ?? this.entries.at(-1);
    if (next !== undefined) this.#focus(next.id);
  }

  async #putBack(gone: DeletedInspection): Promise<void> {
    const { kept } = gone;
    const { restoreDeleted } = await import("../../records/listActions.ts");
    const back = await restoreDeleted(gone);
    if (!back.ok) notify(this, { tone: "wrong", text: `Not brought back: ${inOneLine(back.problem)}` });
    await this.#changed(kept);
    this.#focus(kept.id);
  }

  #taken(failure: string, outcome: Outcome<StoredInspection>): StoredInspection | null {
    if (outcome.ok) return outcome.value;
    notify(this, { tone: "wrong", text: `${failure}: ${inOneLine(outcome.problem)}` });
    return null;
  }

  /** Tells the other tabs, and lists anew. */
  async #changed({ id, revision }: StoredInspection): Promise<void> {
    this.#tabs?.tell({ id, revision });
    await this.#refresh();
  }

  #focus(id: string): void {
    [...this.renderRoot.querySelectorAll<ListedInspection>("tightspot-kept-entry")]
      .find(({ entry }) => entry?.id === id)
      ?.focus();
  }
}
