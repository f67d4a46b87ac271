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

/** Opens the inspection that the address names, keeps it as it changes, and shows it or asks what it is about. */
@customElement("tightspot-inspection-session")
export class InspectionSession extends LitElement {
  static override styles = controls;

  @property({ attribute: false }) route: Route = { at: "new" };
  /** What was just opened from a file, and is not kept yet. */
  @property({ attribute: false }) handed: StoredInspection | null = null;
  /** Logs of readings to take in, one after the other. */
  @property({ attribute: false }) logs: readonly Log[] = [];

  @state() private editor: InspectionEditor | null = null;
  @state() private problem: string | null = null;
  /** What is kept of an inspection that cannot be opened, just as it is there. */
  @state() private damaged: unknown = null;
  /** The log that something has to be asked about. */
  @state() private asking: Log | null = null;

  /** The log that was begun with last. */
  #begun: Log | null = null;

  #tabs: OtherTabs | undefined;
  #hasAsked = false;

  constructor() {
    super();
    this.addEventListener("tightspot-retry", this.#keepNow);
    this.addEventListener("tightspot-copy", () => {
      if (this.editor !== null) this.#openCopy(this.editor.state);
    });
    this.addEventListener("tightspot-show-other", () => {
      if (this.editor !== null) void this.#openKept(this.editor.id);
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#tabs = otherTabs((word) => this.#hear(word));
    window.addEventListener("pagehide", this.#leave);
    document.addEventListener("visibilitychange", this.#keepNow);
    window.addEventListener("beforeunload", this.#warnOfLoss);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    const tabs = this.#tabs;
    this.#noteVerdict();
    // What is saved last is told to the other tabs, too.
    void this.editor?.saveNow().then(() => tabs?.close());
    window.removeEventListener("pagehide", this.#leave);
    document.removeEventListener("visibilitychange", this.#keepNow);
    window.removeEventListener("beforeunload", this.#warnOfLoss);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("route")) void this.#follow();
    const [log] = this.logs;
    if (log === undefined || log === this.#begun || this.editor === null || hasWaiting(this.editor)) return;
    this.#begun = log;
    void this.#takeIn(log);
  }

  override render() {
    const { editor, asking } = this;
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
          ? html`${keepingStatus(editor)}
              <tightspot-setup-page
              .draft=${editor.state.draft}
              .next=${hasWaiting(editor) ? this.logs.map(({ name }) => name) : []}
              @tightspot-draft=${({ detail }: HTMLElementEventMap["tightspot-draft"]) => editor.setPendingInput(detail)}
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
        asking === null || asking !== this.logs[0]
          ? nothing
          : html`<tightspot-log-dialog .log=${asking} .editor=${editor}></tightspot-log-dialog>`
      }
    `;
  }

  protected override updated(): void {
    const name = this.editor?.inspection?.slide.name ?? "New inspection";
    document.title = `${name} · Tightspot`;
  }

  /** Keeps what was not kept yet. */
  async saveNow(): Promise<void> {
    await this.editor?.saveNow();
  }

  async #follow(): Promise<void> {
    const { route } = this;
    if (route.at !== "inspection" || route.id !== this.editor?.id) this.#noteVerdict();
    if (route.at === "new")
      this.#open({ id: newId(), revision: 0, savedAt: "", inspection: null, draft: newPendingInput("mm") });
    if (route.at !== "inspection") return;
    if (route.id === this.editor?.id) {
      if (route.survey !== undefined) this.editor.chooseSurvey(route.survey);
      return;
    }
    // What was open must neither be shown under the new address nor take in what comes with it.
    this.editor = null;
    await this.#openKept(route.id, route.survey);
  }

  /** Opens what is kept; failing that, what was handed over from a file, which is then kept. */
  async #openKept(id: string, survey?: string): Promise<void> {
    const { handed, route } = this;
    const read = await readStored(id);
    if (route !== this.route) return;
    if (read.ok) this.#open(read.value, survey);
    else if (handed?.id === id) this.#open(handed, survey).scheduleSave();
    else {
      this.editor = null;
      this.problem = inOneLine(read.problem);
      this.damaged = await readStoredRaw(id);
    }
    if (handed !== null) dispatchDone(this, "tightspot-shown");
  }

  /**
   * Shows a log before it is taken in. One that was put into the table needs no showing, unless something has to be
   * asked about it.
   */
  async #takeIn(log: Log): Promise<void> {
    const [{ readLogInWorker }, { needsAnswers, importLog }] = await Promise.all([
      import("../files/import/readLogInWorker.ts"),
      import("../files/import/takeLog.ts"),
      import("../files/import/logDialog.ts"),
    ]);
    const { units, content } = log;
    const outcome =
      units === undefined
        ? null
        : (await readLogInWorker(content, { units }, () => {}, new AbortController().signal)).outcome;
    const { editor } = this;
    // It may have been given up, with what was open, in the meantime.
    if (editor === null || log !== this.logs[0]) return;
    if (outcome === null || !outcome.ok || needsAnswers(outcome.value, editor)) {
      this.asking = log;
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

  #open(kept: StoredInspection, survey?: string): InspectionEditor {
    const editor = new InspectionEditor(kept, (changed) => this.#save(changed), survey);
    editor.addEventListener("change", () => {
      if (editor === this.editor) this.requestUpdate();
    });
    this.problem = null;
    this.damaged = null;
    this.editor = editor;
    return editor;
  }

  async #save(kept: StoredInspection) {
    const saving = await saveStored(kept);
    if (saving.ok) {
      this.#tabs?.tell({ id: kept.id, revision: saving.kept.revision });
      if (kept.inspection !== null) this.#askToStayOnce();
      // A new inspection gets its address once it is kept, so that it is there when the page is loaded again.
      if (routeOf(location.hash).at === "new" && this.editor?.id === kept.id) {
        history.replaceState(null, "", hashOf({ at: "inspection", id: kept.id }));
      }
    }
    return saving;
  }

  /** Asked once there is something worth keeping: then a browser that asks the reader asks at a time that makes sense. */
  #askToStayOnce(): void {
    if (this.#hasAsked || EDITION === "file") return;
    this.#hasAsked = true;
    void requestPersistence();
  }

  #hear({ id, revision }: TabMessage): void {
    const { editor } = this;
    if (editor === null || editor.id !== id || editor.hasUnsaved) return;
    if (revision !== null) {
      void this.#openKept(id, editor.survey?.id);
      return;
    }
    notify(this, {
      tone: "wrong",
      text: "This inspection was deleted in another tab. It is still shown here.",
      action: { label: "Keep it", act: () => this.#openCopy(editor.state) },
    });
  }

  readonly #keepNow = (): void => void this.saveNow();

  readonly #leave = (): void => {
    this.#noteVerdict();
    void this.saveNow();
  };

  #noteVerdict(): void {
    this.renderRoot.querySelector<InspectionPage>("tightspot-inspection")?.noteVerdictOnLeaving();
  }

  readonly #warnOfLoss = (event: BeforeUnloadEvent): void => {
    if (this.editor?.saveStatus.state === "not kept") event.preventDefault();
  };
}

/** What is not kept is told while the slide is described, too. */
function keepingStatus({ saveStatus, state }: InspectionEditor) {
  return html`<tightspot-save-status .saveStatus=${saveStatus} ?in-file=${state.inFile === true}></tightspot-save-status>`;
}

/** Whether readings came in that wait for the slide to be described; further logs then wait for that, too. */
function hasWaiting({ inspection, state }: InspectionEditor): boolean {
  return inspection === null && state.draft.waiting !== undefined;
}
