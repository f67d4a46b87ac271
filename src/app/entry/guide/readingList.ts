import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { repeat } from "lit/directives/repeat.js";
import type { EntryWarning } from "../../../analysis/outliers/entryWarnings.ts";
import type { Survey } from "../../../inspection/schema.ts";
import type { Units } from "../../../inspection/units.ts";
import { columnsOf } from "../../editing/columns.ts";
import { exclusionReason, type Row, rowReader } from "../../editing/rows.ts";
import "../rowActions.ts";
import { controls } from "../../ui/sharedStyles.ts";
import readingListCss from "./readingList.css?inline";

declare global {
  interface HTMLElementEventMap {
    "tightspot-row-correct": CustomEvent<number>;
    "tightspot-row-again": CustomEvent<number>;
    "tightspot-row-strike": CustomEvent<{ readonly key: number; readonly why: string }>;
    "tightspot-row-unstrike": CustomEvent<number>;
    "tightspot-row-delete": CustomEvent<number>;
  }
}

/** Readings shown before all are asked for. */
const FIRST = 6;

const TIME = new Intl.DateTimeFormat(undefined, { timeStyle: "short" });

/** The readings taken so far, the latest first, each with what can be done about it. */
@customElement("tightspot-reading-list")
export class ReadingList extends LitElement {
  static override styles = [controls, unsafeCSS(readingListCss)];

  @property({ attribute: false }) survey: Survey | null = null;
  @property({ attribute: false }) rows: readonly Row[] = [];
  @property() units: Units = "mm";
  @property({ attribute: false }) suspicions: ReadonlyMap<number, EntryWarning> = new Map();

  @state() private open: number | null = null;
  @state() private showsAll = false;

  override render() {
    const { survey, rows } = this;
    if (survey === null || rows.length === 0) return nothing;
    let count = 0;
    const readOf = rowReader(survey, this.units);
    const numbered = rows.map((row) => {
      const isRead = readOf(row).state === "read";
      return { row, index: isRead ? count++ : null };
    });
    const latest = numbered.toReversed();
    const shown = this.showsAll ? latest : latest.slice(0, FIRST);
    return html`<h3 id="taken">Readings taken</h3>
      <ul aria-labelledby="taken">
        ${repeat(
          shown,
          ({ row }) => row.key,
          ({ row, index }) => this.#reading(row, index, survey),
        )}
      </ul>
      ${
        shown.length === latest.length
          ? nothing
          : html`<button type="button" class="quiet" @click=${() => this.#showAll()}>
              Show all ${latest.length}
            </button>`
      }`;
  }

  #reading(row: Row, index: number | null, survey: Survey) {
    const [place, ...figures] = columnsOf(survey, this.units);
    const text = (name: string | undefined): string => row.cells[name as keyof Row["cells"]] ?? "";
    const counts = figures[0]?.counts === "divisions" ? "div." : this.units;
    const why = exclusionReason(row);
    const doubt = index === null ? undefined : this.suspicions.get(index);
    const isOpen = this.open === row.key;
    const { time } = row.marks;
    return html`<li class="${why === null ? "" : "struck"} ${doubt === undefined ? "" : "doubt"}" data-key=${row.key}>
      <button type="button" class="reading" aria-expanded=${isOpen} @click=${() => this.#toggle(row.key)}>
        <span class="count">${index === null ? "–" : index + 1}</span>
        <span class="place">${text(place?.name)} ${this.units}</span>
        <span class="figure">${figures.map(({ name }) => text(name)).join(" → ")} ${counts}</span>
        ${typeof time === "string" ? html`<time datetime=${time}>${timeOf(time)}</time>` : nothing}
      </button>
      ${index === null ? html`<p class="note wrong">Cannot be read yet: correct it.</p>` : nothing}
      ${why === null ? nothing : html`<p class="note">Struck: ${why}</p>`}
      ${doubt === undefined ? nothing : html`<p class="note">${doubt.message}</p>`}
      ${isOpen ? this.#acts(row, why !== null) : nothing}
    </li>`;
  }

  #acts(row: Row, isStruck: boolean) {
    const { key } = row;
    return html`<div class="acts">
        <button type="button" @click=${() => this.#tell("tightspot-row-correct", key)}>Correct it</button>
        ${
          isStruck
            ? nothing
            : html`<button type="button" @click=${() => this.#tell("tightspot-row-again", key)}>Take it again</button>`
        }
      </div>
      <tightspot-row-actions
        .struck=${isStruck}
        @tightspot-strike=${({ detail }: CustomEvent<string>) =>
          this.#tell("tightspot-row-strike", { key, why: detail })}
        @tightspot-unstrike=${() => this.#tell("tightspot-row-unstrike", key)}
        @tightspot-delete=${() => this.#tell("tightspot-row-delete", key)}
        @keydown=${({ key: pressed }: KeyboardEvent) => pressed === "Escape" && this.#toggle(key)}
      ></tightspot-row-actions>`;
  }

  #toggle(key: number): void {
    this.open = this.open === key ? null : key;
  }

  #showAll(): void {
    this.showsAll = true;
  }

  #tell(name: string, detail: unknown): void {
    this.open = null;
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }
}

function timeOf(time: string): string {
  const at = new Date(time);
  return Number.isNaN(at.getTime()) ? time : TIME.format(at);
}
