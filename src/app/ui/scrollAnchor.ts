import type { ReactiveController } from "lit";

/** The event of an element that has scrolled itself into view. */
export const SCROLLED_INTO_VIEW = "tightspot-in-sight";

/**
 * Keeps the focused field at its place on the screen while an element above it changes its height: on a narrow screen
 * the verdict is above the readings, and changes with each of them.
 *
 * Before a change of height is observed, the browser may scroll by itself to show the focused field. The scroll position
 * to restore is therefore the last one at the known height.
 */
export class ScrollAnchor implements ReactiveController {
  #height: number | null = null;
  #scroll = 0;
  readonly #observer = new ResizeObserver(() => {
    const height = this.#heightNow();
    if (this.#height !== null && height !== this.#height && this.#isFocusBelow())
      window.scrollTo(window.scrollX, this.#scroll + height - this.#height);
    this.#remember();
  });

  /**
   * @param above finds the element that changes its height
   * @param below finds the element that may hold the focused field
   */
  constructor(
    private readonly above: () => Element | null,
    private readonly below: () => Element | null,
  ) {}

  hostConnected(): void {
    window.addEventListener("scroll", this.#onScroll, { passive: true });
    window.addEventListener(SCROLLED_INTO_VIEW, this.#remember);
  }

  hostUpdated(): void {
    const above = this.above();
    if (above !== null) this.#observer.observe(above);
  }

  hostDisconnected(): void {
    window.removeEventListener("scroll", this.#onScroll);
    window.removeEventListener(SCROLLED_INTO_VIEW, this.#remember);
    this.#observer.disconnect();
    this.#height = null;
  }

  readonly #onScroll = (): void => {
    if (this.#heightNow() === this.#height) this.#scroll = window.scrollY;
  };

  /** Takes the present height and scroll position as the ones to keep. */
  readonly #remember = (): void => {
    this.#height = this.#heightNow();
    this.#scroll = window.scrollY;
  };

  #heightNow(): number {
    return this.above()?.getBoundingClientRect().height ?? 0;
  }

  #isFocusBelow(): boolean {
    const above = this.above();
    const below = this.below();
    if (above === null || below === null || !below.matches(":focus-within")) return false;
    return above.getBoundingClientRect().left === below.getBoundingClientRect().left;
  }
}
