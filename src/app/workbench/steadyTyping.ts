import type { ReactiveController } from "lit";

/**
 * Keeps what is typed in where it is on the screen while a part above it grows or shrinks: on a narrow screen the
 * verdict stands over the readings, and changes with every one of them.
 */
export class SteadyTyping implements ReactiveController {
  #height: number | null = null;
  readonly #watch = new ResizeObserver(([entry]) => {
    const height = entry?.borderBoxSize[0]?.blockSize ?? 0;
    if (this.#height !== null && this.isTypedBelow()) window.scrollBy(0, height - this.#height);
    this.#height = height;
  });

  /**
   * @param above finds the part that changes its height
   * @param below finds the part that is typed in
   */
  constructor(
    private readonly above: () => Element | null,
    private readonly below: () => Element | null,
  ) {}

  hostUpdated(): void {
    const above = this.above();
    if (above !== null) this.#watch.observe(above);
  }

  hostDisconnected(): void {
    this.#watch.disconnect();
    this.#height = null;
  }

  private isTypedBelow(): boolean {
    const above = this.above();
    const below = this.below();
    if (above === null || below === null || !below.matches(":focus-within")) return false;
    return above.getBoundingClientRect().left === below.getBoundingClientRect().left;
  }
}
