import { css, html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import { valueAt } from "../../inspection/parts.ts";
import type { Method, Slide, Survey } from "../../inspection/schema.ts";
import { roundTo } from "../../inspection/units.ts";
import type { Work } from "../../records/record.ts";
import type { Desk } from "../editing/desk.ts";
import { fieldAt, METHODS } from "../editing/fieldList.ts";
import "../fields/fieldGrid.ts";
import { controls } from "../style/controls.ts";
import { fold } from "../style/fold.ts";
import { angle, division, drivePlay, onDiameter } from "./drawings/corrections.ts";
import { type Drawing, shown } from "./drawings/parts.ts";
import { WAY_DRAWINGS } from "./drawings/ways.ts";

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
export class WayStep extends LitElement {
  static override styles = [
    controls,
    fold,
    css`
      :host {
        display: grid;
        gap: 1rem;
      }

      fieldset {
        display: grid;
        gap: 0.625rem;
        margin: 0;
        padding: 0;
        border: 0;
      }

      legend {
        margin-bottom: 0.5rem;
        padding: 0;
        color: var(--ink-strong);
        font-weight: 700;
      }

      .way {
        position: relative;
        display: grid;
        gap: 0.25rem;
        padding: 0.625rem 0.75rem;
        border: 1.5px solid var(--rule);
        border-radius: var(--round);
        cursor: pointer;
      }

      .way:has(:checked) {
        border-color: var(--ink);
        box-shadow: inset 0 0 0 1.5px var(--ink);
      }

      .way:has(:focus-visible) {
        outline: 3px solid var(--brass);
        outline-offset: 2px;
      }

      .way input {
        position: absolute;
        inset: 0;
        height: 100%;
        margin: 0;
        opacity: 0;
        cursor: pointer;
      }

      .name {
        display: flex;
        align-items: center;
        gap: 0.5rem;
        font-weight: 650;
      }

      .name::before {
        content: "";
        width: 1.125rem;
        height: 1.125rem;
        border: 2px solid var(--ink);
        border-radius: 50%;
      }

      .way:has(:checked) .name::before {
        border-width: 6px;
      }

      .way p,
      .about {
        color: var(--ink-pale);
        font-size: var(--small);
      }

      .correction {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 15rem), 1fr));
        gap: 0.5rem 1rem;
        align-items: center;
        padding: 0.5rem 0;
      }

      .fields {
        display: grid;
        gap: 0.5rem;
      }

    `,
  ];

  @property({ attribute: false }) desk: Desk | null = null;
  @property({ attribute: false }) work: Work | null = null;
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
    const drawing = WAY_DRAWINGS[method];
    if (drawing === undefined) return nothing;
    return html`<label class="way">
      <input
        type="radio"
        name="way"
        .checked=${survey.method === method}
        aria-describedby="about-${method}"
        @change=${() => this.desk?.enterField({ survey: survey.id, path: "method" }, method)}
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
          .desk=${this.desk}
          .work=${this.work}
          .survey=${survey}
          .of=${survey.id}
          .fields=${paths.map(fieldAt)}
        ></tightspot-field-grid>
      </div>
    </div>`;
  }
}
