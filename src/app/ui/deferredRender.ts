import type { ReactiveController, ReactiveControllerHost } from "lit";
import { BeforePrint } from "./beforePrint.ts";
import { afterPaint } from "./scheduling.ts";

/**
 * Renders an element in stages, each in a frame of its own, so that its first part is seen soon and the page stays
 * responsive. Printing renders all stages at once.
 */
export class DeferredRender implements ReactiveController {
  /** The stage to render; 0 is the first. */
  stage = 0;

  readonly #host: ReactiveControllerHost;
  readonly #last: number;
  readonly #canStart: () => boolean;
  #isScheduled = false;

  /**
   * @param last the last stage
   * @param canStart whether the first stage is complete
   */
  constructor(host: ReactiveControllerHost, last: number, canStart: () => boolean = () => true) {
    this.#host = host;
    this.#last = last;
    this.#canStart = canStart;
    host.addController(this);
    new BeforePrint(host, this.finish);
  }

  hostUpdated(): void {
    if (this.#isScheduled || this.isComplete || !this.#canStart()) return;
    this.#isScheduled = true;
    afterPaint(() => {
      this.#isScheduled = false;
      this.#setStage(Math.min(this.stage + 1, this.#last));
    });
  }

  /** Renders all stages now. */
  readonly finish = (): void => this.#setStage(this.#last);

  get isComplete(): boolean {
    return this.stage === this.#last;
  }

  #setStage(stage: number): void {
    if (stage === this.stage) return;
    this.stage = stage;
    this.#host.requestUpdate();
  }
}
