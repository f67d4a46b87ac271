import { html, LitElement, nothing, type PropertyValues, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { live } from "lit/directives/live.js";
import type { Assessment, Estimate, Verdict } from "../../../analysis/assessment.ts";
import { settingsOf } from "../../../analysis/decide/settings.ts";
import { smallestLimits } from "../../../analysis/decide/smallestLimits.ts";
import { type RetainedDraws, type WhatIfSettings, whatIf } from "../../../analysis/decide/whatIf.ts";
import { type Lengths, lengthsIn } from "../../../inspection/lengths.ts";
import { slideInMillimetres } from "../../../inspection/metric.ts";
import type { Inspection, Slide } from "../../../inspection/schema.ts";
import { fromMillimetres, roundTo, type Units } from "../../../inspection/units.ts";
import { type EditorState, NO_PENDING_INPUT } from "../../../records/editorState.ts";
import { toldApart } from "../../../report/smallestLimitWords.ts";
import { summaryOf } from "../../../report/summary.ts";
import { estimateWords } from "../../../report/words.ts";
import { type Field, fieldAt } from "../../editing/fieldList.ts";
import { enterField, showField } from "../../editing/fieldValues.ts";
import type { InspectionEditor } from "../../editing/inspectionEditor.ts";
import "../../editing/fieldBox.ts";
import { chances } from "../../../report/evidence/chances.ts";
import { assumedWords } from "../../editing/fieldGrid.ts";
import { notify } from "../../ui/notice.ts";
import { controls } from "../../ui/sharedStyles.ts";
import { blockTemplate } from "../evidence/blocks.ts";
import evidencePanelCss from "../evidence/evidencePanel.css?inline";
import { headline } from "../headline.ts";
import type { SliderRange } from "../sliderRange.ts";
import limitChartCss from "./limitChart.css?inline";
import { limitChart } from "./limitChart.ts";
import whatIfPanelCss from "./whatIfPanel.css?inline";

/** A field with a slider, by its path in the slide. */
type ChangeablePath = "backlashLimit" | "runningClearance" | "nut.takeUpLeft";

/** The texts that were tried. */
type Tried = ReadonlyMap<ChangeablePath, string>;

/** The least step of a slider, in the reader's unit: finer figures can be typed. */
const STEPS: Readonly<Record<Units, number>> = { mm: 0.005, in: 0.0002 };
/** The slider of the running clearance reaches at least this far, in millimetres. */
const MOST_CLEARANCE = 0.1;
/** An answer is read out once nothing was changed for so long, in milliseconds. */
const QUIET = 1000;

const PATHS: readonly ChangeablePath[] = ["backlashLimit", "runningClearance", "nut.takeUpLeft"];

const of = (path: ChangeablePath) => ({ survey: null, path });

/** What another limit, running clearance or take-up left would lead to, decided from the retained draws. */
@customElement("tightspot-what-if")
export class WhatIfPanel extends LitElement {
  static override styles = [
    controls,
    unsafeCSS(evidencePanelCss),
    unsafeCSS(limitChartCss),
    unsafeCSS(whatIfPanelCss),
  ];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) slide: Slide | null = null;
  @property({ attribute: false }) assessment: Assessment | null = null;
  @property({ attribute: false }) draws: RetainedDraws | null = null;

  @state() private tried: Tried = new Map();
  @state() private announced = "";

  #said = "";
  #timer: ReturnType<typeof setTimeout> | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#timer);
  }

  override render() {
    const { editor, slide, assessment, draws, tried } = this;
    if (!editor?.inspection || slide === null || assessment === null || draws === null) return nothing;
    const trial = trialOf(editor.inspection, tried);
    if (trial.inspection === null) return nothing;
    const lengths = lengthsIn(slide.units, assessment.resolution);
    const decision = whatIf(draws, changeableOf(trial.inspection), lengths);
    // Where to read next was worked out for the settings as entered, and is told there.
    const answer: Assessment = { ...assessment, ...decision, nextReadings: [] };
    this.#said = `What if: ${headline(answer)}.`;
    return html`
      ${this.#fields(trial, assessment, answer)}
      ${this.#choice(trial)}
      ${this.#answer(answer, assessment, trial.inspection.slide, lengths)}
      ${limitChart(toldApart(smallestLimits(draws.extremes, answer.settings), lengths), answer, lengths)}
      <p class="unseen" role="status">${this.announced}</p>
    `;
  }

  protected override updated(changed: PropertyValues): void {
    if (!changed.has("tried")) return;
    clearTimeout(this.#timer);
    if (this.tried.size === 0) return;
    this.#timer = setTimeout(() => {
      this.announced = this.#said;
    }, QUIET);
  }

  #fields(trial: EditorState, assessment: Assessment, answer: Assessment) {
    const ranges = sliderRanges(assessment, this.slide?.units ?? "mm");
    return html`<div class="fields">
      ${PATHS.filter((path) => path !== "nut.takeUpLeft" || answer.settings.adjustable).map((path) =>
        this.#field(path, ranges[path], trial, answer),
      )}
    </div>`;
  }

  #field(path: ChangeablePath, range: SliderRange, trial: EditorState, { settings }: Assessment) {
    const units = this.slide?.units ?? "mm";
    const { hint: _hint, ...field }: Field = fieldAt(path);
    const { text, problem } = showField(trial, of(path));
    const millimetres = {
      backlashLimit: settings.limit,
      runningClearance: settings.runningClearance,
      "nut.takeUpLeft": settings.takeUpLeft,
    }[path];
    const value = roundTo(fromMillimetres(millimetres, units), units === "in" ? 5 : 4);
    return html`<div>
      <tightspot-field
        .field=${field}
        .text=${text}
        .problem=${problem}
        .assumed=${assumedWords(field, settings, units)}
        .units=${units}
        @tightspot-typed=${({ detail }: CustomEvent<string>) => this.#try(path, detail)}
      ></tightspot-field>
      <input
        type="range"
        aria-label=${`${field.label}, slider`}
        aria-valuetext=${Number.isFinite(value) ? `${value} ${units}` : "not known"}
        min=${range.from}
        max=${range.to}
        step=${range.step}
        .value=${live(String(Math.min(range.to, value)))}
        @input=${({ target }: Event) => {
          if (target instanceof HTMLInputElement) this.#try(path, target.value);
        }}
      />
    </div>`;
  }

  #answer(answer: Assessment, asEntered: Assessment, slide: Slide, lengths: Lengths) {
    const before = headline(asEntered);
    const bars = chances({ assessment: answer, slide, lengths })?.blocks ?? [];
    return html`<section class="answer" aria-label="Answer">
      <div>
        <h3>${headline(answer)}</h3>
        ${headline(answer) === before ? nothing : html`<p class="instead">As entered: ${before}</p>`}
      </div>
      <p>${summaryOf(answer, lengths)}</p>
      ${leftBy(answer, lengths)} ${bars.map(blockTemplate)}
    </section>`;
  }

  #choice(trial: EditorState) {
    const isChanged = this.tried.size > 0;
    const isReadable = trial.draft.fields.length === 0;
    return html`<div class="choice">
      <button
        type="button"
        class="chief"
        aria-disabled=${!isChanged || !isReadable}
        @click=${() => isChanged && isReadable && this.#use()}
      >
        Use these figures
      </button>
      <button type="button" aria-disabled=${!isChanged} @click=${this.#reset}>As entered</button>
    </div>`;
  }

  #try(path: ChangeablePath, text: string): void {
    this.tried = new Map([...this.tried, [path, text]]);
  }

  readonly #reset = (): void => {
    this.tried = new Map();
  };

  #use(): void {
    const { editor, tried } = this;
    if (editor === null) return;
    const asEntered = [...tried.keys()].map(
      (path) => [path, showField(editor.state, of(path)).text] as const,
    );
    const enter = (figures: Iterable<readonly [ChangeablePath, string]>): void => {
      for (const [path, text] of figures) editor.enterField(of(path), text);
    };
    enter(tried);
    this.#reset();
    notify(this, {
      tone: "done",
      text: "The slide has these figures now.",
      action: { label: "Undo", act: () => enter(asEntered) },
    });
  }
}

const NOTHING_REPAIRED: readonly Verdict[] = ["no-verdict", "leave-alone", "correct-end-float"];

/** What adjusting and new nuts would leave, where it may come to that. */
function leftBy({ verdict, settings, afterAdjusting, afterNewNuts }: Assessment, lengths: Lengths) {
  if (NOTHING_REPAIRED.includes(verdict)) return nothing;
  const left = (term: string, worst: Estimate) => html`<div>
    <dt>${term}</dt>
    <dd>${estimateWords(worst, lengths)}</dd>
  </div>`;
  return html`<dl class="left">
    ${settings.adjustable ? left("Left after adjusting", afterAdjusting.worst) : nothing}
    ${left("Left with new nuts", afterNewNuts.worst)}
  </dl>`;
}

/** The inspection without its surveys, with the tried texts entered as in any other field. */
function trialOf(inspection: Inspection, tried: Tried): EditorState {
  let state: EditorState = { inspection: { ...inspection, surveys: [] }, draft: NO_PENDING_INPUT };
  for (const [path, text] of tried) state = enterField(state, { survey: null, path }, text);
  return state;
}

/** The settings of a slide that can be tried. */
function changeableOf({ slide }: Inspection): WhatIfSettings {
  return settingsOf(slideInMillimetres(slide), lengthsIn(slide.units)).settings;
}

/** Sliders reach twice the entered value, and as far as the readings make a difference. */
function sliderRanges(
  { settings, greatest, takeUp }: Assessment,
  units: Units,
): Readonly<Record<ChangeablePath, SliderRange>> {
  const step = STEPS[units];
  const upTo = (millimetres: number, from = 0): SliderRange => {
    const steps = Math.ceil(fromMillimetres(millimetres, units) / step);
    return { from, to: roundTo(Math.max(1, steps) * step, 4), step };
  };
  const { limit, runningClearance, takeUpLeft } = settings;
  return {
    backlashLimit: upTo(Math.max(2 * limit, 1.2 * greatest.high), step),
    runningClearance: upTo(Math.max(MOST_CLEARANCE, 2 * runningClearance)),
    "nut.takeUpLeft": upTo(Math.max(1.5 * takeUp.high, Number.isFinite(takeUpLeft) ? 2 * takeUpLeft : 0)),
  };
}
