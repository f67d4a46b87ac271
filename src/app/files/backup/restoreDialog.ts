import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { inOneLine } from "../../../inspection/problem.ts";
import { type ComparedInspection, compareBackup } from "../../../records/backup/compareBackup.ts";
import { type RestoreChoice, restore } from "../../../records/backup/restore.ts";
import { notifyOtherTabs } from "../../../records/tabs.ts";
import { momentOf } from "../../editing/localTime.ts";
import { newId } from "../../editing/newId.ts";
import { notify } from "../../ui/notice.ts";
import { hashOf } from "../../ui/route.ts";
import { controls } from "../../ui/sharedStyles.ts";
import logDialogCss from "../import/logDialog.css?inline";
import { type BackupFile, dispatchDone } from "../openRequest.ts";
import {
  counted,
  differencesWords,
  replacedWords,
  restoredWords,
  storedName,
  storedSummary,
} from "./backupWords.ts";
import restoreDialogCss from "./restoreDialog.css?inline";
import { saveBackup } from "./saveBackup.ts";

const CHOICES: readonly (readonly [RestoreChoice, string])[] = [
  ["stored", "Keep what is here"],
  ["backup", "Take the backup’s"],
  ["both", "Keep both"],
];

/** Shows a backup beside what this browser has, asks about each conflict, and restores the backup. */
@customElement("tightspot-restore-dialog")
export class RestoreDialog extends LitElement {
  static override styles = [controls, unsafeCSS(logDialogCss), unsafeCSS(restoreDialogCss)];

  @property({ attribute: false }) backup: BackupFile | null = null;

  /** Null until the backup is compared with this browser. */
  @state() private compared: readonly ComparedInspection[] | null = null;
  @state() private choices: ReadonlyMap<string, RestoreChoice> = new Map();
  @state() private problem = "";
  @state() private isRestoring = false;
  /** The message after a backup of this browser was saved. */
  @state() private saved = "";

  override firstUpdated(): void {
    this.renderRoot.querySelector("dialog")?.showModal();
    if (this.backup !== null) void this.#compare(this.backup);
  }

  override render() {
    const { backup, compared, problem } = this;
    if (backup === null) return nothing;
    return html`<dialog aria-labelledby="title" @close=${this.#close}>
      <div class="content">
        <div>
          <h2 id="title">Restore ${backup.name}</h2>
          <p class="about">${this.#aboutBackup(backup)}</p>
        </div>
        ${compared === null ? nothing : [this.#lists(compared), this.#replacing(compared)]}
        ${problem === "" ? nothing : html`<p class="wrong" role="alert">${problem}</p>`}
        <div class="choices">
          ${compared === null ? nothing : this.#go(backup, compared)}
          <form method="dialog"><button ?disabled=${this.isRestoring}>Cancel</button></form>
        </div>
      </div>
    </dialog>`;
  }

  #aboutBackup({ backup: { saved, damaged } }: BackupFile): string {
    const when = Number.isNaN(Date.parse(saved)) ? "" : `Saved ${momentOf(saved)}. `;
    if (damaged.length === 0) return `${when}Nothing is overwritten unless you choose so.`;
    const damagedCount = `${counted(damaged.length, "inspection")} in it could not be opened when it was saved`;
    return `${when}${damagedCount}; their data are restored as they were.`;
  }

  #lists(compared: readonly ComparedInspection[]) {
    const of = (status: ComparedInspection["status"]) => compared.filter((each) => each.status === status);
    const conflicts = of("conflict");
    return html`
      ${
        conflicts.length === 0
          ? nothing
          : html`<section>
              <h3>Not the same here as in the backup: ${conflicts.length}</h3>
              ${conflicts.map((each) => this.#conflict(each))}
            </section>`
      }
      ${this.#list("New here", of("new"))} ${this.#list("The same here", of("same"))}
    `;
  }

  #conflict({ inspection, stored }: ComparedInspection) {
    const chosen = this.choices.get(inspection.id) ?? "stored";
    return html`<fieldset>
      <legend>${storedName(inspection)}</legend>
      <dl>
        <dt>Here</dt>
        <dd>${stored === null ? "" : storedSummary(stored)}</dd>
        <dt>In the backup</dt>
        <dd>${storedSummary(inspection)}</dd>
        <dt>They differ in</dt>
        <dd>${stored === null ? "" : differencesWords(stored, inspection)}</dd>
      </dl>
      <div class="answers">
        ${CHOICES.map(
          ([choice, label]) => html`<label>
            <input
              type="radio"
              name=${inspection.id}
              .checked=${choice === chosen}
              @change=${() => {
                this.choices = new Map(this.choices).set(inspection.id, choice);
              }}
            />
            ${label}
          </label>`,
        )}
      </div>
    </fieldset>`;
  }

  #list(title: string, compared: readonly ComparedInspection[]) {
    if (compared.length === 0) return nothing;
    return html`<section>
      <h3>${title}: ${compared.length}</h3>
      <ul>
        ${compared.map(
          ({ inspection }) => html`<li>
            <p class="name">${storedName(inspection)}</p>
            <p class="about figures">${storedSummary(inspection)}</p>
          </li>`,
        )}
      </ul>
    </section>`;
  }

  /** Warns of inspections that the choices replace, and offers a backup of them first. */
  #replacing(compared: readonly ComparedInspection[]) {
    const replaced = compared.flatMap(({ inspection, status, stored }) =>
      status === "conflict" && stored !== null && this.choices.get(inspection.id) === "backup"
        ? [stored]
        : [],
    );
    // Always present: a screen reader speaks what is added to it.
    return html`<div role="status">
      ${
        replaced.length === 0
          ? nothing
          : html`<div class="replacing">
              <p>${replacedWords(replaced)}</p>
              <button type="button" ?disabled=${this.isRestoring} @click=${this.#saveHere}>
                Save all that is here as one backup
              </button>
              ${this.saved === "" ? nothing : html`<p>${this.saved}</p>`}
            </div>`
      }
    </div>`;
  }

  #go(backup: BackupFile, compared: readonly ComparedInspection[]) {
    const { damaged } = backup.backup;
    const count = compared.filter(({ inspection, status }) =>
      status === "conflict" ? (this.choices.get(inspection.id) ?? "stored") !== "stored" : status === "new",
    ).length;
    if (count + damaged.length === 0) {
      return html`<button type="button" class="chief" disabled>Nothing to restore</button>`;
    }
    return html`<button
      type="button"
      class="chief"
      ?disabled=${this.isRestoring}
      @click=${() => this.#restore(backup, compared)}
    >
      Restore ${counted(count + damaged.length, "slide")}
    </button>`;
  }

  async #compare(backup: BackupFile): Promise<void> {
    const compared = await compareBackup(backup.backup);
    if (compared.ok) this.compared = compared.value;
    else this.problem = inOneLine(compared.problem);
  }

  readonly #saveHere = (): void => {
    // Notices of the page are hidden by this dialog.
    void saveBackup(({ text }) => {
      this.saved = text;
    });
  };

  async #restore({ backup }: BackupFile, compared: readonly ComparedInspection[]): Promise<void> {
    this.isRestoring = true;
    const restored = await restore(backup, compared, this.choices, newId);
    this.isRestoring = false;
    if (!restored.ok) {
      this.problem = `Not restored: ${inOneLine(restored.problem)}`;
      return;
    }
    for (const { id, revision } of restored.value) notifyOtherTabs({ id, revision });
    notify(this, {
      tone: "done",
      text: restoredWords(restored.value, backup.damaged.length),
      action: {
        label: "Show all",
        act: () => {
          location.hash = hashOf({ at: "start" });
        },
      },
    });
    this.renderRoot.querySelector("dialog")?.close();
  }

  #close(): void {
    dispatchDone(this, "tightspot-backup-done");
  }
}
