import { html, LitElement, nothing, type PropertyValues, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Assessment } from "../../../analysis/assessment.ts";
import type { Interval } from "../../../analysis/decide/settings.ts";
import { lengthsIn } from "../../../inspection/lengths.ts";
import { toMillimetres } from "../../../inspection/units.ts";
import type { ProfilePicture } from "../../../picture/profilePicture.ts";
import { profileSvg } from "../../../picture/profileSvg.ts";
import { readoutWords } from "../../../report/readoutWords.ts";
import { BeforePrint } from "../../ui/beforePrint.ts";
import { controls } from "../../ui/sharedStyles.ts";
import { ChartCanvas } from "./chartCanvas.ts";
import "./profileTable.ts";
import { isOpen } from "../../ui/isOpen.ts";
import profileChartCss from "./profileChart.css?inline";
import { readTo, stationsOf } from "./readingOff.ts";
import { between, moved, partOf, showing, zoomed } from "./zoom.ts";

/** Factor of one step of zooming, and the share of what is shown that one press pans by. */
const CLOSER = 2;
const PAN = 0.5;
/** A pointer dragged this far, in pixels, selects a part of the travel; one dragged less far points. */
const LEAST_DRAG = 10;

/** The part of the chart that is being dragged over, in pixels: from where the pointer was pressed to where it is. */
interface Selection {
  readonly from: number;
  readonly to: number;
}

/** The chart of the profile, which can be read off and zoomed, and the same as a table. */
@customElement("tightspot-profile-chart")
export class ProfileChart extends LitElement {
  static override styles = [controls, unsafeCSS(profileChartCss)];

  @property({ attribute: false }) picture: ProfilePicture | null = null;
  @property({ attribute: false }) assessment: Assessment | null = null;

  /** The part of the travel that is shown, in the reader's unit; null for all of it. */
  @state() private view: Interval | null = null;
  /** The place that is read off, in the reader's unit. */
  @state() private at: number | null = null;
  @state() private selection: Selection | null = null;
  @state() private announced = "";
  @state() private isTableOpen = false;

  readonly #canvas = new ChartCanvas(this, () =>
    this.picture === null ? null : { picture: partOf(this.picture, this.#shown()), at: this.at },
  );
  #stations: readonly number[] = [];
  constructor() {
    super();
    new BeforePrint(this, () => this.#drawForPrint());
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (!changed.has("picture")) return;
    const { picture } = this;
    const before: unknown = changed.get("picture");
    if (isPicture(before) && picture !== null && !isSame(before.xAxis, picture.xAxis)) {
      this.view = null;
      this.at = null;
    }
    this.#stations = picture === null ? [] : stationsOf(picture);
  }

  override render() {
    const { picture, assessment } = this;
    if (picture === null || assessment === null) return nothing;
    return html`
      <figure>
        <div class="head">
          <figcaption>${picture.title}</figcaption>
          ${this.#zoomButtons()}
        </div>
        <div class="chart" aria-busy=${this.#canvas.chart === null}>
          <canvas role="img" aria-label=${picture.description}></canvas>
          ${this.#reader(picture, assessment)}
        </div>
        <div class="readout" aria-hidden="true">${this.#readout(picture, assessment)}</div>
        <p class="unseen" role="status">${this.announced}</p>
        <div class="printed"></div>
      </figure>
      <details
        @toggle=${(event: Event) => {
          this.isTableOpen = isOpen(event);
        }}
      >
        <summary>The same as a table</summary>
        ${
          this.isTableOpen
            ? html`<tightspot-profile-table
                .picture=${partOf(picture, this.#shown())}
                .assessment=${assessment}
              ></tightspot-profile-table>`
            : nothing
        }
      </details>
    `;
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has("picture") || changed.has("view")) this.#canvas.draw();
    else if (changed.has("at")) this.#canvas.chart?.readOff(this.at);
  }

  #zoomButtons() {
    const isWhole = this.view === null;
    const pan = (share: number) => () => this.#showPart(moved(this.#shown(), this.#whole(), share));
    const button = (name: string, sign: string, act: () => void, off = false) => html`<button
      type="button"
      class="quiet"
      aria-label=${name}
      title=${name}
      ?disabled=${off}
      @click=${act}
    >
      <span aria-hidden="true">${sign}</span>
    </button>`;
    return html`<div class="zoom screen-only">
      ${
        isWhole
          ? nothing
          : html`${button("Back along the travel", "‹", pan(-PAN))}
              ${button("Further along the travel", "›", pan(PAN))}
              <button type="button" class="quiet whole" @click=${() => this.#showPart(null)}>Whole travel</button>`
      }
      ${button("Show it closer", "+", () => this.#zoom(CLOSER))}
      ${button("Show more of it", "−", () => this.#zoom(1 / CLOSER), isWhole)}
    </div>`;
  }

  #reader(picture: ProfilePicture, assessment: Assessment) {
    const { at } = this;
    const { from, to } = picture.xAxis;
    return html`<div
      class="reader"
      role="slider"
      tabindex="0"
      aria-label="Read the profile off"
      aria-valuemin=${from}
      aria-valuemax=${to}
      aria-valuenow=${at ?? from}
      aria-valuetext=${
        at === null
          ? "Arrow keys move along the travel, Page Up and Page Down from station to station; plus and minus show it closer, 0 shows all of it."
          : this.#words(at, assessment, picture).join(" ")
      }
      @keydown=${this.#key}
      @pointerdown=${this.#press}
      @pointermove=${this.#point}
      @pointerup=${this.#release}
      @pointercancel=${() => {
        this.selection = null;
      }}
      @dblclick=${() => this.#showPart(null)}
      @wheel=${this.#wheel}
    >
      ${this.selection === null || !isDragged(this.selection) ? nothing : selectionMark(this.selection)}
    </div>`;
  }

  #readout(picture: ProfilePicture, assessment: Assessment) {
    if (this.at === null)
      return html`<p class="hint">
        Touch the chart, point at it, or go along it with the arrow keys to read it off.
      </p>`;
    const [where, ...words] = this.#words(this.at, assessment, picture);
    return html`<p><strong>${where}</strong> ${words.join(" ")}</p>`;
  }

  #words(at: number, assessment: Assessment, { units }: ProfilePicture): readonly string[] {
    const lengths = lengthsIn(units, assessment.resolution);
    const position = toMillimetres(at, units);
    return [`At ${lengths.position(position)}.`, ...readoutWords(assessment, position, lengths)];
  }

  #whole(): Interval {
    const { from, to } = this.picture?.xAxis ?? { from: 0, to: 1 };
    return { from, to };
  }

  #shown(): Interval {
    return this.view ?? this.#whole();
  }

  #zoom(factor: number, about = this.at): void {
    const { from, to } = this.#shown();
    const centre = about !== null && about >= from && about <= to ? about : (from + to) / 2;
    this.#showPart(zoomed({ from, to }, this.#whole(), factor, centre));
  }

  #showPart(view: Interval | null): void {
    const { picture, assessment } = this;
    this.view = view;
    if (picture === null || assessment === null) return;
    const { spot } = lengthsIn(picture.units, assessment.resolution);
    const { from, to } = this.#shown();
    const at = (place: number): string => spot(toMillimetres(place, picture.units));
    this.announced = view === null ? "The whole travel is shown." : `Shown from ${at(from)} to ${at(to)}.`;
  }

  readonly #key = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const done = this.#zoomKey(event.key) || this.#readKey(event.key);
    if (done) event.preventDefault();
  };

  #zoomKey(key: string): boolean {
    if (key === "+" || key === "=") this.#zoom(CLOSER);
    else if (key === "-") this.#zoom(1 / CLOSER);
    else if (key === "0" || (key === "Escape" && this.view !== null)) this.#showPart(null);
    else return false;
    return true;
  }

  #readKey(key: string): boolean {
    const shown = this.#shown();
    const to = readTo(key, this.at ?? shown.from, shown, this.#whole(), this.#stations);
    if (to === null) return false;
    this.at = to;
    if (this.view !== null) this.view = showing(this.view, this.#whole(), to);
    return true;
  }

  readonly #press = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    // A finger reads off, since it also scrolls the page; a mouse or a pen selects a part by dragging.
    if (event.pointerType !== "touch") this.selection = { from: event.offsetX, to: event.offsetX };
    this.#point(event);
  };

  readonly #point = (event: PointerEvent): void => {
    if (this.selection !== null) {
      this.selection = { ...this.selection, to: event.offsetX };
      if (isDragged(this.selection) && event.currentTarget instanceof Element)
        event.currentTarget.setPointerCapture(event.pointerId);
    }
    this.at = this.#canvas.chart?.stopAt(event) ?? this.at;
  };

  readonly #release = (): void => {
    const { selection } = this;
    const { chart } = this.#canvas;
    if (selection !== null && isDragged(selection) && chart !== null) {
      const [one, other] = [chart.positionAt(selection.from), chart.positionAt(selection.to)];
      this.#showPart(between(one, other, this.#whole()));
    }
    this.selection = null;
  };

  /** Zooms with Control, which pinching on a touchpad sets too; without it the wheel scrolls the page. */
  readonly #wheel = (event: WheelEvent): void => {
    if (!event.ctrlKey && !event.metaKey) return;
    event.preventDefault();
    this.#zoom(
      event.deltaY < 0 ? Math.SQRT2 : Math.SQRT1_2,
      this.#canvas.chart?.positionAt(event.offsetX) ?? null,
    );
  };

  /** Printed is the whole profile as SVG, which stays sharp, whatever part and colours the screen shows. */
  #drawForPrint(): void {
    const printed = this.renderRoot.querySelector(".printed");
    if (printed !== null && this.picture !== null) printed.innerHTML = profileSvg(this.picture);
  }
}

function isDragged({ from, to }: Selection): boolean {
  return Math.abs(to - from) >= LEAST_DRAG;
}

function selectionMark({ from, to }: Selection) {
  return html`<div
    class="selection"
    style="left:${Math.min(from, to)}px;width:${Math.abs(to - from)}px;top:0;bottom:0"
  ></div>`;
}

function isPicture(value: unknown): value is ProfilePicture {
  return typeof value === "object" && value !== null && "xAxis" in value;
}

function isSame(one: Interval, other: Interval): boolean {
  return one.from === other.from && one.to === other.to;
}
