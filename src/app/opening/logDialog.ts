import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { inOneLine } from "../../inspection/problem.ts";
import type { Units } from "../../inspection/units.ts";
import type { CsvReadings } from "../../intake/readCsv.ts";
import type { Refusal } from "../../intake/refusal.ts";
import type { Desk, HowToTake } from "../editing/desk.ts";
import { METHODS } from "../editing/fieldList.ts";
import { fits } from "../editing/taking.ts";
import { settle } from "../shell/opening.ts";
import { controls } from "../style/controls.ts";
import type { Log } from "./readFile.ts";
import { readLog } from "./readLog.ts";
import { asks, takeLog } from "./takeLog.ts";

/**
 * Takes a log of readings in. It asks only what it has to: the units where the log does not tell, what to do with
 * readings that are there already, and whether to go on without the rows that cannot be read.
 */
@customElement("tightspot-log-dialog")
export class LogDialog extends LitElement {
  static override styles = [
    controls,
    css`
      dialog {
        width: min(44rem, calc(100vw - 1.5rem));
        max-height: calc(100vh - 1.5rem);
        padding: var(--gap-wide);
        border: 1.5px solid var(--ink);
        border-radius: calc(var(--round) * 1.5);
        background: var(--sheet);
        color: inherit;
      }

      dialog::backdrop {
        background: rgb(12 38 71 / 45%);
      }

      .content {
        display: grid;
        gap: var(--gap);
      }

      .choices {
        display: flex;
        flex-wrap: wrap;
        gap: 0.5rem;
      }

      .quiet {
        margin-left: -1rem;
      }

      .refused {
        display: grid;
        gap: 0.625rem;
        max-height: 40vh;
        overflow-y: auto;
      }

      .refused li {
        padding-left: 0.75rem;
        border-left: 3px solid var(--limit);
      }

      code {
        font-size: 0.9375rem;
        overflow-wrap: anywhere;
      }
    `,
  ];

  @property({ attribute: false }) log: Log | null = null;
  @property({ attribute: false }) desk: Desk | null = null;

  @state() private said: Units | null = null;

  override firstUpdated(): void {
    this.renderRoot.querySelector("dialog")?.showModal();
  }

  override render() {
    const { log, desk } = this;
    if (log === null || desk === null) return nothing;
    const read = readLog(log, this.said, desk.inspection?.slide.units ?? null);
    return html`<dialog aria-labelledby="title" @close=${this.#done}>
      <div class="content">
        <h2 id="title">${log.name}</h2>
        ${read.ok ? this.#questions(read.value, desk) : html`<p class="wrong">${inOneLine(read.problem)}</p>`}
        <form method="dialog"><button class="quiet">Cancel</button></form>
      </div>
    </dialog>`;
  }

  #questions(csv: CsvReadings, desk: Desk) {
    if (csv.units === undefined) {
      return html`<p>The log does not say what its lengths are in.</p>
        <div class="choices">
          ${this.#button("Millimetres", () => this.#say("mm"))} ${this.#button("Inches", () => this.#say("in"))}
        </div>`;
    }
    return html`<p>${aboutOf(csv)}</p>
      ${csv.refused.length === 0 ? nothing : this.#refused(csv.refused)}
      <div class="choices">${this.#ways(csv, desk)}</div>`;
  }

  #refused(refused: readonly Refusal[]) {
    const count = refused.length === 1 ? "One row or cell" : `${refused.length} rows or cells`;
    return html`<p class="wrong">${count} cannot be read and would be left out:</p>
      <ul class="refused">
        ${refused.map(
          ({ row, text, reason, cure }) => html`<li>
            <strong>Line ${row}</strong> <code>${text}</code>
            <p>${reason}. ${cure}</p>
          </li>`,
        )}
      </ul>`;
  }

  #ways(csv: CsvReadings, desk: Desk) {
    const { survey } = desk;
    if (desk.inspection === null || survey === null || desk.rows.length === 0) {
      return this.#button("Take the readings", () => this.#take(csv, desk, "add"), "chief");
    }
    return html`
      ${this.#button("As a new survey", () => this.#take(csv, desk, "as survey"), "chief")}
      ${fits(survey, csv) ? this.#button("Add to this survey", () => this.#take(csv, desk, "add")) : nothing}
      ${this.#button("Replace this survey’s readings", () => this.#take(csv, desk, "replace"))}
    `;
  }

  #button(label: string, act: () => void, rank = "") {
    return html`<button type="button" class=${rank} @click=${act}>${label}</button>`;
  }

  /** The answer may leave nothing more to ask. */
  #say(units: Units): void {
    this.said = units;
    const { log, desk } = this;
    if (log === null || desk === null) return;
    const read = readLog(log, units, desk.inspection?.slide.units ?? null);
    if (read.ok && !asks(read.value, desk)) this.#take(read.value, desk, "add");
  }

  #take(csv: CsvReadings, desk: Desk, how: HowToTake): void {
    takeLog(this, this.log?.name ?? "", csv, desk, how);
    this.renderRoot.querySelector("dialog")?.close();
  }

  #done(): void {
    settle(this, "tightspot-log-done");
  }
}

function aboutOf({ readings, method }: CsvReadings): string {
  const way = METHODS.find(([value]) => value === method)?.[1] ?? method;
  const counted = readings.length === 1 ? "One reading" : `${readings.length} readings`;
  return `${counted}. ${way}.`;
}
