import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, state } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import type { StoredInspection } from "../../records/editorState.ts";
import type { Log } from "../files/readFile.ts";
import type { Topic } from "../help/topics.ts";
import { controls } from "../ui/sharedStyles.ts";
import { NewerVersion } from "./offline/newerVersion.ts";
import "./startPage.ts";
import { Drops } from "../files/drops.ts";
import { Launches } from "../files/launches.ts";
import { type Notice, withNotice } from "../ui/notice.ts";
import { brand } from "./brand.ts";
import type { InspectionSession } from "./inspectionSession.ts";
import "../ui/noticeBar.ts";
import type { BackupFile, OpenRequest } from "../files/openRequest.ts";
import { Pastes } from "../files/pastes.ts";
import { hashOf, type Route, routeOf } from "../ui/route.ts";
import appCss from "./app.css?inline";

/** The page: what is open, by the address, under one heading. */
@customElement("tightspot-app")
export class App extends LitElement {
  static override styles = [controls, unsafeCSS(appCss)];

  @state() private route: Route = routeOf(location.hash);
  @state() private notices: readonly Notice[] = [];
  /** What was just opened from a file, and may not be kept yet. */
  @state() private handed: StoredInspection | null = null;
  /** Logs of readings that were just opened, to be taken in one after the other. */
  @state() private logs: readonly Log[] = [];
  /** What is asked about, to be told in place. */
  @state() private about: Topic | null = null;
  /** Backups to be restored, one after the other. */
  @state() private backups: readonly BackupFile[] = [];

  readonly #drops = new Drops(this, (files) => void this.#open({ files }));

  readonly #newerVersion = new NewerVersion(this, async () => this.#workbench?.saveNow());

  constructor() {
    super();
    new Pastes(this, (file) => void this.#open({ files: [file] }));
    const gone = "What was to be opened cannot be read: it may have been moved. Choose it with “Open files”.";
    new Launches(
      this,
      (files) => void this.#open({ files }),
      () => this.#note({ tone: "wrong", text: gone }),
    );
    this.addEventListener("tightspot-notice", ({ detail }) => this.#note(detail));
    this.addEventListener("tightspot-open", ({ detail }) => void this.#open(detail));
    this.addEventListener("tightspot-pasted", ({ detail }) => {
      this.logs = [...this.logs, detail];
    });
    this.addEventListener("tightspot-log-done", () => {
      this.logs = this.logs.slice(1);
    });
    this.addEventListener("tightspot-about", ({ detail }) => void this.#tell(detail));
    this.addEventListener("tightspot-backup-done", () => {
      this.backups = this.backups.slice(1);
    });
    this.addEventListener("tightspot-shown", () => {
      this.handed = null;
    });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener("hashchange", this.#follow);
    this.#follow();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("hashchange", this.#follow);
  }

  override render() {
    return html`
      <header>
        <a class="home" href=${hashOf({ at: "start" })}>${brand} Tightspot</a>
        ${this.#helpLink()}
      </header>
      ${this.#newerVersion.render()}
      <main>${this.#page()}</main>
      ${this.#restoring()}
      <tightspot-notice-bar
        .notices=${this.notices}
        @tightspot-notice-done=${({ detail }: CustomEvent<Notice>) => {
          this.notices = this.notices.filter((notice) => notice !== detail);
        }}
      ></tightspot-notice-bar>
      ${
        this.about === null
          ? nothing
          : html`<tightspot-help-dialog
              .topic=${this.about}
              @tightspot-help-done=${() => {
                this.about = null;
              }}
            ></tightspot-help-dialog>`
      }
      ${this.#drops.isOver ? html`<p class="dropping">Drop the files to open them</p>` : nothing}
    `;
  }

  get #workbench(): InspectionSession | null {
    return this.renderRoot.querySelector<InspectionSession>("tightspot-inspection-session");
  }

  /** From an inspection it opens beside it, so that what is being entered stays where it is. */
  #helpLink() {
    const isBeside = this.route.at === "new" || this.route.at === "inspection";
    return html`<a
      class="help"
      href=${hashOf({ at: "help" })}
      target=${isBeside ? "_blank" : nothing}
      aria-label=${isBeside ? "Help, in another tab" : nothing}
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
          .handed=${this.handed}
          .logs=${this.backups.length > 0 ? [] : this.logs}
        ></tightspot-inspection-session>`;
  }

  /** Each in a dialog of its own. */
  #restoring() {
    return repeat(
      this.backups.slice(0, 1),
      (backup) => backup,
      (backup) => html`<tightspot-restore-dialog .backup=${backup}></tightspot-restore-dialog>`,
    );
  }

  readonly #follow = (): void => this.#show(routeOf(location.hash));

  /** Shows another part of the page. What belongs to the one before does not follow there. */
  #show(route: Route): void {
    this.route = route;
    this.handed = null;
    this.notices = [];
    if (this.logs.length > 0) {
      this.#note({ tone: "wrong", text: `Not taken in: ${this.logs.map(({ name }) => name).join(", ")}.` });
    }
    this.logs = [];
    this.about = null;
    if (route.at === "start") document.title = "Tightspot";
    else if (route.at === "help") void import("../help/helpPage.ts");
    else void import("./inspectionSession.ts");
  }

  #goTo(route: Route): void {
    history.pushState(null, "", hashOf(route));
    this.#show(route);
  }

  async #tell(topic: Topic): Promise<void> {
    await import("../help/helpDialog.ts");
    this.about = topic;
  }

  async #open(opening: OpenRequest): Promise<void> {
    this.notices = [];
    const { openFiles } = await import("../files/openFiles.ts");
    const { inspection, logs, backups, notices } = await openFiles(opening);
    if (backups.length > 0) await import("../files/backup/restoreDialog.ts");
    if (inspection !== null) this.#goTo({ at: "inspection", id: inspection.id });
    else if (logs.length > 0 && (this.route.at === "start" || this.route.at === "help"))
      this.#goTo({ at: "new" });
    this.handed = inspection;
    this.logs = [...this.logs, ...logs];
    this.backups = [...this.backups, ...backups];
    for (const notice of notices) this.#note(notice);
  }

  #note(notice: Notice): void {
    this.notices = withNotice(this.notices, notice);
  }
}
