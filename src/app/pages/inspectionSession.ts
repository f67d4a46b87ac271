import { html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { inOneLine } from "../../inspection/problem.ts";
import { EDITION } from "../../records/edition.ts";
import type { EditorState, StoredInspection } from "../../records/editorState.ts";
import { requestPersistence } from "../../records/storagePersistence.ts";
import { readStored, readStoredRaw, saveStored } from "../../records/storedInspection.ts";
import { type OtherTabs, otherTabs, type TabMessage } from "../../records/tabs.ts";
import { InspectionEditor } from "../editing/inspectionEditor.ts";
import { newId } from "../editing/newId.ts";
import { newPendingInput } from "../editing/slideSetup.ts";
import type { Log } from "../files/readFile.ts";
import "./setupPage.ts";
import { download } from "../files/download.ts";
import { dispatchDone } from "../files/openRequest.ts";
import { notify } from "../ui/notice.ts";
import { hashOf, type Route, routeOf } from "../ui/route.ts";
import { controls } from "../ui/sharedStyles.ts";
import type { InspectionPage } from "./inspectionPage.ts";
import "./inspectionPage.ts";
import "./saveStatusLine.ts";

/** Opens the inspection that the address names, saves it as it changes, and shows its page or the setup page. */
@customElement("tightspot-inspection-session")
export class InspectionSession extends LitElement {
  static override styles = controls;

  @property({ attribute: false }) route: Route = { at: "new" };
  /** An inspection just opened from a file, which may not be stored yet. */
  @property({ attribute: false }) opened: StoredInspection | null = null;
  /** Logs of readings to import, one after the other. */
  @property({ attribute: false }) logs: readonly Log[] = [];

  @state() private editor: InspectionEditor | null = null;
  @state() private problem: string | null = null;
  /** The stored record of an inspection that cannot be opened. */
  @state() private damaged: unknown = null;
  /** The log shown in the dialog, which the user has to confirm. */
  @state() private confirming: Log | null = null;

  /** The log whose import began last. */
  #importing: Log | null = null;

  #tabs: OtherTabs | undefined;
  #persistenceRequested = false;

  constructor() {
    super();
    this.addEventListener("tightspot-retry", this.#saveNow);
    this.addEventListener("tightspot-copy", () => {
      if (this.editor !== null) this.#openCopy(this.editor.state);
    });
    this.addEventListener("tightspot-show-other", () => {
      if (this.editor !== null) void this.#openStored(this.editor.id);
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#tabs = otherTabs((message) => this.#receive(message));
    window.addEventListener("pagehide", this.#onPageHide);
    document.addEventListener("visibilitychange", this.#saveNow);
    window.addEventListener("beforeunload", this.#warnOfLoss);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    const tabs = this.#tabs;
    this.#noteVerdict();
    // The other tabs are notified of the last save, too.
    void this.editor?.saveNow().then(() => tabs?.close());
    window.removeEventListener("pagehide", this.#onPageHide);
    document.removeEventListener("visibilitychange", this.#saveNow);
    window.removeEventListener("beforeunload", this.#warnOfLoss);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("route")) void this.#onRoute();
    const [log] = this.logs;
    if (log === undefined || log === this.#importing || this.editor === null || hasWaiting(this.editor))
      return;
    this.#importing = log;
    void this.#import(log);
  }

  override render() {
    const { editor, confirming } = this;
    if (this.problem !== null) {
      return html`<section class="sheet" role="alert">
        <h1>This inspection cannot be opened</h1>
        <p>${this.problem}</p>
        ${
          this.damaged === null
            ? nothing
            : html`<button type="button" @click=${this.#saveDamaged}>Save what is there as a file</button>`
        }
        <p><a href=${hashOf({ at: "start" })}>To the first screen</a></p>
      </section>`;
    }
    if (editor === null) return nothing;
    return html`
      ${
        editor.inspection === null
          ? html`${saveStatusOf(editor)}
              <tightspot-setup-page
              .draft=${editor.state.draft}
              .next=${hasWaiting(editor) ? this.logs.map(({ name }) => name) : []}
              @tightspot-pending-input=${({ detail }: HTMLElementEventMap["tightspot-pending-input"]) => editor.setPendingInput(detail)}
              @tightspot-described=${({ detail }: HTMLElementEventMap["tightspot-described"]) =>
                editor.setState(detail)}
            ></tightspot-setup-page>`
          : html`<tightspot-inspection
              .editor=${editor}
              .editorState=${editor.state}
              .survey=${editor.survey}
              .rows=${editor.rows}
              .saveStatus=${editor.saveStatus}
            ></tightspot-inspection>`
      }
      ${
        confirming === null || confirming !== this.logs[0]
          ? nothing
          : html`<tightspot-log-dialog .log=${confirming} .editor=${editor}></tightspot-log-dialog>`
      }
    `;
  }

  protected override updated(): void {
    const name = this.editor?.inspection?.slide.name ?? "New inspection";
    document.title = `${name} · Tightspot`;
  }

  /** Saves unsaved changes at once. */
  async saveNow(): Promise<void> {
    await this.editor?.saveNow();
  }

  async #onRoute(): Promise<void> {
    const { route } = this;
    if (route.at !== "inspection" || route.id !== this.editor?.id) this.#noteVerdict();
    if (route.at === "new")
      this.#open({ id: newId(), revision: 0, savedAt: "", inspection: null, draft: newPendingInput("mm") });
    if (route.at !== "inspection") return;
    if (route.id === this.editor?.id) {
      if (route.survey !== undefined) this.editor.chooseSurvey(route.survey);
      return;
    }
    // The inspection open before must neither be shown under the new address nor import the logs meant for the new one.
    this.editor = null;
    await this.#openStored(route.id, route.survey);
  }

  /** Opens the stored inspection with this id, or the one opened from a file, which is then stored. */
  async #openStored(id: string, survey?: string): Promise<void> {
    const { opened, route } = this;
    const read = await readStored(id);
    if (route !== this.route) return;
    if (read.ok) this.#open(read.value, survey);
    else if (opened?.id === id) this.#open(opened, survey).scheduleSave();
    else {
      this.editor = null;
      this.problem = inOneLine(read.problem);
      this.damaged = await readStoredRaw(id);
    }
    if (opened !== null) dispatchDone(this, "tightspot-shown");
  }

  /** Imports a log after the user has confirmed it. One pasted into the table needs no confirming if nothing is unclear. */
  async #import(log: Log): Promise<void> {
    const [{ readLogInWorker }, { needsAnswers, importLog }] = await Promise.all([
      import("../files/import/readLogInWorker.ts"),
      import("../files/import/importLog.ts"),
      import("../files/import/logDialog.ts"),
    ]);
    const { units, content } = log;
    const outcome =
      units === undefined
        ? null
        : (await readLogInWorker(content, { units }, () => {}, new AbortController().signal)).outcome;
    const { editor } = this;
    // The log or the inspection may have been closed in the meantime.
    if (editor === null || log !== this.logs[0]) return;
    if (outcome === null || !outcome.ok || needsAnswers(outcome.value, editor)) {
      this.confirming = log;
      return;
    }
    importLog(this, log.name, outcome.value, editor, "add");
    dispatchDone(this, "tightspot-log-done");
  }

  #saveDamaged(): void {
    download("damaged-inspection.json", JSON.stringify(this.damaged, null, 2), "application/json");
  }

  #openCopy(editorState: EditorState): void {
    const copy = this.#open({ id: newId(), revision: 0, savedAt: "", ...editorState });
    copy.scheduleSave();
    history.replaceState(null, "", hashOf({ at: "inspection", id: copy.id }));
  }

  #open(stored: StoredInspection, survey?: string): InspectionEditor {
    const editor = new InspectionEditor(stored, (changed) => this.#save(changed), survey);
    editor.addEventListener("change", () => {
      if (editor === this.editor) this.requestUpdate();
    });
    this.problem = null;
    this.damaged = null;
    this.editor = editor;
    return editor;
  }

  async #save(inspection: StoredInspection) {
    const { id } = inspection;
    const result = await saveStored(inspection);
    if (result.ok) {
      this.#tabs?.send({ id, revision: result.stored.revision });
      if (inspection.inspection !== null) this.#requestPersistenceOnce();
      // A new inspection gets its address once it is stored, so that reloading the page finds it.
      if (routeOf(location.hash).at === "new" && this.editor?.id === id) {
        history.replaceState(null, "", hashOf({ at: "inspection", id }));
      }
    }
    return result;
  }

  /** Called after the first save of a described slide, when the browser's question makes sense to the user. */
  #requestPersistenceOnce(): void {
    if (this.#persistenceRequested || EDITION === "file") return;
    this.#persistenceRequested = true;
    void requestPersistence();
  }

  #receive({ id, revision }: TabMessage): void {
    const { editor } = this;
    if (editor === null || editor.id !== id || editor.hasUnsaved) return;
    if (revision !== null) {
      void this.#openStored(id, editor.survey?.id);
      return;
    }
    notify(this, {
      tone: "wrong",
      text: "This inspection was deleted in another tab. It is still shown here.",
      action: { label: "Save it again", act: () => this.#openCopy(editor.state) },
    });
  }

  readonly #saveNow = (): void => void this.saveNow();

  readonly #onPageHide = (): void => {
    this.#noteVerdict();
    void this.saveNow();
  };

  #noteVerdict(): void {
    this.renderRoot.querySelector<InspectionPage>("tightspot-inspection")?.noteVerdictOnLeaving();
  }

  readonly #warnOfLoss = (event: BeforeUnloadEvent): void => {
    if (this.editor?.saveStatus.state === "not saved") event.preventDefault();
  };
}

/** The save status, which the setup page shows too. */
function saveStatusOf({ saveStatus, state }: InspectionEditor) {
  return html`<tightspot-save-status .saveStatus=${saveStatus} ?in-file=${state.inFile === true}></tightspot-save-status>`;
}

/** Whether imported readings wait for the slide to be described; further logs then wait, too. */
function hasWaiting({ inspection, state }: InspectionEditor): boolean {
  return inspection === null && state.draft.waiting !== undefined;
}
