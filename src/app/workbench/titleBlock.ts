import { css, html, LitElement, nothing } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Slide, Survey } from "../../inspection/schema.ts";
import type { Work } from "../../records/record.ts";
import type { Desk } from "../editing/desk.ts";
import { DETAILS } from "../editing/fieldList.ts";
import "../fields/fieldGrid.ts";
import { surveyName } from "../readings/surveyName.ts";
import { isOpened } from "../shell/isOpened.ts";
import { notify } from "../shell/notice.ts";
import { controls } from "../style/controls.ts";
import { fold } from "../style/fold.ts";

/** What is inspected, as in the title block of a drawing, and all that can be said about it. */
@customElement("tightspot-title-block")
export class TitleBlock extends LitElement {
  static override styles = [
    controls,
    fold,
    css`
      :host {
        border: 1.5px solid var(--ink);
        border-radius: var(--round);
        background: var(--sheet);
      }

      .block {
        display: flex;
        flex-wrap: wrap;
        gap: 1.5px;
        overflow: hidden;
        border-radius: calc(var(--round) - 1.5px);
        background: var(--ink);
      }

      .block > * {
        flex: 1 1 auto;
        padding: 0.375rem clamp(0.5rem, 1.5vw, 0.875rem) 0.4375rem;
        background: var(--sheet);
      }

      .slide {
        flex: 100 1 16rem;
      }

      h1 {
        overflow-wrap: anywhere;
        font-size: 1.25rem;
      }

      dt {
        color: var(--ink-pale);
        font-size: 0.75rem;
        line-height: 1.3;
      }

      dd {
        font-weight: 650;
        font-variant-numeric: tabular-nums;
        white-space: nowrap;
      }

      details {
        border-top: 1.5px solid var(--ink);
      }

summary {
        padding: 0 clamp(0.5rem, 1.5vw, 0.875rem);
}

      .groups {
        display: grid;
        gap: var(--gap-wide);
        padding: 0.5rem clamp(0.5rem, 1.5vw, 0.875rem) 1.25rem;
      }

      h2 {
        margin-bottom: 0.75rem;
        font-size: 1.0625rem;
      }

      @media print {
        details {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) desk: Desk | null = null;
  @property({ attribute: false }) work: Work | null = null;
  @property({ attribute: false }) survey: Survey | null = null;

  @state() private wasOpened = false;

  override render() {
    const slide = this.work?.inspection?.slide;
    if (slide === undefined) return nothing;
    return html`
      <div class="block">
        <div class="slide">
          <p class="label">${slide.machine ?? "Slide"}</p>
          <h1>${slide.name}</h1>
        </div>
        ${this.#entries(slide).map(
          ([term, value]) => html`<dl>
            <dt>${term}</dt>
            <dd>${value}</dd>
          </dl>`,
        )}
      </div>
      <details @toggle=${this.#toggled}>
        <summary>Details</summary>
        ${this.wasOpened ? this.#details() : nothing}
      </details>
    `;
  }

  #details() {
    return html`<div class="groups">
          ${DETAILS.filter(({ of }) => of === "slide" || this.survey !== null).map(
            ({ title, of, fields }) => html`<section>
              <h2>${title}</h2>
              <tightspot-field-grid
                .desk=${this.desk}
                .work=${this.work}
                .survey=${this.survey}
                .of=${of === "slide" ? null : (this.survey?.id ?? null)}
                .fields=${fields}
              ></tightspot-field-grid>
            </section>`,
          )}
          ${
            this.survey === null
              ? nothing
              : html`<div>
                  <button type="button" class="quiet" @click=${this.#deleteSurvey}>Delete this survey</button>
                </div>`
          }
        </div>`;
  }

  #toggled(event: Event): void {
    this.wasOpened ||= isOpened(event);
  }

  #entries(slide: Slide): readonly (readonly [string, string])[] {
    const { units, travel, screw, backlashLimit } = slide;
    const entries: (readonly [string, string])[] = [
      ["Travel", `${travel.from} to ${travel.to} ${units}`],
      ["Lead", `${screw.lead} ${units}`],
      ["Limit", `${backlashLimit} ${units}`],
    ];
    return this.survey === null ? entries : [...entries, ["Survey", surveyName(this.survey)]];
  }

  #deleteSurvey(): void {
    if (this.survey === null) return;
    const undo = this.desk?.deleteSurvey(this.survey.id);
    if (undo === undefined) return;
    notify(this, {
      tone: "done",
      text: `The survey of ${surveyName(this.survey)} was deleted.`,
      action: { label: "Undo", act: undo },
    });
  }
}
