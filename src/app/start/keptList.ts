import { css, html, LitElement, nothing } from "lit";
import { customElement, state } from "lit/decorators.js";
import { inOneLine } from "../../inspection/problem.ts";
import { deleteKept, listKept, putBack } from "../../records/list.ts";
import type { ListEntry } from "../../records/record.ts";
import { type OtherTabs, otherTabs } from "../../records/tabs.ts";
import { dayOf } from "../editing/day.ts";
import { notify } from "../shell/notice.ts";
import { hashOf } from "../shell/route.ts";
import { controls } from "../style/controls.ts";

const WHEN = new Intl.DateTimeFormat(undefined, { dateStyle: "medium", timeStyle: "short" });

/** The inspections kept in this browser, to open and to delete. */
@customElement("tightspot-kept-list")
export class KeptList extends LitElement {
  static override styles = [
    controls,
    css`
      h2 {
        margin-bottom: 0.25rem;
      }

      li {
        display: flex;
        align-items: center;
        gap: 0.5rem;
        border-top: 1px solid var(--rule);
      }

      li:first-child {
        margin-top: 0.75rem;
      }

      li:last-child {
        border-bottom: 1px solid var(--rule);
      }

      a {
        display: grid;
        flex: 1;
        align-content: center;
        min-width: 0;
        min-height: 64px;
        padding: 0.5rem 0;
        color: var(--ink-strong);
        text-decoration: none;
      }

      a:hover .name {
        text-decoration: underline;
      }

      .name {
        overflow-wrap: anywhere;
        font-weight: 650;
      }

      .note {
        color: var(--ink-pale);
        font-size: var(--small);
      }
    `,
  ];

  @state() private entries: readonly ListEntry[] = [];
  @state() private problem: string | null = null;

  #tabs: OtherTabs | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    this.hidden = true;
    this.#tabs = otherTabs(() => this.#refresh());
    void this.#refresh();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#tabs?.close();
  }

  override render() {
    if (this.problem !== null) return html`<p class="wrong" role="alert">${this.problem}</p>`;
    if (this.entries.length === 0) return nothing;
    return html`
      <section aria-labelledby="kept">
        <h2 id="kept">Kept in this browser</h2>
        <p class="note">On this device only. A browser may clear what it keeps: save a file of what must last.</p>
        <ul>
          ${this.entries.map((entry) => this.#entry(entry))}
        </ul>
      </section>
    `;
  }

  #entry(entry: ListEntry) {
    const name = nameOf(entry);
    return html`<li>
      <a href=${hashOf({ at: "inspection", id: entry.id })}>
        <span class="name">${name}</span>
        <span class="note figures">${aboutOf(entry)}</span>
      </a>
      <button type="button" class="quiet" aria-label=${`Delete ${name}`} @click=${() => this.#delete(entry)}>
        Delete
      </button>
    </li>`;
  }

  async #refresh(): Promise<void> {
    const listed = await listKept();
    this.entries = listed.ok ? listed.value : [];
    this.problem = listed.ok ? null : inOneLine(listed.problem);
    this.hidden = this.entries.length === 0 && this.problem === null;
  }

  async #delete(entry: ListEntry): Promise<void> {
    const deleted = await deleteKept(entry.id);
    if (!deleted.ok) {
      notify(this, { tone: "wrong", text: `Not deleted: ${inOneLine(deleted.problem)}` });
      return;
    }
    this.#tabs?.tell({ id: entry.id, revision: null });
    const kept = deleted.value;
    notify(this, {
      tone: "done",
      text: `“${nameOf(entry)}” was deleted.`,
      ...(kept && { action: { label: "Undo", act: () => putBack(kept).then(() => this.#refresh()) } }),
    });
    await this.#refresh();
  }
}

function nameOf({ name }: ListEntry): string {
  return name ?? "New inspection, slide not described yet";
}

function aboutOf({ machine, surveys, lastTaken, readings, savedAt }: ListEntry): string {
  const parts = [
    machine,
    lastTaken === null
      ? null
      : surveys > 1
        ? `${surveys} surveys, the last of ${dayOf(lastTaken)}`
        : `survey of ${dayOf(lastTaken)}`,
    `${readings} ${readings === 1 ? "reading" : "readings"}`,
    `saved ${WHEN.format(new Date(savedAt))}`,
  ];
  return parts.filter((part) => part !== null).join(" · ");
}
