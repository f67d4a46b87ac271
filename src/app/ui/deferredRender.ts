import type { ReactiveController, ReactiveControllerHost } from "lit";
import { BeforePrint } from "./beforePrint.ts";
import { afterPaint } from "./scheduling.ts";

/**
 * Lets an element come to be in stages, each in a frame of its own, so that what is seen first is seen soon and
 * nothing keeps the reader waiting for all of it. For printing, all of it is there at once.
 */
export class DeferredRender implements ReactiveController {
  /** How many stages are there beside the first. */
  reached = 0;

  readonly #host: ReactiveControllerHost;
  readonly #last: number;
  readonly #mayBegin: () => boolean;
  #isComing = false;

  /**
   * @param last how many stages there are beside the first
   * @param mayBegin whether the first is there yet
   */
  constructor(host: ReactiveControllerHost, last: number, mayBegin: () => boolean = () => true) {
    this.#host = host;
    this.#last = last;
    this.#mayBegin = mayBegin;
    host.addController(this);
    new BeforePrint(host, this.toLast);
  }

  hostUpdated(): void {
    if (this.#isComing || this.isWhole || !this.#mayBegin()) return;
    this.#isComing = true;
    afterPaint(() => {
      this.#isComing = false;
      this.#reach(Math.min(this.reached + 1, this.#last));
    });
  }

  /** What needs all of it does not wait. */
  readonly toLast = (): void => this.#reach(this.#last);

  get isWhole(): boolean {
    return this.reached === this.#last;
  }

  #reach(stage: number): void {
    if (stage === this.reached) return;
    this.reached = stage;
    this.#host.requestUpdate();
  }
}
