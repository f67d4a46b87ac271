import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import { type ColumnSaid, ROLES } from "../../../intake/columnSaid.ts";
import type { ColumnTaken } from "../../../intake/columnsTaken.ts";
import type { Preview } from "../../../intake/preview.ts";
import type { Role } from "../../../intake/vocabulary.ts";
import { controls } from "../../ui/sharedStyles.ts";
import logColumnsCss from "./logColumns.css?inline";

declare global {
  interface HTMLElementEventMap {
    /** What the user wants all columns of a log to be read as. */
    "tightspot-columns-said": CustomEvent<readonly ColumnSaid[]>;
  }
}

/** A column of a log as shown. */
interface Shown {
  readonly heading: string;
  readonly cells: readonly string[];
  readonly as: Role | "nothing";
  readonly unit: string;
  readonly why: string;
}

const ROLE_WORDS: Readonly<Record<Role | "nothing", string>> = {
  position: "Position",
  backlash: "Lost motion",
  advancing: "Reading, advancing",
  retracting: "Reading, retracting",
  target: "Target position",
  direction: "Direction",
  reading: "Position read",
  run: "Number of the run",
  note: "Note",
  time: "Time",
  date: "Date",
  excluded: "Why it is struck",
  "other keys": "Other data",
  nothing: "Not used",
};

const WITH_UNIT: readonly (Role | "nothing")[] = [
  "position",
  "backlash",
  "advancing",
  "retracting",
  "target",
  "reading",
];

const UNITS = ["mm", "µm", "mm/100", "cm", "m", "in", "thou", "tenths", "ft", "divisions"];

/** Shows what each column of a log is read as, in which unit and why, and lets the user change it. */
@customElement("tightspot-log-columns")
export class LogColumns extends LitElement {
  static override styles = [controls, unsafeCSS(logColumnsCss)];

  @property({ attribute: false }) preview: Preview = { columns: [] };
  /** What the columns are read as; empty if the log could not be read. */
  @property({ attribute: false }) taken: readonly ColumnTaken[] = [];
  /** What they were read as before any change by the user. */
  @property({ attribute: false }) found: readonly ColumnTaken[] = [];
  /** The changes by the user. */
  @property({ attribute: false }) said: readonly ColumnSaid[] = [];

  override render() {
    return html`<ul>
      ${this.#shown.map((column, index) => this.#column(column, index))}
    </ul>`;
  }

  get #shown(): readonly Shown[] {
    return this.preview.columns.map(({ heading, as, cells }, index) => {
      const said = this.said.find(({ column }) => column === index + 1);
      const taken = this.taken[index];
      return {
        heading,
        cells,
        as: said?.as ?? taken?.as ?? as,
        unit: taken?.unit ?? said?.unit ?? "",
        why: this.#whyTaken(index),
      };
    });
  }

  /** Why a column is read as it is; for an unchanged one, the reason from the first reading. */
  #whyTaken(index: number): string {
    const taken = this.taken[index];
    const found = this.found[index];
    const isAsFound = found !== undefined && found.as === taken?.as && found.unit === taken.unit;
    return (isAsFound ? found : taken)?.why ?? "";
  }

  #column({ heading, cells, as, unit, why }: Shown, index: number) {
    const name = heading === "" ? `Column ${index + 1}` : heading;
    const sample = cells.filter((cell) => cell !== "").join(" · ");
    return html`<li class=${as === "nothing" ? "unused" : ""}>
      <strong>${name}</strong>
      <span class="cells figures">${sample === "" ? "empty" : sample}</span>
      <div class="choices">
        <select aria-label=${`${name}: what it holds`} @change=${(event: Event) => this.#change(index, event, "as")}>
          ${[...ROLES, ...(as === "other keys" ? [as] : [])].map(
            (role) => html`<option value=${role} ?selected=${role === as}>${ROLE_WORDS[role]}</option>`,
          )}
        </select>
        ${
          WITH_UNIT.includes(as)
            ? html`<select
                aria-label=${`${name}: its unit`}
                @change=${(event: Event) => this.#change(index, event, "unit")}
              >
                ${unit === "" ? html`<option value="" selected>unit?</option>` : nothing}
                ${UNITS.map((each) => html`<option ?selected=${each === unit}>${each}</option>`)}
              </select>`
            : nothing
        }
      </div>
      <span class="why">${why}</span>
    </li>`;
  }

  /** Requests all columns to be read as shown, with one change. */
  #change(index: number, { target }: Event, what: "as" | "unit"): void {
    if (!(target instanceof HTMLSelectElement)) return;
    const said = this.#shown.map(({ as }, column): ColumnSaid => {
      const unit = this.said.find((each) => each.column === column + 1)?.unit;
      const before = { column: column + 1, as, ...(unit !== undefined && { unit }) };
      return column === index ? { ...before, [what]: target.value } : before;
    });
    this.dispatchEvent(new CustomEvent("tightspot-columns-said", { detail: said }));
  }
}
