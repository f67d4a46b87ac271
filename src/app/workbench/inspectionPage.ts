import { css, html, LitElement, nothing, type PropertyValues } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import type { Assessment } from "../../analysis/assessment.ts";
import type { KeptDraws } from "../../analysis/whatIf.ts";
import type { Survey } from "../../inspection/schema.ts";
import type { Keeping } from "../../records/keeper.ts";
import { awaitsReading, type Work } from "../../records/record.ts";
import { type Answer, type Assessor, assessorOf } from "../assess/bridge.ts";
import { Comparing } from "../comparing/comparing.ts";
import "../comparing/comparingPart.ts";
import { timeNow } from "../editing/day.ts";
import type { Desk } from "../editing/desk.ts";
import type { Row } from "../editing/rows.ts";
import { givenVerdict } from "../history/givenVerdict.ts";
import "../history/historyPart.ts";
import "../plan/planPart.ts";
import type { ReadingsPanel } from "../readings/readingsPanel.ts";
import "../readings/readingsPanel.ts";
import "../result/basisPanel.ts";
import { headline } from "../result/headline.ts";
import "../result/verdictPanel.ts";
import { InStages } from "../shell/inStages.ts";
import { notify } from "../shell/notice.ts";
import { controls } from "../style/controls.ts";
import "./csvMenu.ts";
import "./keepingStatus.ts";
import "./reportMenu.ts";
import { saveFile } from "./saveFile.ts";
import { SteadyTyping } from "./steadyTyping.ts";
import "./titleBlock.ts";

/** One inspection: what it is about, its readings, and what they say. */
@customElement("tightspot-inspection")
export class InspectionPage extends LitElement {
  static override styles = [
    controls,
    css`
      .bar {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        justify-content: flex-end;
        gap: 0 0.25rem;
        min-height: var(--target);
        margin: 0.25rem 0 0.5rem;
      }

      tightspot-keeping {
        flex: 1 1 7rem;
      }

      .alarm {
        flex-basis: 100%;
        margin-top: 0.5rem;
      }

      .bar > button {
        padding-inline: clamp(0.5rem, 2vw, 1rem);
      }

      .parts {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: var(--gap);
        overflow-anchor: none;
      }

      /* What stands apart need not be painted anew with what is typed elsewhere; the verdict's bar goes over them. */
      tightspot-title-block,
      tightspot-plan-part,
      .parts > :not(tightspot-verdict),
      tightspot-history-part {
        isolation: isolate;
      }

      @media (min-width: 64rem) {
        .parts {
          grid-template: "readings verdict" auto "readings comparing" auto "readings basis" 1fr / minmax(21rem, 27rem) minmax(0, 1fr);
          gap: 1.5rem;
        }

        tightspot-readings {
          position: sticky;
          top: 1rem;
          grid-area: readings;
          align-self: start;
          max-height: calc(100vh - 2rem);
        }

        tightspot-verdict {
          grid-area: verdict;
        }

        tightspot-comparing-part {
          grid-area: comparing;
        }

        tightspot-basis {
          grid-area: basis;
        }
      }

      @media print {
        .bar {
          display: none;
        }

        tightspot-readings {
          position: static;
          max-height: none;
          overflow: visible;
        }

        .parts {
          display: block;
        }

        .parts > * {
          margin-top: 1.5rem;
        }
      }
    `,
  ];

  @property({ attribute: false }) desk: Desk | null = null;
  @property({ attribute: false }) work: Work | null = null;
  @property({ attribute: false }) survey: Survey | null = null;
  @property({ attribute: false }) rows: readonly Row[] = [];
  @property({ attribute: false }) keeping: Keeping = { state: "saving" };

  @state() private answer: Answer | null = null;
  @state() private kept: KeptDraws | null = null;
  @state() private isBusy = false;

  #assessor: Assessor | null = null;
  /** What was last asked about, so that typing what changes nothing asks nothing. */
  #asked = "";

  readonly #comparing = new Comparing(this);
  readonly #stages = new InStages(this, 2);

  constructor() {
    super();
    this.addEventListener("tightspot-compare", () => this.#comparing.want());
    this.addEventListener("tightspot-compare-choice", ({ detail }) => this.#comparing.choose(detail));
    const part = (name: string) => () => this.renderRoot.querySelector(name);
    this.addEventListener("tightspot-note-verdict", () => this.#noteVerdict());
    this.addController(new SteadyTyping(part("tightspot-verdict"), part("tightspot-readings")));
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#assessor?.close();
    this.#assessor = null;
    this.#asked = "";
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get("survey");
    if (before && before.id !== this.survey?.id) {
      if (!changed.has("desk")) this.#noteVerdictOn(before);
      this.answer = null;
    }
    if (changed.has("work") || changed.has("survey")) this.#ask();
    if (changed.has("work")) this.#comparing.about(this.work?.inspection ?? null);
  }

  override render() {
    const { desk, work, survey, rows, keeping, answer } = this;
    const { choice, found, isBusy } = this.#comparing;
    const { reached } = this.#stages;
    const inspection = work?.inspection ?? null;
    const assessment = answer?.ok ? answer.value : null;
    const title = assessment === null ? "" : headline(assessment);
    return html`
      <tightspot-title-block .desk=${desk} .work=${work} .survey=${survey}></tightspot-title-block>
      <div class="bar">
        <tightspot-keeping
          class=${keeping.state === "not kept" ? "alarm" : ""}
          .keeping=${keeping}
          ?in-file=${work?.inFile === true}
        ></tightspot-keeping>
        <button type="button" class="quiet" @click=${this.#saveFile}>Save a file</button>
        <tightspot-csv-menu .work=${work} .survey=${survey} .assessment=${this.isBusy ? null : assessment}></tightspot-csv-menu>
        <tightspot-report-menu
          .inspection=${inspection}
          .assessment=${this.isBusy ? null : assessment}
          .found=${isBusy ? null : found}
        ></tightspot-report-menu>
      </div>
      <tightspot-plan-part
        .desk=${desk}
        .slide=${inspection?.slide ?? null}
        .survey=${survey}
        .rows=${rows}
      ></tightspot-plan-part>
      <div class="parts" @tightspot-go-to-reading=${this.#goToReading}>
        <tightspot-verdict
          .inspection=${inspection}
          .survey=${survey}
          .answer=${answer}
          .busy=${this.isBusy}
          .desk=${desk}
          .kept=${this.kept}
        ></tightspot-verdict>
        ${
          reached < 1
            ? nothing
            : html`<tightspot-readings
                .desk=${desk}
                .work=${work}
                .survey=${survey}
                .rows=${rows}
                .doubtful=${doubtfulReadings(assessment, rows.length)}
                .assessment=${assessment}
              ></tightspot-readings>`
        }
        ${
          reached < 2
            ? nothing
            : html`<tightspot-comparing-part
                  .desk=${desk}
                  .inspection=${inspection}
                  .choice=${choice}
                  .found=${found}
                  ?busy=${isBusy}
                ></tightspot-comparing-part>
                <tightspot-basis
                  .slide=${inspection?.slide ?? null}
                  .assessment=${assessment}
                ></tightspot-basis>`
        }
      </div>
      ${
        reached < 2
          ? nothing
          : html`<tightspot-history-part
              .desk=${desk}
              .inspection=${inspection}
              .shown=${survey?.id ?? ""}
            ></tightspot-history-part>`
      }
      <p class="unseen" role="status">${title}</p>
    `;
  }

  #ask(): void {
    const { work, survey } = this;
    if (work?.inspection == null || survey === null) return;
    const asked = JSON.stringify([work.inspection.slide, survey]);
    if (asked === this.#asked) return;
    this.#asked = asked;
    this.isBusy = true;
    this.#assessor ??= assessorOf(({ answer, kept }) => {
      this.answer = answer;
      this.kept = kept;
      this.isBusy = false;
    });
    this.#assessor.ask({ inspection: work.inspection, survey: survey.id });
  }

  /** What is left now was worked on here: the verdict that it came to belongs to its history. */
  noteVerdictOnLeaving(): void {
    if (this.survey !== null) this.#noteVerdictOn(this.survey);
  }

  /** Notes the verdict on a survey, if its readings or what is said of it were changed since it was opened. */
  #noteVerdictOn({ id }: Survey): void {
    const { desk } = this;
    if (desk === null || desk.inspection === null) return;
    const now = desk.inspection.surveys.find((survey) => survey.id === id);
    const before = desk.opened?.surveys.find((survey) => survey.id === id);
    if (now === undefined) return;
    const isChanged =
      JSON.stringify([desk.inspection.slide, now]) !== JSON.stringify([desk.opened?.slide, before]);
    if (isChanged) this.#noteVerdict();
  }

  /** Notes the verdict that is shown; none while another is being worked out. */
  #noteVerdict(): void {
    const { desk, answer, isBusy } = this;
    if (desk?.inspection == null || answer?.ok !== true || isBusy) return;
    const given = givenVerdict(answer.value, desk.inspection.slide.units, timeNow());
    if (given !== null) desk.noteVerdict(given);
  }

  async #saveFile(): Promise<void> {
    this.noteVerdictOnLeaving();
    const { desk } = this;
    const work = desk?.work;
    if (work?.inspection == null) return;
    const missing = await saveFile(work.inspection);
    const left = work.draft.rows.filter((row) => !awaitsReading(row)).length + work.draft.fields.length;
    const lacks = [
      ...(left === 0
        ? []
        : [`${left === 1 ? "one entry" : `${left} entries`} that cannot be read yet, marked in red`]),
      ...(missing === 0
        ? []
        : [`${missing === 1 ? "one photograph" : `${missing} photographs`} that this browser no longer has`]),
    ];
    if (lacks.length > 0)
      notify(this, { tone: "wrong", text: `The file holds all but ${lacks.join(" and ")}.` });
    // What was changed while it was saved is in no file.
    else if (desk?.work === work) desk.savedToFile();
  }

  #goToReading({ detail }: HTMLElementEventMap["tightspot-go-to-reading"]): void {
    void this.renderRoot.querySelector<ReadingsPanel>("tightspot-readings")?.focusReading(detail);
  }
}

/** The readings that a check singles out; one that names most of them is about the survey as a whole. */
function doubtfulReadings(assessment: Assessment | null, count: number): ReadonlySet<number> {
  const findings = assessment?.checks.filter(
    ({ severity, readings }) => severity !== "note" && readings.length < count / 2,
  );
  return new Set(findings?.flatMap(({ readings }) => readings));
}
