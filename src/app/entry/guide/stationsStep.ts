import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { inOneLine } from "../../../inspection/problem.ts";
import type { Slide } from "../../../inspection/schema.ts";
import type { GuideState } from "../../../records/editorState.ts";
import type { InspectionEditor } from "../../editing/inspectionEditor.ts";
import { controls, fold } from "../../ui/sharedStyles.ts";
import { stationsAmong } from "./nextStation.ts";
import { type PlannedStations, plannedStations } from "./plannedStations.ts";
import { listOf, orderOf, readPositions } from "./stationList.ts";
import stationsStepCss from "./stationsStep.css?inline";
import { travelStrip } from "./travelStrip.ts";

/** Where to read: as planned, or as typed. */
@customElement("tightspot-stations-step")
export class StationsStep extends LitElement {
  static override styles = [controls, fold, unsafeCSS(stationsStepCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) guide: GuideState | null = null;
  @property({ attribute: false }) slide: Slide | null = null;

  @state() private problem = "";

  override render() {
    const { guide, slide } = this;
    if (guide === null || slide === null) return nothing;
    const { positions, isBackToo } = listOf(guide.stations);
    const marks = stationsAmong(positions, slide.units).map((position) => ({
      position,
      state: "open" as const,
    }));
    const planned = plannedStations(slide);
    const count = marks.length;
    return html`
      <h3>${count} ${count === 1 ? "station" : "stations"}, ${guide.stations.length} readings</h3>
      ${travelStrip(slide, marks, null)}
      ${
        planned.ok
          ? html`<details>
              <summary>Why these stations</summary>
              <ul class="why">
                ${planned.value.reasons.map((reason) => html`<li>${reason}</li>`)}
              </ul>
            </details>`
          : html`<p class="wrong">${inOneLine({ ...planned.problem, where: "" })}</p>`
      }
      <p class="hint">
        Five stations are the least for a verdict; after that, the page says where one more reading tells most.
      </p>
      <div>
        <label for="positions">Positions to read at, ${slide.units}, with spaces between</label>
        <textarea
          id="positions"
          inputmode="text"
          spellcheck="false"
          autocomplete="off"
          aria-invalid=${this.problem !== ""}
          aria-describedby="wrong"
          .value=${guide.typing.stations ?? positions.join("  ")}
          @input=${({ target }: InputEvent) => this.#typed((target as HTMLTextAreaElement).value)}
        ></textarea>
        <p id="wrong" class="wrong">${this.problem}</p>
      </div>
      <label class="back">
        <input
          type="checkbox"
          .checked=${isBackToo}
          @change=${() => this.#read(positions, !isBackToo)}
        />
        <span>Read each again on the way back, the first one last: that shows a stand that creeps.</span>
      </label>
      ${planned.ok ? this.#choices(guide, planned.value) : nothing}
      <button type="button" class="chief" @click=${() => this.dispatchEvent(new CustomEvent("tightspot-next"))}>
        Start reading
      </button>
    `;
  }

  /** The first round, and all stations where there are more, as far as they are not what is to be read already. */
  #choices(guide: GuideState, { stations, all }: PlannedStations) {
    const [first, whole] = [stations.join(), all.join()];
    const choice = (label: string, chosen: readonly number[]) => html`<button
      type="button"
      @click=${() => this.#become({ ...guide, typing: {}, stations: chosen })}
    >
      ${label}
    </button>`;
    return [
      first === guide.stations.join() ? nothing : choice("Take the planned stations", stations),
      whole === first || whole === guide.stations.join()
        ? nothing
        : choice(`Read all ${all.length / 2} stations of the plan at once`, all),
    ];
  }

  override firstUpdated(): void {
    this.renderRoot.querySelector<HTMLElement>("button.chief")?.focus({ preventScroll: true });
  }

  #typed(text: string): void {
    const { guide, slide } = this;
    if (guide === null || slide === null) return;
    const read = readPositions(text, slide.units);
    this.problem = read.ok ? "" : `One ${read.problem.what}. ${read.problem.cure}`;
    const typing = { ...guide.typing, stations: text };
    const { isBackToo } = listOf(guide.stations);
    this.#become({
      ...guide,
      typing,
      ...(read.ok && {
        stations: orderOf({ positions: read.value, isBackToo: isBackToo || guide.stations.length === 0 }),
      }),
    });
  }

  #read(positions: readonly number[], isBackToo: boolean): void {
    if (this.guide !== null) this.#become({ ...this.guide, stations: orderOf({ positions, isBackToo }) });
  }

  #become(guide: GuideState): void {
    this.editor?.setGuide(guide);
  }
}
