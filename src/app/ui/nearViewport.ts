import type { ReactiveController, ReactiveControllerHost } from "lit";

/** The distance from the screen that counts as near. */
const NEAR = "400px 0px";

/** Whether an element is on the screen or near it. One that is far away need not be redrawn at every key. */
export class NearViewport implements ReactiveController {
  isNear = false;

  readonly #host: ReactiveControllerHost & Element;
  readonly #onChange: () => void;
  #observer: IntersectionObserver | null = null;

  /** @param onChange is called when the element comes near or moves away */
  constructor(host: ReactiveControllerHost & Element, onChange: () => void) {
    this.#host = host;
    this.#onChange = onChange;
    host.addController(this);
  }

  hostConnected(): void {
    this.#observer = new IntersectionObserver(
      (entries) => {
        this.isNear = entries.at(-1)?.isIntersecting === true;
        this.#onChange();
      },
      { rootMargin: NEAR },
    );
    this.#observer.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
  }
}
