import { html, LitElement, nothing, type PropertyValues, svg, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Assessment } from "../../../analysis/assessment.ts";
import { type Lengths, lengthsIn } from "../../../inspection/lengths.ts";
import type { Slide } from "../../../inspection/schema.ts";
import { fromMillimetres, toMillimetres } from "../../../inspection/units.ts";
import { evennessOf } from "../../../picture/evenness.ts";
import { type NutPlace, placeAt } from "../../../picture/screw/nutPlace.ts";
import { type ScrewPicture, screwPicture } from "../../../picture/screw/screwPicture.ts";
import { placeWords } from "../../../report/placeWords.ts";
import { capitalised } from "../../../report/words.ts";
import "../../help/aboutLink.ts";
import { sectionDrawing } from "../../drawings/sectionDrawing.ts";
import { sectionExaggeration, threadSection } from "../../drawings/threadSection.ts";
import { isPrinting } from "../../ui/beforePrint.ts";
import { controls } from "../../ui/sharedStyles.ts";
import { keyMove, positionRange, type SliderRange, snapped } from "../sliderRange.ts";
import screwPanelCss from "./screwPanel.css?inline";
import { movingParts, type ScrewStage, screwStage } from "./screwStage.ts";
import { SidewaysDrag } from "./sidewaysDrag.ts";

/** The drawing for an assessment and a width. */
interface Drawn {
  readonly picture: ScrewPicture;
  readonly stage: ScrewStage;
  readonly range: SliderRange;
}

/** The screw along its travel, with a nut that can be moved to any place of it. */
@customElement("tightspot-screw")
export class ScrewPanel extends LitElement {
  static override styles = [controls, unsafeCSS(screwPanelCss)];

  @property({ attribute: false }) assessment: Assessment | null = null;
  @property({ attribute: false }) slide: Slide | null = null;
  /** Whether to say what taking up the nut, or new nuts, would do. */
  @property({ type: Boolean }) repairable = false;

  @state() private width = 0;
  /** Position of the slide that the nut is at, in the reader's unit; null until it is moved. */
  @state() private movedTo: number | null = null;
  @state() private isTakenUp = false;

  #drawn: Drawn | null = null;
  readonly #sizes = new ResizeObserver(([entry]) => {
    this.width = Math.floor(entry?.contentRect.width ?? 0);
  });
  readonly #drag = new SidewaysDrag((across) => this.#moveAcross(across));

  override connectedCallback(): void {
    super.connectedCallback();
    // When printing, the size is needed now: the observer reports it too late.
    if (isPrinting()) this.width = Math.floor(this.clientWidth);
    this.#sizes.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#sizes.disconnect();
  }

  protected override willUpdate(changed: PropertyValues): void {
    const { assessment, slide, width } = this;
    if (assessment === null || slide === null || width <= 0) this.#drawn = null;
    else if (changed.has("assessment") || changed.has("slide") || changed.has("width"))
      this.#drawn = drawn(assessment, slide, width);
  }

  override render() {
    const { assessment, slide } = this;
    const drawing = this.#drawn;
    if (assessment === null || slide === null || drawing === null) return nothing;
    const lengths = lengthsIn(slide.units, assessment.resolution);
    const at = this.#at(assessment, slide, drawing.range);
    const place = placeAt(assessment, toMillimetres(at, slide.units), lengths);
    const words = placeWords(place, assessment, lengths);
    const where = `Nut at ${lengths.position(place.position)}`;
    const effects = this.repairable ? [words.left, words.binds] : [];
    const said = [`${where}: lost motion ${words.lostMotion}.`, ...effects].join(" ");
    return html`<section aria-label="The screw">
      <figure>
        <figcaption>${drawing.picture.title}</figcaption>
        ${this.#stage(drawing, at, said, place, slide)}
      </figure>
      <div class="beside">
        <div class="place">
          <div class="where">
            <h3>${where}</h3>
            <tightspot-about class="screen-only" topic="tight-spot"></tightspot-about>
          </div>
          <p class="figures">
            <span class="label">Lost motion here</span>
            <strong>${words.lostMotion}</strong>
          </p>
          ${effects.map((sentence) => html`<p>${sentence}</p>`)}
          ${place.bindsWhenFitted.length > 0 && this.repairable ? BARS : nothing}
          ${this.#jumps(assessment, drawing.range, lengths)}
        </div>
        ${this.#section(place, assessment, drawing.picture, lengths)}
      </div>
    </section>`;
  }

  #stage(
    { picture, stage, range }: Drawn,
    at: number,
    said: string,
    { bindsWhenFitted }: NutPlace,
    slide: Slide,
  ) {
    const { width, height, frame, reach } = stage;
    const box = `0 0 ${width} ${height}`;
    const binds = this.repairable ? bindsWhenFitted : [];
    const inUnits = binds.map(({ from, to }) => ({
      from: fromMillimetres(from, slide.units),
      to: fromMillimetres(to, slide.units),
    }));
    return html`<div
      class="stage"
      @pointerdown=${(event: PointerEvent) => this.#take(event, frame.x(at), reach.half)}
      @pointermove=${this.#drag.moved}
      @pointerup=${this.#drag.up}
      @pointercancel=${this.#drag.cancel}
    >
      <svg viewBox=${box} role="img" aria-label=${picture.description} .innerHTML=${stage.still}></svg>
      <svg class="over" viewBox=${box} aria-hidden="true">${movingParts(stage, at, inUnits)}</svg>
      <div
        class="grip"
        role="slider"
        tabindex="0"
        aria-label="Nut"
        aria-orientation="horizontal"
        aria-valuemin=${range.from}
        aria-valuemax=${range.to}
        aria-valuenow=${at}
        aria-valuetext=${said}
        style="left:${(100 * frame.x(at)) / width}%;top:${(100 * reach.top) / height}%;bottom:${100 - (100 * reach.bottom) / height}%;width:${(200 * reach.half) / width}%"
        @keydown=${(event: KeyboardEvent) => this.#key(event, at, range)}
      ></div>
    </div>`;
  }

  #section(place: NutPlace, assessment: Assessment, picture: ScrewPicture, lengths: Lengths) {
    const { settings, endFloat } = assessment;
    const isTakenUp = this.isTakenUp && this.repairable;
    const clearance = isTakenUp ? place.takenUp : place.asItIs;
    const greatest = placeAt(assessment, assessment.loosestSpot.position, lengths).asItIs;
    const exaggeration = sectionExaggeration(greatest.uniform + greatest.uneven, settings);
    const section = threadSection(clearance, settings.pitch, picture.thread, exaggeration);
    const amount = lengths.lostMotion(clearance.uniform + clearance.uneven);
    const withFloat = endFloat === null && !isTakenUp ? ", end float included" : "";
    const scale = exaggeration === 1 ? "to scale" : `drawn ${exaggeration} times as large as it is`;
    const worn =
      section.unworn === null ? "" : " Dashed: the thread without the wear that the nut meets here.";
    return html`<figure class="section">
      ${
        this.repairable
          ? html`<fieldset>
              <legend class="unseen">The nut is shown</legend>
              ${this.#state(false, "As it is")}
              ${this.#state(true, settings.adjustable ? "Taken up" : "With new nuts")}
            </fieldset>`
          : nothing
      }
      ${sectionDrawing(section, amount, `Screw and nut cut open: a clearance of ${amount}${withFloat}.`)}
      <figcaption>Clearance of the nut here${withFloat}, ${scale}.${worn}</figcaption>
    </figure>`;
  }

  #state(isTakenUp: boolean, name: string) {
    return html`<label>
      <input
        type="radio"
        name="state"
        .checked=${this.isTakenUp === isTakenUp}
        @change=${() => {
          this.isTakenUp = isTakenUp;
        }}
      />
      <span>${name}</span>
    </label>`;
  }

  #jumps(assessment: Assessment, range: SliderRange, lengths: Lengths) {
    if (evennessOf(assessment, lengths) !== "uneven") return nothing;
    const { tightSpot, loosestSpot } = assessment;
    const jump = (name: string, position: number) => html`<button
      type="button"
      aria-label="Nut to the ${name}"
      @click=${() => {
        this.movedTo = snapped(range, fromMillimetres(position, lengths.units));
      }}
    >
      ${capitalised(name)}
    </button>`;
    return html`<p class="jumps screen-only">
      ${jump("tight spot", tightSpot.position)} ${jump("loosest spot", loosestSpot.position)}
    </p>`;
  }

  /** Until it is moved, the nut is where lost motion is greatest. */
  #at({ loosestSpot }: Assessment, { units }: Slide, range: SliderRange): number {
    return snapped(range, this.movedTo ?? fromMillimetres(loosestSpot.position, units));
  }

  #take(event: PointerEvent, middle: number, half: number): void {
    const { currentTarget, clientX } = event;
    if (!(currentTarget instanceof Element)) return;
    const isOnNut =
      Math.abs(clientX - currentTarget.getBoundingClientRect().left - middle) <= Math.max(half, 24);
    this.#drag.down(event, isOnNut ? middle : null);
  }

  #moveAcross(across: number): void {
    const drawing = this.#drawn;
    if (drawing === null) return;
    const { stage, range } = drawing;
    const [start, end] = [stage.frame.x(range.from), stage.frame.x(range.to)];
    this.movedTo = snapped(range, range.from + ((across - start) / (end - start)) * (range.to - range.from));
  }

  #key(event: KeyboardEvent, at: number, range: SliderRange): void {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const to = keyMove(event.key, at, range);
    if (to === null) return;
    event.preventDefault();
    this.movedTo = to;
  }
}

const BARS = html`<p class="key">
  ${svg`<svg width="28" height="10" aria-hidden="true"><rect
    x="0.5"
    y="0.5"
    width="27"
    height="9"
    fill="url(#would-bind-here)"
    stroke="var(--limit)"
  /><defs><pattern id="would-bind-here" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)"><path d="M0 0V6" stroke="var(--limit)" stroke-width="3" /></pattern></defs></svg>`}
  where it would bind
</p>`;

function drawn(assessment: Assessment, slide: Slide, width: number): Drawn {
  const picture = screwPicture(assessment, slide, undefined, width);
  const nutLength = fromMillimetres(assessment.settings.engagedLength, slide.units);
  return {
    picture,
    stage: screwStage(picture, nutLength, width),
    range: positionRange(picture.travel.from, picture.travel.to),
  };
}
