import { css, html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import { inOneLine } from "../../inspection/problem.ts";
import type { KeptInspection } from "../../records/record.ts";
import type { Log } from "../opening/readFile.ts";
import { controls } from "../style/controls.ts";
import "../start/startPage.ts";
import { brand } from "./brand.ts";
import { Drops } from "./drops.ts";
import type { Notice } from "./notice.ts";
import "./noticeBar.ts";
import type { Opening } from "./opening.ts";
import { hashOf, type Route, routeOf } from "./route.ts";

/** The page: what is open, by the address, under one heading. */
@customElement("tightspot-app")
export class App extends LitElement {
  static override styles = [
    controls,
    css`
      :host {
        min-height: 100vh;
      }

      header {
        display: flex;
        align-items: center;
        justify-content: space-between;
        gap: var(--gap);
        max-width: 90rem;
        margin: 0 auto;
        padding: 0.375rem var(--edge);
      }

      header a {
        display: inline-flex;
        align-items: center;
        gap: 0.625rem;
        min-height: var(--target);
        color: var(--ink-strong);
        font-size: 1.25rem;
        font-weight: 700;
        letter-spacing: -0.02em;
        text-decoration: none;
      }

      main {
        max-width: 90rem;
        margin: 0 auto;
        padding: 0 var(--edge) 6rem;
      }

      .dropping {
        position: fixed;
        inset: 0.75rem;
        z-index: 20;
        display: grid;
        place-items: center;
        border: 3px dashed var(--brass);
        border-radius: 12px;
        background: color-mix(in srgb, var(--paper) 88%, transparent);
        color: var(--ink-strong);
        font-size: var(--title);
        font-weight: 700;
        text-align: center;
        pointer-events: none;
      }

      @media print {
        header {
          padding: 0;
        }

        main {
          padding: 0;
        }
      }
    `,
  ];

  @state() private route: Route = routeOf(location.hash);
  @state() private notice: Notice | null = null;
  /** What was just opened from a file, and may not be kept yet. */
  @state() private handed: KeptInspection | null = null;
  /** A log of readings that was just opened. */
  @state() private log: Log | null = null;

  readonly #drops = new Drops(this, (files) => this.#takeFiles(files));

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener("hashchange", this.#follow);
    this.addEventListener("tightspot-notice", ({ detail }) => {
      this.notice = detail;
    });
    this.addEventListener("tightspot-open", ({ detail }) => this.#open(detail));
    this.#follow();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener("hashchange", this.#follow);
  }

  override render() {
    return html`
      <header><a href=${hashOf({ at: "start" })}>${brand} Tightspot</a></header>
      <main>${this.#page()}</main>
      <tightspot-notice-bar .notice=${this.notice}></tightspot-notice-bar>
      ${this.#drops.isOver ? html`<p class="dropping">Drop the file to open it</p>` : nothing}
    `;
  }

  #page() {
    return this.route.at === "start"
      ? html`<tightspot-start-page></tightspot-start-page>`
      : html`<tightspot-workbench
          .route=${this.route}
          .handed=${this.handed}
          .log=${this.log}
        ></tightspot-workbench>`;
  }

  readonly #follow = (): void => {
    this.route = routeOf(location.hash);
    if (this.route.at === "start") document.title = "Tightspot";
    else void import("../workbench/workbench.ts");
  };

  #takeFiles([file, ...others]: readonly File[]): void {
    if (file === undefined) return;
    void this.#open({ file });
    if (others.length > 0) {
      this.notice = { tone: "done", text: `Opening ${file.name} only: one file at a time.` };
    }
  }

  async #open({ file, id }: Opening): Promise<void> {
    const { readFile } = await import("../opening/readFile.ts");
    const read = await readFile(file, id);
    if (!read.ok) {
      this.notice = { tone: "wrong", text: `${file.name}: ${inOneLine(read.problem)}` };
      return;
    }
    if (read.value.kind === "log") this.log = read.value;
    if (read.value.kind === "inspection") this.#handOver(read.value.kept);
    else if (this.route.at === "start") location.hash = hashOf({ at: "new" });
  }

  #handOver(kept: KeptInspection): void {
    this.handed = kept;
    location.hash = hashOf({ at: "inspection", id: kept.id });
  }
}
