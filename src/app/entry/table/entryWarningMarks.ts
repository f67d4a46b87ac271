import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { EntryWarning } from "../../../analysis/outliers/entryWarnings.ts";
import { slideInMillimetres, surveyInMillimetres } from "../../../inspection/metric.ts";
import type { Slide, Survey } from "../../../inspection/schema.ts";

interface Host extends ReactiveControllerHost {
  readonly survey: Survey | null;
  readonly slide: Slide | null;
}

/** The readings that look like slips. What tells them is loaded once there are readings to look at. */
export class SlipMarks implements ReactiveController {
  /** By their place among the readings, 0-based. */
  found: ReadonlyMap<number, EntryWarning> = new Map();
  /** Kept, since the browser walks through all that it leads to whenever it is asked for it. */
  #slips: typeof import("../../../analysis/outliers/entryWarnings.ts") | null = null;
  #survey: Survey | null = null;
  #slide: Slide | null = null;

  constructor(private readonly host: Host) {
    host.addController(this);
  }

  hostUpdate(): void {
    const { survey, slide } = this.host;
    if (survey === this.#survey && slide === this.#slide) return;
    this.#survey = survey;
    this.#slide = slide;
    void this.#look(survey, slide);
  }

  async #look(survey: Survey | null, slide: Slide | null): Promise<void> {
    let found: ReadonlyMap<number, EntryWarning> = new Map();
    if (survey !== null && slide !== null && survey.readings.length > 0) {
      this.#slips ??= await import("../../../analysis/outliers/entryWarnings.ts");
      const { entryWarnings } = this.#slips;
      const { units } = slide;
      found = entryWarnings(slideInMillimetres(slide), surveyInMillimetres(survey, units), units);
    }
    if (survey !== this.#survey || slide !== this.#slide) return;
    this.found = found;
    this.host.requestUpdate();
  }
}
