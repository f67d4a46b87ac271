import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Slide, Survey } from "../../../inspection/schema.ts";
import type { EditorState, GuideState } from "../../../records/editorState.ts";
import { endFloat } from "../../drawings/corrections.ts";
import { shown } from "../../drawings/primitives.ts";
import { showField } from "../../editing/fieldValues.ts";
import type { InspectionEditor } from "../../editing/inspectionEditor.ts";
import { controls } from "../../ui/sharedStyles.ts";
import type { FigureEntry } from "./figureEntry.ts";
import { asCell, bareUnit } from "./figureInput.ts";
import "./figureEntry.ts";
import { unitChoices } from "./askedFigures.ts";
import endFloatStepCss from "./endFloatStep.css?inline";

/** Measuring the end float, before anything else, with why. */
@customElement("tightspot-end-float-step")
export class EndFloatStep extends LitElement {
  static override styles = [controls, unsafeCSS(endFloatStepCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) editorState: EditorState | null = null;
  @property({ attribute: false }) guide: GuideState | null = null;
  @property({ attribute: false }) slide: Slide | null = null;
  @property({ attribute: false }) survey: Survey | null = null;

  @state() private problem = "";
  @state() private said = "";

  override firstUpdated(): void {
    this.focusField();
  }

  override render() {
    const { guide, slide } = this;
    if (guide === null || slide === null) return nothing;
    const taken = this.#taken;
    return html`
      <h3>End float of the screw, first</h3>
      <p class="why">
        The screw’s play in its thrust bearing is part of every reading, the same everywhere, and no adjusting of the
        nut removes it. Not measured, nut and bearing cannot be told apart.
      </p>
      ${shown(endFloat)}
      <p>
        Set an indicator on the end of the screw. With the handwheel, drive the slide a little each way under its own
        drag: the sweep when it reverses is the end float. Three readings are good.
      </p>
      <tightspot-figure-entry
        .label=${"Sweep at the screw’s end"}
        .counts=${slide.units}
        .choices=${unitChoices(slide.units)}
        .unit=${bareUnit(guide)}
        .text=${guide.typing.endFloat ?? ""}
        .problem=${this.problem}
        @tightspot-figure-typed=${({ detail }: CustomEvent<string>) => this.#typed(detail)}
        @tightspot-figure-entered=${() => this.#entered()}
        @tightspot-figure-unit=${({ detail }: CustomEvent<string>) => this.#takeUnit(detail)}
      ></tightspot-figure-entry>
      ${taken.length === 0 ? nothing : this.#repeats(taken, slide)}
      <button type="button" class=${taken.length === 0 ? "" : "chief"} @click=${() => this.#next()}>
        ${taken.length === 0 ? "Go on without it" : "Next: stations"}
      </button>
      ${
        taken.length === 0
          ? html`<p class="hint">Without it, it is taken to be anything up to 0.1 mm. It can be measured later.</p>`
          : html`<p class="hint">Enter on an empty field goes on, too.</p>`
      }
      <p class="unseen" role="status">${this.said}</p>
    `;
  }

  focusField(): void {
    void this.updateComplete.then(() =>
      this.renderRoot.querySelector<FigureEntry>("tightspot-figure-entry")?.focus(),
    );
  }

  /** Takes a value from a gauge as if it were typed and entered. */
  takeValue(text: string): void {
    this.#typed(text);
    this.#entered();
  }

  get #place() {
    return { survey: this.survey?.id ?? null, path: "endFloat" };
  }

  /** The repeats as they stand in the field. */
  get #taken(): readonly string[] {
    if (this.editor === null) return [];
    return showField(this.editor.state, this.#place)
      .text.split(/\s{2,}|;/)
      .map((text) => text.trim())
      .filter((text) => text !== "");
  }

  #repeats(taken: readonly string[], { units }: Slide) {
    return html`<div class="taken" role="group" aria-label="End float read so far">
      ${taken.map(
        (text, index) => html`<button
          type="button"
          aria-label="Take away ${text} ${units}"
          @click=${() => this.#put(taken.toSpliced(index, 1), `${text} taken away.`)}
        >
          ${text} <span aria-hidden="true">✕</span>
        </button>`,
      )}
    </div>`;
  }

  /** The current state: keys may come faster than the page is drawn. */
  get #now(): GuideState | null {
    return this.editor?.guide ?? this.guide;
  }

  #typed(text: string): void {
    this.problem = "";
    const guide = this.#now;
    if (guide !== null) this.editor?.setGuide({ ...guide, typing: { ...guide.typing, endFloat: text } });
  }

  #entered(): void {
    const { editor, slide } = this;
    const guide = this.#now;
    if (editor === null || guide === null || slide === null) return;
    const text = guide.typing.endFloat ?? "";
    if (text.trim() === "" && this.#taken.length > 0) {
      this.#next();
      return;
    }
    const cell = asCell(text, slide.units, bareUnit(guide));
    if (!cell.ok || Number(cell.value) < 0) {
      this.problem = cell.ok
        ? "End float has no sign: type the size of the sweep."
        : `It ${cell.problem.what}. ${cell.problem.cure}`;
      this.said = this.problem;
      this.focusField();
      return;
    }
    editor.setGuide({ ...guide, typing: {} });
    this.#put([...this.#taken, cell.value], `${cell.value} ${slide.units} taken.`);
  }

  #put(taken: readonly string[], said: string): void {
    this.editor?.enterField(this.#place, taken.join("  "));
    this.said = said;
    this.focusField();
  }

  #takeUnit(name: string): void {
    const { editor, slide } = this;
    const guide = this.#now;
    if (editor === null || guide === null || slide === null) return;
    const { unit: _before, ...rest } = guide;
    editor.setGuide(name === slide.units ? rest : { ...rest, unit: name });
  }

  #next(): void {
    this.dispatchEvent(new CustomEvent("tightspot-next"));
  }
}
