import { html, LitElement, nothing, type PropertyValues, unsafeCSS } from "lit";
import { customElement, property, state } from "lit/decorators.js";
import { failed, inOneLine, type Outcome } from "../../../inspection/problem.ts";
import type { Slide, Survey } from "../../../inspection/schema.ts";
import { measuringPlan, type Plan } from "../../../intake/plan/measuringPlan.ts";
import { type ListedRound, listedRounds } from "../../../report/plan/listedRounds.ts";
import { logSheet } from "../../../report/plan/logSheet.ts";
import { type LostMotionMethod, lostMotionMethod, METHODS } from "../../../report/plan/method.ts";
import { planTitle } from "../../../report/plan/planText.ts";
import { SET_UP } from "../../../report/plan/setUp.ts";
import type { InspectionEditor } from "../../editing/inspectionEditor.ts";
import type { Row } from "../../editing/rows.ts";
import { DocumentAddress } from "../../files/documentAddress.ts";
import { notify } from "../../ui/notice.ts";
import { controls } from "../../ui/sharedStyles.ts";
import planPanelCss from "./planPanel.css?inline";
import { preparedRows, withoutPrepared } from "./preparedRows.ts";

/** Where to read and in which order, the sheet to write on, and the table of readings made ready for it. */
@customElement("tightspot-plan")
export class PlanPanel extends LitElement {
  static override styles = [controls, unsafeCSS(planPanelCss)];

  @property({ attribute: false }) editor: InspectionEditor | null = null;
  @property({ attribute: false }) slide: Slide | null = null;
  @property({ attribute: false }) survey: Survey | null = null;
  @property({ attribute: false }) rows: readonly Row[] = [];

  /** How many stations are asked for, as typed; empty for as many as are needed. */
  @state() private typed = "";

  readonly #sheet = new DocumentAddress(this);
  #plan: Outcome<Plan> | null = null;

  protected override willUpdate(changed: PropertyValues<this> & Map<"typed", unknown>): void {
    if (this.slide === null || !(changed.has("slide") || changed.has("typed"))) return;
    this.#plan = planFor(this.slide, this.typed.trim());
  }

  override render() {
    const { slide } = this;
    const plan = this.#plan;
    if (slide === null || plan === null) return nothing;
    const method = lostMotionMethod(this.survey?.method ?? "push-pull");
    if (!method.ok) {
      return html`<p class="content">
        This survey reads positions at targets. A plan of stations is for one that reads lost motion: choose its method
        among the readings.
      </p>`;
    }
    return html`<div class="content">
      ${this.#stationsField(plan)}
      ${plan.ok ? this.#planned(slide, plan.value, method.value) : nothing}
    </div>`;
  }

  #stationsField(plan: Outcome<Plan>) {
    const problem = plan.ok ? "" : inOneLine({ ...plan.problem, where: "" });
    return html`<div class="number">
      <label class="label" for="stations">How many stations</label>
      <input
        id="stations"
        type="text"
        inputmode="numeric"
        autocomplete="off"
        placeholder=${plan.ok && this.typed === "" ? `${plan.value.stations.length}, as needed` : "as needed"}
        aria-invalid=${problem !== ""}
        aria-describedby="stations-problem"
        .value=${this.typed}
        @input=${({ target }: InputEvent) => {
          this.typed = (target as HTMLInputElement).value;
        }}
      />
      <p id="stations-problem" class="wrong" ?hidden=${problem === ""}>${problem}</p>
    </div>`;
  }

  #planned(slide: Slide, plan: Plan, method: LostMotionMethod) {
    const rounds = listedRounds(plan);
    const hasMore = rounds.length > 1;
    return html`
      <p>
        <strong class="figures">${planTitle(plan)}, ${METHODS[method].name}.</strong>
        ${rounds.map(({ order }) => order).join(" ")}
      </p>
      ${plan.notes.length === 0 ? nothing : html`<ul class="notes">${lines(plan.notes)}</ul>`}
      <div class="actions">
        <button type="button" class="chief" @click=${() => this.#prepare(plan, 1)}>
          ${hasMore ? "Prepare the first round" : "Prepare the readings"}
        </button>
        ${
          hasMore
            ? html`<button type="button" @click=${() => this.#prepare(plan, rounds.length)}>Prepare both rounds</button>`
            : nothing
        }
        <a class="button" target="_blank" href=${this.#sheet.of(logSheet(slide, plan, method))}>Log sheet to print</a>
      </div>
      ${rounds.map((round) => stationsOf(round, plan))}
      <div class="more">
        <section>
          <h3>Before the first reading</h3>
          <ul class="lines">${lines(SET_UP)}</ul>
        </section>
        <section>
          <h3>Why these stations</h3>
          <ul class="lines">${lines([...plan.reasons, ...plan.assumed])}</ul>
        </section>
      </div>
    `;
  }

  /** Adds a row for every reading of the first rounds that is not there yet. What is there stays as it is. */
  #prepare(plan: Plan, rounds: number): void {
    const { editor } = this;
    if (editor === null) return;
    if (editor.survey === null) editor.addSurvey();
    const { survey } = editor;
    if (survey === null) return;
    const added = preparedRows(plan, rounds, editor.rows, survey, plan.units);
    if (added.length === 0) {
      notify(this, {
        tone: "done",
        text: `Every reading of the ${rounds < plan.rounds.length ? "first round" : "plan"} is in the table already.`,
      });
      return;
    }
    editor.setRows([...editor.rows, ...added]);
    notify(this, {
      tone: "done",
      text: `${added.length} ${added.length === 1 ? "reading waits" : "readings wait"} in the table, in the order of the plan.`,
      action: { label: "Undo", act: () => takeAway(editor, survey.id, added) },
    });
  }
}

function stationsOf({ title, stations }: ListedRound, { units }: Plan) {
  const first = stations[0]?.number ?? 1;
  return html`
    ${title === "" ? nothing : html`<h3>${title}</h3>`}
    <ol class="stations" aria-label=${title === "" ? "Stations" : `Stations, ${title.toLowerCase()}`} start=${first} style="--first: ${first}">
      ${stations.map(
        ({ figure, words }) => html`<li>
          <strong class="figures">${figure} ${units}</strong>
          <span class="turns">${words}</span>
        </li>`,
      )}
    </ol>
  `;
}

/** The plan with so many stations as are typed, or as are needed where nothing is. */
function planFor(slide: Slide, typed: string): Outcome<Plan> {
  if (typed === "") return measuringPlan(slide);
  return /^\d+$/.test(typed)
    ? measuringPlan(slide, { stations: Number(typed) })
    : failed("", `“${typed}” is not a whole number`, "Type how many stations to read.");
}

/** Takes the prepared rows away again, but for those in which something was written meanwhile. */
function takeAway(editor: InspectionEditor, survey: string, prepared: readonly Row[]): void {
  if (editor.survey?.id !== survey) editor.chooseSurvey(survey);
  editor.setRows(withoutPrepared(editor.rows, prepared));
}

function lines(texts: readonly string[]) {
  return texts.map((text) => html`<li>${text}</li>`);
}
