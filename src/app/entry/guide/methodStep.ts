import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import { valueAt } from "../../../inspection/plainData.ts";
import type { Method, Slide, Survey } from "../../../inspection/schema.ts";
import { roundTo } from "../../../inspection/units.ts";
import type { EditorState } from "../../../records/editorState.ts";
import { fieldAt, METHODS } from "../../editing/fieldList.ts";
import type { InspectionEditor } from "../../editing/inspectionEditor.ts";
import "../../editing/fieldGrid.ts";
import { angle, division, drivePlay, onDiameter } from "../../drawings/corrections.ts";
import { METHOD_DRAWINGS } from "../../drawings/methods.ts";
import { type Drawing, shown } from "../../drawings/primitives.ts";
import { controls, fold } from "../../ui/sharedStyles.ts";
import methodStepCss from "./methodStep.css?inline";

/** When each way suits. */
const SUITS: Readonly<Partial<Record<Method, string>>> = {
  "push-pull": "Quick, where the slide can be moved by hand. Needs an indicator.",
  "indicator-pair": "For a slide too heavy to push. Needs an indicator, and a mark on the handwheel’s dial.",
  "dial-pair": "Where the handwheel’s dial is finer than the indicator.",
};

interface Correction {
  readonly paths: readonly string[];
  readonly drawing: Drawing;
  /** What it is about, in the words of the slide. */
  readonly words: (slide: Slide) => string;
}

const ANGLE: Correction = {
  paths: ["indicator.angleToTravel"],
  drawing: angle,
  words: () => "An indicator out of line with the travel shows too much. Set it in line, or give its angle.",
};

const DRIVE_PLAY: Correction = {
  paths: ["drivePlay"],
  drawing: drivePlay,
  words: ({ screw, units }) =>
    `Play of key, pin or gears between handwheel and screw is in these readings, and no nut removes it. One degree of it is ${roundTo(screw.lead / 360, units === "in" ? 5 : 3)} ${units} of travel here.`,
};

const CORRECTIONS: Readonly<Partial<Record<Method, readonly Correction[]>>> = {
  "push-pull": [ANGLE],
  "indicator-pair": [ANGLE, DRIVE_PLAY],
  "dial-pair": [DRIVE_PLAY],
};

/** What the dial's readings cannot be understood without. */
const DIAL: readonly Correction[] = [
  {
    paths: ["dial.travelPerDivision", "dial.divisions"],
    drawing: division,
    words: () => "The dial is read in divisions, and a difference may go past its zero.",
  },
  {
    paths: ["dial.graduatedOnDiameter"],
    drawing: onDiameter,
    words: () => "A dial that shows what comes off the diameter shows twice the slide’s movement.",
  },
];

/** Choosing the way of measuring, and what is to be known about it. */
@customElement("tightspot-way-step")
export class MethodStep extends LitElement {
  static override styles = [controls, fold, unsafeCSS(methodStepCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) editorState: EditorState | null = null;
  @property({ attribute: false }) slide: Slide | null = null;
  @property({ attribute: false }) survey: Survey | null = null;

  override render() {
    const { slide, survey } = this;
    if (slide === null || survey === null) return nothing;
    const corrections = CORRECTIONS[survey.method] ?? [];
    const isCorrected = corrections.some(({ paths }) =>
      paths.some((path) => valueAt(survey, path) !== undefined),
    );
    const isDial = survey.method === "dial-pair";
    return html`
      <fieldset>
        <legend>How will you measure?</legend>
        ${METHODS.map(([method, name]) => this.#way(method, name, survey))}
      </fieldset>
      ${isDial ? DIAL.map((correction) => this.#correction(correction, slide, survey)) : nothing}
      ${
        corrections.length === 0
          ? nothing
          : html`<details ?open=${isCorrected}>
              <summary>Corrections, where they are needed</summary>
              ${corrections.map((correction) => this.#correction(correction, slide, survey))}
            </details>`
      }
      ${isDial && survey.dial === undefined ? html`<p>Give the travel per division to go on.</p>` : nothing}
      <button
        type="button"
        class="chief"
        ?disabled=${isDial && survey.dial === undefined}
        @click=${() => this.dispatchEvent(new CustomEvent("tightspot-next"))}
      >
        Next: end float
      </button>
    `;
  }

  #way(method: Method, name: string, survey: Survey) {
    const drawing = METHOD_DRAWINGS[method];
    if (drawing === undefined) return nothing;
    return html`<label class="way">
      <input
        type="radio"
        name="way"
        .checked=${survey.method === method}
        aria-describedby="about-${method}"
        @change=${() => this.editor?.enterField({ survey: survey.id, path: "method" }, method)}
      />
      <span class="name">${name}</span>
      ${shown(drawing)}
      <p id="about-${method}">${SUITS[method]}</p>
    </label>`;
  }

  #correction({ paths, drawing, words }: Correction, slide: Slide, survey: Survey) {
    return html`<div class="correction">
      ${shown(drawing)}
      <div class="fields">
        <p class="about">${words(slide)}</p>
        <tightspot-field-grid
          .editor=${this.editor}
          .editorState=${this.editorState}
          .survey=${survey}
          .of=${survey.id}
          .fields=${paths.map(fieldAt)}
        ></tightspot-field-grid>
      </div>
    </div>`;
  }
}
