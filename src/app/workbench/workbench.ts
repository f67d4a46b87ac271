import { html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { inOneLine } from "../../inspection/problem.ts";
import { EDITION } from "../../records/edition.ts";
import { rawKept, readKept, saveKept } from "../../records/kept.ts";
import type { KeptInspection, Work } from "../../records/record.ts";
import { askToStay } from "../../records/staying.ts";
import { type OtherTabs, otherTabs, type Word } from "../../records/tabs.ts";
import { Desk } from "../editing/desk.ts";
import { newId } from "../editing/newId.ts";
import { newDraft } from "../editing/setup.ts";
import type { Log } from "../opening/readFile.ts";
import "../setup/setupPage.ts";
import { download } from "../shell/download.ts";
import { notify } from "../shell/notice.ts";
import { settle } from "../shell/opening.ts";
import { hashOf, type Route, routeOf } from "../shell/route.ts";
import { controls } from "../style/controls.ts";
import type { InspectionPage } from "./inspectionPage.ts";
import "./inspectionPage.ts";
import "./keepingStatus.ts";

/** Opens the inspection that the address names, keeps it as it changes, and shows it or asks what it is about. */
@customElement("tightspot-workbench")
export class Workbench extends LitElement {
  static override styles = controls;

  @property({ attribute: false }) route: Route = { at: "new" };
  /** What was just opened from a file, and is not kept yet. */
  @property({ attribute: false }) handed: KeptInspection | null = null;
  /** Logs of readings to take in, one after the other. */
  @property({ attribute: false }) logs: readonly Log[] = [];

  @state() private desk: Desk | null = null;
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
      if (this.desk !== null) this.#openCopy(this.desk.work);
    });
    this.addEventListener("tightspot-show-other", () => {
      if (this.desk !== null) void this.#openKept(this.desk.id);
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
    void this.desk?.keepNow().then(() => tabs?.close());
    window.removeEventListener("pagehide", this.#leave);
    document.removeEventListener("visibilitychange", this.#keepNow);
    window.removeEventListener("beforeunload", this.#warnOfLoss);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("route")) void this.#follow();
    const [log] = this.logs;
    if (log === undefined || log === this.#begun || this.desk === null || hasWaiting(this.desk)) return;
    this.#begun = log;
    void this.#takeIn(log);
  }

  override render() {
    const { desk, asking } = this;
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
    if (desk === null) return nothing;
    return html`
      ${
        desk.inspection === null
          ? html`${keepingStatus(desk)}
              <tightspot-setup-page
              .draft=${desk.work.draft}
              .next=${hasWaiting(desk) ? this.logs.map(({ name }) => name) : []}
              @tightspot-draft=${({ detail }: HTMLElementEventMap["tightspot-draft"]) => desk.draftAs(detail)}
              @tightspot-described=${({ detail }: HTMLElementEventMap["tightspot-described"]) =>
                desk.become(detail)}
            ></tightspot-setup-page>`
          : html`<tightspot-inspection
              .desk=${desk}
              .work=${desk.work}
              .survey=${desk.survey}
              .rows=${desk.rows}
              .keeping=${desk.keeping}
            ></tightspot-inspection>`
      }
      ${
        asking === null || asking !== this.logs[0]
          ? nothing
          : html`<tightspot-log-dialog .log=${asking} .desk=${desk}></tightspot-log-dialog>`
      }
    `;
  }

  protected override updated(): void {
    const name = this.desk?.inspection?.slide.name ?? "New inspection";
    document.title = `${name} · Tightspot`;
  }

  /** Keeps what was not kept yet. */
  async keepNow(): Promise<void> {
    await this.desk?.keepNow();
  }

  async #follow(): Promise<void> {
    const { route } = this;
    if (route.at !== "inspection" || route.id !== this.desk?.id) this.#noteVerdict();
    if (route.at === "new")
      this.#open({ id: newId(), revision: 0, savedAt: "", inspection: null, draft: newDraft("mm") });
    if (route.at !== "inspection") return;
    if (route.id === this.desk?.id) {
      if (route.survey !== undefined) this.desk.chooseSurvey(route.survey);
      return;
    }
    // What was open must neither be shown under the new address nor take in what comes with it.
    this.desk = null;
    await this.#openKept(route.id, route.survey);
  }

  /** Opens what is kept; failing that, what was handed over from a file, which is then kept. */
  async #openKept(id: string, survey?: string): Promise<void> {
    const { handed, route } = this;
    const read = await readKept(id);
    if (route !== this.route) return;
    if (read.ok) this.#open(read.value, survey);
    else if (handed?.id === id) this.#open(handed, survey).keep();
    else {
      this.desk = null;
      this.problem = inOneLine(read.problem);
      this.damaged = await rawKept(id);
    }
    if (handed !== null) settle(this, "tightspot-shown");
  }

  /**
   * Shows a log before it is taken in. One that was put into the table needs no showing, unless something has to be
   * asked about it.
   */
  async #takeIn(log: Log): Promise<void> {
    const [{ readLogAside }, { asks, takeLog }] = await Promise.all([
      import("../opening/logReader.ts"),
      import("../opening/takeLog.ts"),
      import("../opening/logDialog.ts"),
    ]);
    const { units, content } = log;
    const outcome =
      units === undefined
        ? null
        : (await readLogAside(content, { units }, () => {}, new AbortController().signal)).outcome;
    const { desk } = this;
    // It may have been given up, with what was open, in the meantime.
    if (desk === null || log !== this.logs[0]) return;
    if (outcome === null || !outcome.ok || asks(outcome.value, desk)) {
      this.asking = log;
      return;
    }
    takeLog(this, log.name, outcome.value, desk, "add");
    settle(this, "tightspot-log-done");
  }

  #saveDamaged(): void {
    download("damaged-inspection.json", JSON.stringify(this.damaged, null, 2), "application/json");
  }

  #openCopy(work: Work): void {
    const copy = this.#open({ id: newId(), revision: 0, savedAt: "", ...work });
    copy.keep();
    history.replaceState(null, "", hashOf({ at: "inspection", id: copy.id }));
  }

  #open(kept: KeptInspection, survey?: string): Desk {
    const desk = new Desk(kept, (changed) => this.#save(changed), survey);
    desk.addEventListener("change", () => {
      if (desk === this.desk) this.requestUpdate();
    });
    this.problem = null;
    this.damaged = null;
    this.desk = desk;
    return desk;
  }

  async #save(kept: KeptInspection) {
    const saving = await saveKept(kept);
    if (saving.ok) {
      this.#tabs?.tell({ id: kept.id, revision: saving.kept.revision });
      if (kept.inspection !== null) this.#askToStayOnce();
      // A new inspection gets its address once it is kept, so that it is there when the page is loaded again.
      if (routeOf(location.hash).at === "new" && this.desk?.id === kept.id) {
        history.replaceState(null, "", hashOf({ at: "inspection", id: kept.id }));
      }
    }
    return saving;
  }

  /** Asked once there is something worth keeping: then a browser that asks the reader asks at a time that makes sense. */
  #askToStayOnce(): void {
    if (this.#hasAsked || EDITION === "file") return;
    this.#hasAsked = true;
    void askToStay();
  }

  #hear({ id, revision }: Word): void {
    const { desk } = this;
    if (desk === null || desk.id !== id || desk.hasUnsaved) return;
    if (revision !== null) {
      void this.#openKept(id, desk.survey?.id);
      return;
    }
    notify(this, {
      tone: "wrong",
      text: "This inspection was deleted in another tab. It is still shown here.",
      action: { label: "Keep it", act: () => this.#openCopy(desk.work) },
    });
  }

  readonly #keepNow = (): void => void this.keepNow();

  readonly #leave = (): void => {
    this.#noteVerdict();
    void this.keepNow();
  };

  #noteVerdict(): void {
    this.renderRoot.querySelector<InspectionPage>("tightspot-inspection")?.noteVerdictOnLeaving();
  }

  readonly #warnOfLoss = (event: BeforeUnloadEvent): void => {
    if (this.desk?.keeping.state === "not kept") event.preventDefault();
  };
}

/** What is not kept is told while the slide is described, too. */
function keepingStatus({ keeping, work }: Desk) {
  return html`<tightspot-keeping .keeping=${keeping} ?in-file=${work.inFile === true}></tightspot-keeping>`;
}

/** Whether readings came in that wait for the slide to be described; further logs then wait for that, too. */
function hasWaiting({ inspection, work }: Desk): boolean {
  return inspection === null && work.draft.waiting !== undefined;
}
