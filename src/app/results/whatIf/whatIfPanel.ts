import { html, LitElement, nothing, type PropertyValues, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { live } from "lit/directives/live.js";
import type { Assessment, Estimate, Verdict } from "../../../analysis/assessment.ts";
import { smallestLimits } from "../../../analysis/decide/smallestLimits.ts";
import { type RetainedDraws, whatIf } from "../../../analysis/decide/whatIf.ts";
import { type Lengths, lengthsIn } from "../../../inspection/lengths.ts";
import type { Slide } from "../../../inspection/schema.ts";
import { fromMillimetres, roundTo } from "../../../inspection/units.ts";
import type { EditorState } from "../../../records/editorState.ts";
import { toldApart } from "../../../report/smallestLimitWords.ts";
import { summaryOf } from "../../../report/summary.ts";
import { estimateWords } from "../../../report/words.ts";
import { type Field, fieldAt } from "../../editing/fieldList.ts";
import { showField } from "../../editing/fieldValues.ts";
import type { InspectionEditor } from "../../editing/inspectionEditor.ts";
import "../../editing/fieldBox.ts";
import { chances } from "../../../report/evidence/chances.ts";
import { assumedWords } from "../../editing/fieldGrid.ts";
import { notify } from "../../ui/notice.ts";
import { controls } from "../../ui/sharedStyles.ts";
import { blockTemplate } from "../evidence/blocks.ts";
import evidencePanelCss from "../evidence/evidencePanel.css?inline";
import { headline } from "../headline.ts";
import limitChartCss from "./limitChart.css?inline";
import { limitChart } from "./limitChart.ts";
import { type ChangeablePath, type Span, spansOf } from "./sliderRanges.ts";
import { changeableOf, type Tried, trialOf } from "./trial.ts";
import whatIfPanelCss from "./whatIfPanel.css?inline";

/** An answer is read out once nothing was changed for so long, in milliseconds. */
const QUIET = 1000;

const PATHS: readonly ChangeablePath[] = ["backlashLimit", "runningClearance", "nut.takeUpLeft"];

const of = (path: ChangeablePath) => ({ survey: null, path });

/** What another limit, running clearance or take-up left would lead to, answered from the draws that are kept. */
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
  @property({ attribute: false }) kept: RetainedDraws | null = null;

  @state() private tried: Tried = new Map();
  @state() private announced = "";

  #said = "";
  #timer: ReturnType<typeof setTimeout> | undefined;

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#timer);
  }

  override render() {
    const { editor, slide, assessment, kept, tried } = this;
    if (!editor?.inspection || slide === null || assessment === null || kept === null) return nothing;
    const trial = trialOf(editor.inspection, tried);
    if (trial.inspection === null) return nothing;
    const lengths = lengthsIn(slide.units, assessment.resolution);
    const decision = whatIf(kept, changeableOf(trial.inspection), lengths);
    // Where to read next was worked out for the settings as entered, and is told there.
    const answer: Assessment = { ...assessment, ...decision, nextReadings: [] };
    this.#said = `What if: ${headline(answer)}.`;
    return html`
      ${this.#fields(trial, assessment, answer)}
      ${this.#choice(trial)}
      ${this.#answer(answer, assessment, trial.inspection.slide, lengths)}
      ${limitChart(toldApart(smallestLimits(kept.extremes, answer.settings), lengths), answer, lengths)}
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
    const spans = spansOf(assessment, this.slide?.units ?? "mm");
    return html`<div class="fields">
      ${PATHS.filter((path) => path !== "nut.takeUpLeft" || answer.settings.adjustable).map((path) =>
        this.#field(path, spans[path], trial, answer),
      )}
    </div>`;
  }

  #field(path: ChangeablePath, span: Span, trial: EditorState, { settings }: Assessment) {
    const units = this.slide?.units ?? "mm";
    const { hint: _told, ...field }: Field = fieldAt(path);
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
        min=${span.from}
        max=${span.to}
        step=${span.step}
        .value=${live(String(Math.min(span.to, value)))}
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
