import type { ReactiveController } from "lit";

/** Told by a part that has brought itself to where it is to be seen. */
export const SCROLLED_INTO_VIEW = "tightspot-in-sight";

/**
 * Keeps what is typed in where it is on the screen while a part above it grows or shrinks: on a narrow screen the
 * verdict stands over the readings, and changes with every one of them.
 *
 * Between a change of height and its being noticed, the browser may scroll by itself to show the field that is typed
 * in. What counts is therefore where the page stood when the height last was what it was known to be.
 */
export class ScrollAnchor implements ReactiveController {
  #height: number | null = null;
  #scroll = 0;
  readonly #watch = new ResizeObserver(() => {
    const height = this.#heightNow();
    if (this.#height !== null && height !== this.#height && this.#isTypedBelow())
      window.scrollTo(window.scrollX, this.#scroll + height - this.#height);
    this.#settle();
  });

  /**
   * @param above finds the part that changes its height
   * @param below finds the part that is typed in
   */
  constructor(
    private readonly above: () => Element | null,
    private readonly below: () => Element | null,
  ) {}

  hostConnected(): void {
    window.addEventListener("scroll", this.#scrolled, { passive: true });
    window.addEventListener(SCROLLED_INTO_VIEW, this.#settle);
  }

  hostUpdated(): void {
    const above = this.above();
    if (above !== null) this.#watch.observe(above);
  }

  hostDisconnected(): void {
    window.removeEventListener("scroll", this.#scrolled);
    window.removeEventListener(SCROLLED_INTO_VIEW, this.#settle);
    this.#watch.disconnect();
    this.#height = null;
  }

  readonly #scrolled = (): void => {
    if (this.#heightNow() === this.#height) this.#scroll = window.scrollY;
  };

  /** Where the page stands now is where it is to stay. */
  readonly #settle = (): void => {
    this.#height = this.#heightNow();
    this.#scroll = window.scrollY;
  };

  #heightNow(): number {
    return this.above()?.getBoundingClientRect().height ?? 0;
  }

  #isTypedBelow(): boolean {
    const above = this.above();
    const below = this.below();
    if (above === null || below === null || !below.matches(":focus-within")) return false;
    return above.getBoundingClientRect().left === below.getBoundingClientRect().left;
  }
}
