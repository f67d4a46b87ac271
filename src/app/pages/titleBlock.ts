import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Slide, Survey } from "../../inspection/schema.ts";
import type { EditorState } from "../../records/editorState.ts";
import { DETAILS } from "../editing/fieldList.ts";
import type { InspectionEditor } from "../editing/inspectionEditor.ts";
import "../editing/fieldGrid.ts";
import { surveyName } from "../editing/surveys.ts";
import { isOpen } from "../ui/isOpen.ts";
import { notify } from "../ui/notice.ts";
import { controls, fold } from "../ui/sharedStyles.ts";
import titleBlockCss from "./titleBlock.css?inline";

/** The title block of the inspection, and all fields of slide and survey behind “Details”. */
@customElement("tightspot-title-block")
export class TitleBlock extends LitElement {
  static override styles = [controls, fold, unsafeCSS(titleBlockCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) editorState: EditorState | null = null;
  @property({ attribute: false }) survey: Survey | null = null;

  @state() private wasOpened = false;

  override render() {
    const slide = this.editorState?.inspection?.slide;
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
                .editor=${this.editor}
                .editorState=${this.editorState}
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
    this.wasOpened ||= isOpen(event);
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
    const undo = this.editor?.deleteSurvey(this.survey.id);
    if (undo === undefined) return;
    notify(this, {
      tone: "done",
      text: `The survey of ${surveyName(this.survey)} was deleted.`,
      action: { label: "Undo", act: undo },
    });
  }
}
