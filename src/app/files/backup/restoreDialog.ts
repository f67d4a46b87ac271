import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { inOneLine } from "../../../inspection/problem.ts";
import { type ComparedInspection, compareBackup } from "../../../records/bundle/compareBundle.ts";
import { type RestoreChoice, restore } from "../../../records/bundle/restore.ts";
import { notifyOtherTabs } from "../../../records/tabs.ts";
import { newId } from "../../editing/newId.ts";
import { notify } from "../../ui/notice.ts";
import { hashOf } from "../../ui/route.ts";
import { controls } from "../../ui/sharedStyles.ts";
import logDialogCss from "../import/logDialog.css?inline";
import { type BackupFile, dispatchDone } from "../openRequest.ts";
import {
  counted,
  differencesWords,
  MOMENT,
  replacedWords,
  restoredWords,
  storedName,
  storedSummary,
} from "./backupWords.ts";
import restoreDialogCss from "./restoreDialog.css?inline";
import { saveBackup } from "./saveBackup.ts";

const CHOICES: readonly (readonly [RestoreChoice, string])[] = [
  ["keep", "Keep what is here"],
  ["take", "Take the backup’s"],
  ["both", "Keep both"],
];

/** Shows what a backup holds beside what is kept here, asks about what differs, and restores the rest. */
@customElement("tightspot-restore-dialog")
export class RestoreDialog extends LitElement {
  static override styles = [controls, unsafeCSS(logDialogCss), unsafeCSS(restoreDialogCss)];

  @property({ attribute: false }) backup: BackupFile | null = null;

  /** Null until it is compared with what is kept here. */
  @state() private compared: readonly ComparedInspection[] | null = null;
  @state() private choices: ReadonlyMap<string, RestoreChoice> = new Map();
  @state() private problem = "";
  @state() private isRestoring = false;
  /** How saving what is here went. */
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

  #aboutBackup({ bundle: { saved, damaged } }: BackupFile): string {
    const at = new Date(saved);
    const when = Number.isNaN(at.getTime()) ? "" : `Saved ${MOMENT.format(at)}. `;
    if (damaged.length === 0) return `${when}Nothing is overwritten unless you choose so.`;
    const wrecks = `${counted(damaged.length, "inspection")} in it could not be opened when it was saved`;
    return `${when}${wrecks}; what is there comes back as it was.`;
  }

  #lists(compared: readonly ComparedInspection[]) {
    const of = (standing: ComparedInspection["standing"]) =>
      compared.filter((each) => each.standing === standing);
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

  #conflict({ inspection, here }: ComparedInspection) {
    const chosen = this.choices.get(inspection.id) ?? "keep";
    return html`<fieldset>
      <legend>${storedName(inspection)}</legend>
      <dl>
        <dt>Here</dt>
        <dd>${here === null ? "" : storedSummary(here)}</dd>
        <dt>In the backup</dt>
        <dd>${storedSummary(inspection)}</dd>
        <dt>They differ in</dt>
        <dd>${here === null ? "" : differencesWords(here, inspection)}</dd>
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

  /** What is lost by what was chosen, and the way to have it in a file first. */
  #replacing(compared: readonly ComparedInspection[]) {
    const replaced = compared.flatMap(({ inspection, standing, here }) =>
      standing === "conflict" && here !== null && this.choices.get(inspection.id) === "take" ? [here] : [],
    );
    // There from the start: a screen reader speaks what is put into it.
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
    const { damaged } = backup.bundle;
    const count = compared.filter(({ inspection, standing }) =>
      standing === "conflict" ? (this.choices.get(inspection.id) ?? "keep") !== "keep" : standing === "new",
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
    const compared = await compareBackup(backup.bundle);
    if (compared.ok) this.compared = compared.value;
    else this.problem = inOneLine(compared.problem);
  }

  readonly #saveHere = (): void => {
    // The page's own notices lie under this dialog.
    void saveBackup(({ text }) => {
      this.saved = text;
    });
  };

  async #restore({ bundle }: BackupFile, compared: readonly ComparedInspection[]): Promise<void> {
    this.isRestoring = true;
    const restored = await restore(bundle, compared, this.choices, newId);
    this.isRestoring = false;
    if (!restored.ok) {
      this.problem = `Not restored: ${inOneLine(restored.problem)}`;
      return;
    }
    for (const { id, revision } of restored.value) notifyOtherTabs({ id, revision });
    notify(this, {
      tone: "done",
      text: restoredWords(restored.value, bundle.damaged.length),
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
