import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { SurveyChoice } from "../../analysis/comparison/chooseSurveys.ts";
import type { Inspection } from "../../inspection/schema.ts";
import { type Comparer, type ComparisonReply, createComparer } from "../results/worker/assessInWorker.ts";

declare global {
  interface HTMLElementEventMap {
    /** Somebody looks at what two surveys come to. */
    "tightspot-compare": CustomEvent<null>;
    /** Two surveys were chosen to be compared. */
    "tightspot-compare-choice": CustomEvent<Required<SurveyChoice>>;
  }
}

/** What was found, with the inspection that it was found of. */
export interface Found {
  readonly inspection: Inspection;
  readonly reply: ComparisonReply;
}

/** Two surveys of the slide that is worked on, compared from when this is first looked at. */
export class ComparisonController implements ReactiveController {
  found: Found | null = null;
  isBusy = false;
  choice: SurveyChoice = {};

  #isWanted = false;
  #inspection: Inspection | null = null;
  #comparer: Comparer | null = null;
  /** What was last asked about, so that a change elsewhere asks nothing. */
  #asked = "";

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostDisconnected(): void {
    this.#comparer?.close();
    this.#comparer = null;
    this.#asked = "";
  }

  /** Takes note of the inspection as it now is. A survey that was chosen and is no more is chosen no more. */
  about(inspection: Inspection | null): void {
    if (inspection === this.#inspection) return;
    this.#inspection = inspection;
    const ids = new Set(inspection?.surveys.map(({ id }) => id));
    const { from, to } = this.choice;
    if ([from, to].some((id) => id !== undefined && !ids.has(id))) this.choice = {};
    this.#ask();
  }

  want(): void {
    this.#isWanted = true;
    this.#ask();
  }

  choose(choice: SurveyChoice): void {
    this.choice = choice;
    this.#ask();
  }

  #ask(): void {
    const inspection = this.#inspection;
    if (!this.#isWanted || inspection === null) return;
    const { slide, surveys, events } = inspection;
    const asked = JSON.stringify([slide, surveys, events, this.choice]);
    if (asked === this.#asked) return;
    this.#asked = asked;
    this.isBusy = true;
    this.#comparer ??= createComparer((reply) => {
      this.isBusy = false;
      this.found = this.#inspection === null ? null : { inspection: this.#inspection, reply };
      this.host.requestUpdate();
    });
    this.#comparer.ask({ inspection, choice: this.choice });
    this.host.requestUpdate();
  }
}

/** Says that somebody looks at what two surveys come to. */
export function askToCompare(from: EventTarget): void {
  from.dispatchEvent(new CustomEvent("tightspot-compare", { bubbles: true, composed: true }));
}
