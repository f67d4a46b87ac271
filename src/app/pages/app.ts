import { html, LitElement, nothing, svg, unsafeCSS } from "lit";
import { customElement, state } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import type { StoredInspection } from "../../records/editorState.ts";
import type { Log } from "../files/readFile.ts";
import type { Topic } from "../help/topics.ts";
import { controls } from "../ui/sharedStyles.ts";
import { NewerVersion } from "./offline/newerVersion.ts";
import "./startPage.ts";
import { type Notice, withNotice } from "../ui/notice.ts";
import type { InspectionSession } from "./inspectionSession.ts";
import "../ui/noticeBar.ts";
import { IncomingFiles } from "../files/incomingFiles.ts";
import type { BackupFile, OpenRequest } from "../files/openRequest.ts";
import { hashOf, type Route, routeOf } from "../ui/route.ts";
import appCss from "./app.css?inline";

const UNREADABLE = "The file cannot be read: it may have been moved. Choose it with “Open files”.";

/** The whole page: shows the part that the address names under one heading. */
@customElement("tightspot-app")
export class App extends LitElement {
  static override styles = [controls, unsafeCSS(appCss)];

  @state() private route: Route = routeOf(location.hash);
  @state() private notices: readonly Notice[] = [];
  /** An inspection just opened from a file, which may not be stored yet. */
  @state() private opened: StoredInspection | null = null;
  /** Logs of readings to import, one after the other. */
  @state() private logs: readonly Log[] = [];
  /** The topic that the help dialog shows. */
  @state() private topic: Topic | null = null;
  /** Backups to restore, one after the other. */
  @state() private backups: readonly BackupFile[] = [];

  readonly #incoming = new IncomingFiles(
    this,
    (files) => void this.#open({ files }),
    () => this.#addNotice({ tone: "wrong", text: UNREADABLE }),
  );

  readonly #newerVersion = new NewerVersion(this, async () => this.#session?.saveNow());

  constructor() {
    super();
    this.addEventListener("tightspot-notice", ({ detail }) => this.#addNotice(detail));
    this.addEventListener("tightspot-open", ({ detail }) => void this.#open(detail));
    this.addEventListener("tightspot-pasted", ({ detail }) => {
      this.logs = [...this.logs, detail];
    });
    this.addEventListener("tightspot-log-done", () => {
      this.logs = this.logs.slice(1);
    });
    this.addEventListener("tightspot-about", ({ detail }) => void this.#showTopic(detail));
    this.addEventListener("tightspot-backup-done", () => {
      this.backups = this.backups.slice(1);
    });
    this.addEventListener("tightspot-shown", () => {
      this.opened = null;
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener("hashchange", this.#onHashChange);
    this.#onHashChange();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("hashchange", this.#onHashChange);
  }

  override render() {
    return html`
      <header>
        <a class="home" href=${hashOf({ at: "start" })}>${brand} Tightspot</a>
        ${this.#helpLink()}
      </header>
      ${this.#newerVersion.render()}
      <main>${this.#page()}</main>
      ${this.#restoreDialog()}
      <tightspot-notice-bar
        .notices=${this.notices}
        @tightspot-notice-done=${({ detail }: CustomEvent<Notice>) => {
          this.notices = this.notices.filter((notice) => notice !== detail);
        }}
      ></tightspot-notice-bar>
      ${
        this.topic === null
          ? nothing
          : html`<tightspot-help-dialog
              .topic=${this.topic}
              @tightspot-help-done=${() => {
                this.topic = null;
              }}
            ></tightspot-help-dialog>`
      }
      ${this.#incoming.isDragging ? html`<p class="dropping">Drop the files to open them</p>` : nothing}
    `;
  }

  get #session(): InspectionSession | null {
    return this.renderRoot.querySelector<InspectionSession>("tightspot-inspection-session");
  }

  /** Opens in another tab from an inspection, so that the entry stays as it is. */
  #helpLink() {
    const inNewTab = this.route.at === "new" || this.route.at === "inspection";
    return html`<a
      class="help"
      href=${hashOf({ at: "help" })}
      target=${inNewTab ? "_blank" : nothing}
      aria-label=${inNewTab ? "Help, in another tab" : nothing}
      >Help</a
    >`;
  }

  #page() {
    if (this.route.at === "help")
      return html`<tightspot-help .topic=${this.route.topic ?? ""}></tightspot-help>`;
    return this.route.at === "start"
      ? html`<tightspot-start-page></tightspot-start-page>`
      : html`<tightspot-inspection-session
          .route=${this.route}
          .opened=${this.opened}
          .logs=${this.backups.length > 0 ? [] : this.logs}
        ></tightspot-inspection-session>`;
  }

  /** A dialog of its own for each backup. */
  #restoreDialog() {
    return repeat(
      this.backups.slice(0, 1),
      (backup) => backup,
      (backup) => html`<tightspot-restore-dialog .backup=${backup}></tightspot-restore-dialog>`,
    );
  }

  readonly #onHashChange = (): void => this.#show(routeOf(location.hash));

  /** Shows another part of the page, without the notices, logs and help of the part before. */
  #show(route: Route): void {
    this.route = route;
    this.opened = null;
    this.notices = [];
    if (this.logs.length > 0) {
      this.#addNotice({
        tone: "wrong",
        text: `Not imported: ${this.logs.map(({ name }) => name).join(", ")}.`,
      });
    }
    this.logs = [];
    this.topic = null;
    if (route.at === "start") document.title = "Tightspot";
    else if (route.at === "help") void import("../help/helpPage.ts");
    else void import("./inspectionSession.ts");
  }

  #goTo(route: Route): void {
    history.pushState(null, "", hashOf(route));
    this.#show(route);
  }

  async #showTopic(topic: Topic): Promise<void> {
    await import("../help/helpDialog.ts");
    this.topic = topic;
  }

  async #open(request: OpenRequest): Promise<void> {
    this.notices = [];
    const { openFiles } = await import("../files/openFiles.ts");
    const { inspection, logs, backups, notices } = await openFiles(request);
    if (backups.length > 0) await import("../files/backup/restoreDialog.ts");
    if (inspection !== null) this.#goTo({ at: "inspection", id: inspection.id });
    else if (logs.length > 0 && (this.route.at === "start" || this.route.at === "help"))
      this.#goTo({ at: "new" });
    this.opened = inspection;
    this.logs = [...this.logs, ...logs];
    this.backups = [...this.backups, ...backups];
    for (const notice of notices) this.#addNotice(notice);
  }

  #addNotice(notice: Notice): void {
    this.notices = withNotice(this.notices, notice);
  }
}

/** The page's own mark: a brass nut seated on a steel thread. */
export const brand = svg`<svg viewBox="0 0 32 32" width="32" height="32" aria-hidden="true">
  <path d="M1 27v-7l3-6h4l3 6h2l3-6h4l3 6h2l3-6h3v13z" fill="var(--steel)" />
  <path d="M7 4h18v5h-4l-3 6h-4l-3-6H7z" fill="var(--brass-body)" stroke="var(--brass)" />
</svg>`;
