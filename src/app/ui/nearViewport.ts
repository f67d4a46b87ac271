import type { ReactiveController, ReactiveControllerHost } from "lit";

/** So near the screen it is made ready to be seen. */
const NEAR = "400px 0px";

/** Whether an element is on the screen or near it: what is drawn on it need not follow what is typed elsewhere. */
export class NearViewport implements ReactiveController {
  isNear = false;

  readonly #host: ReactiveControllerHost & Element;
  readonly #changed: () => void;
  #watch: IntersectionObserver | null = null;

  /** @param changed is told when it comes near or goes */
  constructor(host: ReactiveControllerHost & Element, changed: () => void) {
    this.#host = host;
    this.#changed = changed;
    host.addController(this);
  }

  hostConnected(): void {
    this.#watch = new IntersectionObserver(
      (entries) => {
        this.isNear = entries.at(-1)?.isIntersecting === true;
        this.#changed();
      },
      { rootMargin: NEAR },
    );
    this.#watch.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#watch?.disconnect();
  }
}
